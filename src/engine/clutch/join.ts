import { requireInRange } from '../error.ts';

/** How a clutch brings two turning masses to one speed. */
export interface Joining {
  /** Time it slips [s]. */
  readonly time: number;
  /** Heat made in the clutch [J]. */
  readonly energy: number;
}

/**
 * Slip time and heat of a clutch that joins two free masses at constant torque.
 *
 * Equation: t = I1 I2 dw / (T (I1 + I2)), E = I1 I2 dw^2 / (2 (I1 + I2)). The heat does not depend on the torque.
 *
 * @param masses first and second inertia [kg m2], slip at the start [rad/s], torque of the clutch [N m]
 * @returns time [s] and energy [J]
 * Range: inertias and torque above zero.
 * @throws EngineError where one of them is not.
 * Leaves out: torque from outside while it slips, friction that changes as it heats.
 * Source: V. B. Bhandari, Design of Machine Elements, section 11.10 and example 11.14.
 * @example
 * joinMasses({ first: 0.1125, second: 0.546875, slip: 209.4395, torque: 47.7465 }).energy // 2046.42
 */
export function joinMasses(masses: {
  readonly first: number;
  readonly second: number;
  readonly slip: number;
  readonly torque: number;
}): Joining {
  const positive = (value: number, name: string, unit: string): number =>
    requireInRange(value, { name, unit, min: Number.MIN_VALUE, max: Number.MAX_VALUE });
  const first = positive(masses.first, 'First inertia', 'kg m2');
  const second = positive(masses.second, 'Second inertia', 'kg m2');
  const torque = positive(masses.torque, 'Clutch torque', 'N m');
  // First over the sum, so that a second mass without end (a vehicle held by its brake) stays a number.
  const joint = first / (1 + first / second);
  return { time: (joint * masses.slip) / torque, energy: (joint * masses.slip ** 2) / 2 };
}
