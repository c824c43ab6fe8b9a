/** Full-load torque of the training engine up to the knee [N m]; invented. */
export const FULL_TORQUE = 180;
/** Speed where it begins to fall, and where it is gone [rpm]. */
export const TORQUE_KNEE_RPM = 5000;
/** Speed where torque is gone [rpm]. */
export const TORQUE_END_RPM = 6500;
/** Friction and accessories [N m]. */
export const ENGINE_FRICTION = 8;

/**
 * Torque of the training engine at the converter.
 *
 * Equation: (1 - u) clamp(20 + (n_idle - n), 0, 80) + u Tmax(n) - 8.
 *
 * @param rpm engine speed n [rpm]
 * @param throttle u, 0 closed to 1 open [-]
 * @param idleRpm idle speed [rpm]
 * @returns torque [N m]
 * Range: throttle 0 to 1.
 * Source: invented for teaching; a governor with a slope of 1 N m a rpm.
 * @example
 * engineTorque(1500, 1, 700) // 172
 */
export function engineTorque(rpm: number, throttle: number, idleRpm: number): number {
  const idle = Math.min(80, Math.max(0, 20 + (idleRpm - rpm)));
  const fall = (TORQUE_END_RPM - rpm) / (TORQUE_END_RPM - TORQUE_KNEE_RPM);
  const full = FULL_TORQUE * Math.min(1, Math.max(0, fall));
  return (1 - throttle) * idle + throttle * full - ENGINE_FRICTION;
}
