import {
  airHeld,
  airHoleFlow,
  airWays,
  BENCH_AIR,
  holeArea,
  PA_PER_PSI,
  type AirTestTarget,
  type AirWay,
} from '../engine/index.ts';
import type { Car } from './car.ts';

/** What two manuals print as the most for this test on their machines [kPa gauge]: 50 and 80 psi. */
export const PRINTED_CEILINGS = { low: (50 * PA_PER_PSI) / 1e3, high: (80 * PA_PER_PSI) / 1e3 };

/** How air is put on: supply [kPa gauge], the hole before the gauge [mm], and whether fluid was put in first. */
export interface AirAsked {
  readonly supply: number;
  readonly hole: number;
  readonly wet: boolean;
}
/** What gauge and ear have of it. */
export interface AirReading {
  /** Of the supply, behind the hole [%]. */
  readonly held: number;
  /** The same as a pressure [kPa gauge]. */
  readonly kpa: number;
  /** What gets away in each place [g/s]; nothing stands here that is tight. */
  readonly ways: Partial<Readonly<Record<AirWay, number>>>;
  /** Where most of it gets away. */
  readonly most: AirWay | null;
  /** All of it, as a share of what the hole can pass at all. */
  readonly loud: number;
  /** Whether the piston goes over its return spring; no piston hangs on the seal by itself. */
  readonly thud: boolean;
}

const GRAMS = 1e3;

export function airReading({ plant }: Car, target: AirTestTarget, asked: AirAsked): AirReading {
  const { ambient } = BENCH_AIR;
  const air = { ...BENCH_AIR, supply: ambient + asked.supply * 1e3 };
  const rig = { hole: holeArea(asked.hole / 1e3), wet: asked.wet };
  const share = airHeld(plant, target, air, rig);
  const lost = Object.entries(airWays(plant, target, air, rig, share)) as [AirWay, number][];
  const sorted = lost.toSorted(([, one], [, other]) => other - one);
  const pa = share * asked.supply * 1e3;
  const clutch = target === 'transferSeal' ? null : plant.clutches[target];
  return {
    held: 100 * share,
    kpa: pa / 1e3,
    ways: Object.fromEntries(sorted.map(([way, flow]) => [way, flow * GRAMS])),
    most: sorted[0]?.[0] ?? null,
    loud:
      sorted.reduce((sum, [, flow]) => sum + flow, 0) /
      airHoleFlow(rig.hole, { ...air, ambient: 0 }),
    thud: clutch !== null && pa * clutch.area > clutch.springForce,
  };
}
