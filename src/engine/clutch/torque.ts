import { requireInRange } from '../error.ts';
import type { RotatingPiston } from './rotating-piston.ts';

/** A wet multi-plate clutch and its return spring. */
export interface Clutch {
  /** Piston area [m2]. */
  readonly area: number;
  /** Return spring force at apply [N]. */
  readonly springForce: number;
  /** Fluid that moves the piston to the plates [m3]. */
  readonly strokeVolume: number;
  /** Give of the applied circuit [m3/Pa]. */
  readonly compliance: number;
  /** Friction faces [-]. */
  readonly faces: number;
  /** Mean friction radius [m]. */
  readonly meanRadius: number;
  /** Friction coefficient of the wet faces [-]. */
  readonly friction: number;
  /** The piston where it turns with the clutch; left out, no head of spinning fluid is counted. */
  readonly rotating?: RotatingPiston;
}

/**
 * Torque a clutch can hold at a pressure.
 *
 * Equation: T = mu N r_m max(0, p A + F_head - F_spring).
 *
 * @param clutch friction [-], faces [-], meanRadius [m], area [m2], springForce [N]
 * @param pressure [Pa]
 * @param head force of spinning fluid on a rotating piston, see rotatingPistonForce; none where left out [N]
 * @returns torque [N m]
 * Range: pressure zero and above.
 * Leaves out: friction that changes with slip speed and heat.
 * Source: multi-plate clutch on uniform wear, R. S. Khurmi and J. K. Gupta, Theory of Machines, ch. 10.
 * @example
 * clutchTorque({ area: 85e-4, springForce: 900, strokeVolume: 3e-5, compliance: 4e-12, faces: 10, meanRadius: 0.065, friction: 0.13 }, 4e5) // 211.25
 */
export function clutchTorque(clutch: Clutch, pressure: number, head = 0): number {
  const force = pressure * clutch.area + head - clutch.springForce;
  return force > 0 ? clutch.friction * clutch.faces * clutch.meanRadius * force : 0;
}

/**
 * Pressure a clutch needs to hold a torque: the inverse of clutchTorque.
 *
 * Equation: p = (T / (mu N r_m) + F_spring) / A.
 *
 * @param clutch friction [-], faces [-], meanRadius [m], area [m2], springForce [N]
 * @param torque [N m]
 * @returns pressure [Pa]
 * Range: torque 0 to 1e5 N m.
 * @throws EngineError on a negative or absurd torque.
 * Source: as clutchTorque.
 * @example
 * clutchPressureFor({ area: 85e-4, springForce: 900, strokeVolume: 3e-5, compliance: 4e-12, faces: 10, meanRadius: 0.065, friction: 0.13 }, 211.25) // 4e5
 */
export function clutchPressureFor(clutch: Clutch, torque: number): number {
  requireInRange(torque, { name: 'Torque', unit: 'N m', min: 0, max: 1e5 });
  return (
    (torque / (clutch.friction * clutch.faces * clutch.meanRadius) + clutch.springForce) /
    clutch.area
  );
}
