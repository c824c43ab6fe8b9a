import type { PerCircuit } from '../transmission/circuits.ts';
import type { Converter } from './converter.ts';

/** Converter, inertias, gears and vehicle around a transmission. */
export interface Drivetrain extends Converter {
  /** [kg m2] */
  readonly engineInertia: number;
  /** [kg m2] */
  readonly turbineInertia: number;
  readonly idleRpm: number;
  /** Ratio of the gear that a circuit takes part in here: forward first, reverse reverse, high third. */
  readonly ratios: PerCircuit<number>;
  readonly finalDrive: number;
  /** [m] */
  readonly wheelRadius: number;
  /** [kg] */
  readonly mass: number;
  /** Force that a rolling vehicle always meets [N]. */
  readonly drag: number;
}
