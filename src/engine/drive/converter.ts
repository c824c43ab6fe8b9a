/** A torque converter on two numbers: its capacity and its torque ratio at stall. */
export interface Converter {
  /** Capacity K [rpm/sqrt(N m)]: impeller speed over the root of impeller torque, at stall. */
  readonly capacity: number;
  readonly stallTorqueRatio: number;
}

/** Speed ratio where the stator lets go and the torque ratio reaches one. */
export const COUPLING_SPEED_RATIO = 0.86;
/** Radians per second in one revolution a minute. */
export const RAD_S_PER_RPM = Math.PI / 30;

/**
 * Torque on the impeller, taken from the engine.
 *
 * Equation: Tp = (n_e / K)^2 (1 - s^5), s = wt / we; none for s > 1.
 *
 * @param converter capacity [rpm/sqrt(N m)], stallTorqueRatio [-]
 * @param engine engine speed [rad/s]
 * @param turbine turbine speed [rad/s]
 * @returns torque [N m]
 * Range: engine speed above zero; a turbine that turns backward counts as standing.
 * Leaves out: drag when the turbine overruns, fluid inertia, change of K with temperature.
 * Source: square law, SAE J643 definitions of K and speed ratio, VDI 2153; the shape 1 - s^5 is ours and is held
 * against an open converter table in the tests.
 * @example
 * impellerTorque({ capacity: 170, stallTorqueRatio: 2 }, 1700 * Math.PI / 30, 0) // 100
 */
export function impellerTorque(converter: Converter, engine: number, turbine: number): number {
  if (engine <= 0 || turbine > engine) return 0;
  const s = Math.max(0, turbine / engine);
  const root = engine / RAD_S_PER_RPM / converter.capacity;
  return root * root * (1 - s * s * s * s * s);
}

/**
 * Torque ratio of the converter, turbine over impeller.
 *
 * Equation: max(1, TR0 - (TR0 - 1) s / 0.86).
 *
 * @param converter capacity [rpm/sqrt(N m)], stallTorqueRatio [-]
 * @param speedRatio turbine over engine speed s [-]
 * @returns torque ratio [-]
 * Range: s from 0 to 1.
 * Source: straight line through stall and coupling, an approximation of the open table named in the tests.
 * @example
 * converterTorqueRatio({ capacity: 170, stallTorqueRatio: 2 }, 0.43) // 1.5
 */
export function converterTorqueRatio(converter: Converter, speedRatio: number): number {
  const s = Math.max(0, speedRatio);
  return Math.max(
    1,
    converter.stallTorqueRatio - ((converter.stallTorqueRatio - 1) * s) / COUPLING_SPEED_RATIO,
  );
}
