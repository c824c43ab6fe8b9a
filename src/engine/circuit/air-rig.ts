import { holeArea } from '../flow/hole.ts';
import type { Circuit } from '../transmission/circuits.ts';

/** What can be put under air: a circuit with the valve body off, or the transfer seal on its own. */
export type AirTestTarget = Circuit | 'transferSeal';

/** A sealing ring's gap as tall in fluid as this [m] counts as sound, and in air stands at the second figure [m]. */
export const RING_IN_AIR = { inFluid: 25e-6, inAir: 10e-6 } as const;
/** The hole of the tester between supply and circuit [m2]: 1.5 mm. */
export const TESTER_HOLE = holeArea(1.5e-3);

/** How air is put on: the hole between supply and gauge [m2], and whether fluid was put in first. */
export interface AirRig {
  readonly hole: number;
  readonly wet: boolean;
}
/** The tester of the model, seals wet as they come from the car. */
export const BENCH_RIG: AirRig = { hole: TESTER_HOLE, wet: true };
