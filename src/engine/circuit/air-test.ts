import { EngineError } from '../error.ts';
import { BENCH_AIR, airGapFlow, airHoleFlow } from '../flow/air.ts';
import type { AirSupply } from '../flow/air.ts';
import type { Gap } from '../flow/gap.ts';
import { findRoot } from '../numerics/find-root.ts';
import { atTemperature } from '../transmission/at-temperature.ts';
import { CIRCUITS } from '../transmission/circuits.ts';
import type { Plant } from '../transmission/plant.ts';
import { ICE_POINT_K } from '../units.ts';
import { BENCH_RIG, RING_IN_AIR, type AirRig, type AirTestTarget } from './air-rig.ts';

/** A film of oil seats the rings: in air only what they have worn beyond sound leaks as it does in fluid. Dry, all of it does. */
const ringInAir = (rings: Gap, wet: boolean): Gap => ({
  ...rings,
  height: wet ? RING_IN_AIR.inAir + (rings.height - RING_IN_AIR.inFluid) : rings.height,
});

/** A place where air gets away. */
export type AirWay = 'rings' | 'pistonSeal' | 'hardLip' | 'openPort' | 'transferSeal';
/** What lets air out of one place: slots, and the area of an open port. */
export interface WaysOut {
  readonly gaps: Partial<Readonly<Record<AirWay, Gap>>>;
  readonly openPortArea: number;
}

/**
 * What lets air out of one place, as it is at the air's temperature, so that a search over pressure finds it once.
 *
 * Equation: the rings' gap 10 um + (h - 25 um) where a film of oil seats them, h where they are dry; a hard lip as it is at
 * the air's temperature.
 *
 * @param plant the transmission [-]
 * @param target forward, reverse, high or transferSeal [-]
 * @param tempK temperature of the air [K]
 * @param wet whether fluid was put in first [-]
 * @returns gaps by their place [m], and the area of an open port [m2]
 * Range: any.
 * @throws EngineError on an unknown target.
 * Leaves out: fluid that stands in the passage and is blown out first.
 * Source: the oil film is ours, and that dry rings leak through all of their gap is ours too.
 * @example
 * airWaysOut(training, 'high', 293.15, true).gaps.rings.height // 1e-5
 */
export function airWaysOut(
  plant: Plant,
  target: AirTestTarget,
  tempK: number,
  wet: boolean,
): WaysOut {
  if (target === 'transferSeal') {
    const split = CIRCUITS.map((circuit) => plant.leaks[circuit].transferSeal).find(
      ({ width }) => width > 0,
    );
    return { gaps: split === undefined ? {} : { transferSeal: split }, openPortArea: 0 };
  }
  if (!CIRCUITS.includes(target)) {
    throw new EngineError(
      'circuit',
      `There is nothing called ${target} to put under air; it is ${CIRCUITS.join(', ')} or transferSeal.`,
    );
  }
  const leaks = atTemperature(plant, tempK - ICE_POINT_K).leaks[target];
  const { rings, pistonSeal, hardLip, openPortArea } = leaks;
  return { gaps: { rings: ringInAir(rings, wet), pistonSeal, hardLip }, openPortArea };
}

const airLost = ({ gaps, openPortArea }: WaysOut, air: AirSupply): number =>
  Object.values(gaps).reduce((sum, gap) => sum + airGapFlow(gap, air), 0) +
  airHoleFlow(openPortArea, air);

/**
 * What stays of a supply behind a hole: a gauge there reads this share of the supply's.
 *
 * Equation: the pressure p at which airHoleFlow(hole, supply to p) = lost(p); (p - ambient) / (supply - ambient).
 *
 * @param hole area of the hole [m2]
 * @param air supply and ambient [Pa absolute], tempK [K]
 * @param lost what gets away from a pressure behind the hole to ambient, growing with it [kg/s]
 * @returns share of the supply's gauge pressure, 0 to 1 [-]
 * Range: supply above ambient.
 * Leaves out: the volume between hole and leak, which only takes time to fill.
 * Source: continuity at the nozzle.
 * @example
 * airHeldBehind(2e-6, { supply: 376325, ambient: 101325, tempK: 293.15 }, (air) => airHoleFlow(1e-6, air)) // 0.92394
 */
export function airHeldBehind(
  hole: number,
  air: AirSupply,
  lost: (behind: AirSupply) => number,
): number {
  const { supply, ambient } = air;
  const spare = (pressure: number): number =>
    airHoleFlow(hole, { ...air, ambient: pressure }) - lost({ ...air, supply: pressure });
  const atSupply = spare(supply);
  // Nothing leaks: the gauge stands at the supply.
  if (atSupply >= 0) return 1;
  const { root } = findRoot(spare, ambient, supply, spare(ambient), atSupply);
  return (root - ambient) / (supply - ambient);
}

/**
 * Air lost in a bench test: valve body off, so rings, piston seal, hard lip and open port remain of a circuit; the
 * transfer seal is checked on its own, one split of it.
 *
 * Equation: sum of airGapFlow and airHoleFlow, the rings' gap 10 um + (h - 25 um), a hard lip as it is at the air's
 * temperature.
 *
 * @param plant the transmission [-]
 * @param target forward, reverse, high or transferSeal [-]
 * @param air supply and ambient [Pa absolute], tempK [K]; 275 kPa gauge at 20 degC where left out
 * @returns mass flow [kg/s]
 * Range: supply at or above ambient.
 * @throws EngineError on an unknown target.
 * Leaves out: how well the rubber nozzle seals, and a piston that blows past until it seats.
 * Source: airGapFlow and airHoleFlow; 30 to 40 psi of clean dry air is common practice, no source; the oil film is ours.
 * @example
 * airTest(training, 'high') // 6.76077e-4
 */
export function airTest(plant: Plant, target: AirTestTarget, air: AirSupply = BENCH_AIR): number {
  return airLost(airWaysOut(plant, target, air.tempK, true), air);
}

/**
 * What stays of the supply behind the tester's hole: a gauge there reads this share of the supply's.
 *
 * Equation: the pressure p at which airHoleFlow(tester hole, supply to p) = airTest(supply p); (p - ambient) / (supply -
 * ambient).
 *
 * @param plant the transmission [-]
 * @param target forward, reverse, high or transferSeal [-]
 * @param air supply and ambient [Pa absolute], tempK [K]; 275 kPa gauge at 20 degC where left out
 * @param rig hole [m2], and whether fluid was put in first; 1.5 mm and wet where left out
 * @returns share of the supply's gauge pressure, 0 to 1 [-]
 * Range: supply above ambient.
 * @throws EngineError on an unknown target.
 * Leaves out: the volume between hole and leak, which only takes time to fill.
 * Source: continuity at the nozzle; the tester and its hole are ours, no trade limit is known. That dry rings leak through
 * all of their gap is ours.
 * @example
 * airHeld(training, 'high') // 0.89226
 */
export function airHeld(
  plant: Plant,
  target: AirTestTarget,
  air: AirSupply = BENCH_AIR,
  rig: AirRig = BENCH_RIG,
): number {
  const ways = airWaysOut(plant, target, air.tempK, rig.wet);
  return airHeldBehind(rig.hole, air, (behind) => airLost(ways, behind));
}
