import type { Clutch } from './torque.ts';

/** Share of the stroke volume after which the piston has left its seat. */
export const FIRST_FILL_SHARE = 0.05;
/** Share of the spring pressure reached by then. */
export const FIRST_FILL_PRESSURE = 0.8;

/**
 * Pressure in a clutch by how much fluid is in it.
 *
 * Equation: 0 to 0.8 ps over the first 5 % of Vs, on to ps = F_spring / A at Vs, then with slope 1/C.
 *
 * @param clutch area [m2], springForce [N], strokeVolume [m3], compliance [m3/Pa]
 * @param volume fluid in the clutch [m3]
 * @returns pressure [Pa]
 * Range: volume zero and above; an empty clutch has none.
 * Leaves out: the inertia of the piston and a seal that sticks.
 * Source: piecewise-linear piston and spring, ours; the slope is the give of a filled circuit.
 * @example
 * fillPressure({ area: 85e-4, springForce: 900, strokeVolume: 3e-5, compliance: 4e-12, faces: 10, meanRadius: 0.065, friction: 0.13 }, 3e-5) // 105882.35
 */
export function fillPressure(clutch: Clutch, volume: number): number {
  const { strokeVolume, compliance } = clutch;
  const springPressure = clutch.springForce / clutch.area;
  const first = FIRST_FILL_SHARE * strokeVolume;
  const knee = FIRST_FILL_PRESSURE * springPressure;
  if (volume <= 0) return 0;
  if (volume <= first) return (knee * volume) / first;
  if (volume <= strokeVolume) {
    return knee + ((springPressure - knee) * (volume - first)) / (strokeVolume - first);
  }
  return springPressure + (volume - strokeVolume) / compliance;
}
