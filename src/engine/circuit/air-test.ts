import { EngineError } from '../error.ts';
import { BENCH_AIR, airGapFlow, airHoleFlow } from '../flow/air.ts';
import type { AirSupply } from '../flow/air.ts';
import { holeArea } from '../flow/hole.ts';
import type { Gap } from '../flow/gap.ts';
import { findRoot } from '../numerics/find-root.ts';
import { atTemperature } from '../transmission/at-temperature.ts';
import { CIRCUITS } from '../transmission/circuits.ts';
import type { Circuit } from '../transmission/circuits.ts';
import type { Plant } from '../transmission/plant.ts';
import { ICE_POINT_K } from '../units.ts';

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

/** A film of oil seats the rings: in air only what they have worn beyond sound leaks as it does in fluid. Dry, all of it does. */
const ringInAir = (rings: Gap, wet: boolean): Gap => ({
  ...rings,
  height: wet ? RING_IN_AIR.inAir + (rings.height - RING_IN_AIR.inFluid) : rings.height,
});

/** A place where air gets away. */
export type AirWay = 'rings' | 'pistonSeal' | 'hardLip' | 'openPort' | 'transferSeal';
/** What lets air out of one place: slots, and the area of an open port. */
interface WaysOut {
  readonly gaps: Partial<Readonly<Record<AirWay, Gap>>>;
  readonly openPortArea: number;
}

/** The ways out as they are at the air's temperature, so that a search over pressure finds them once. */
function onBench(plant: Plant, target: AirTestTarget, tempK: number, wet: boolean): WaysOut {
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

/** Share of the supply's gauge pressure behind a hole, where so much is lost at each pressure there. */
function heldBehind(hole: number, air: AirSupply, lost: (behind: AirSupply) => number): number {
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
  return airLost(onBench(plant, target, air.tempK, true), air);
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
  const ways = onBench(plant, target, air.tempK, rig.wet);
  return heldBehind(rig.hole, air, (behind) => airLost(ways, behind));
}

/**
 * Where the air of a bench test gets away.
 *
 * Equation: airGapFlow or airHoleFlow of each way out, at the pressure behind the tester's hole.
 *
 * @param plant the transmission [-]
 * @param target forward, reverse, high or transferSeal [-]
 * @param air supply and ambient [Pa absolute], tempK [K]; 275 kPa gauge at 20 degC where left out
 * @param rig hole [m2], and whether fluid was put in first; 1.5 mm and wet where left out
 * @returns mass flow of each way that leaks [kg/s]
 * Range: supply above ambient.
 * @throws EngineError on an unknown target.
 * Leaves out: as airHeld.
 * Source: as airHeld.
 * @example
 * airWays(training, 'high').rings // 5.65818e-4
 */
export function airWays(
  plant: Plant,
  target: AirTestTarget,
  air: AirSupply = BENCH_AIR,
  rig: AirRig = BENCH_RIG,
): Partial<Record<AirWay, number>> {
  const { gaps, openPortArea } = onBench(plant, target, air.tempK, rig.wet);
  const held = airHeld(plant, target, air, rig);
  const behind = { ...air, supply: air.ambient + held * (air.supply - air.ambient) };
  const flows = Object.entries(gaps).map(([way, gap]) => [way, airGapFlow(gap, behind)] as const);
  const all = [...flows, ['openPort', airHoleFlow(openPortArea, behind)] as const];
  return Object.fromEntries(all.filter(([, flow]) => flow > 0));
}

/**
 * What stays of the supply where the leak is a plain round hole.
 *
 * Equation: as airHeld, with airHoleFlow of the leak for airTest.
 *
 * @param leak area of the leak [m2]
 * @param air supply and ambient [Pa absolute], tempK [K]; 275 kPa gauge at 20 degC where left out
 * @param hole area of the tester's hole [m2]; 1.5 mm where left out
 * @returns share of the supply's gauge pressure, 0 to 1 [-]
 * Range: supply above ambient.
 * Leaves out: as airHeld.
 * Source: continuity at the nozzle, White, Fluid Mechanics, ch. 9.
 * @example
 * airHeldByHole(1e-6) // 0.90396
 */
export function airHeldByHole(
  leak: number,
  air: AirSupply = BENCH_AIR,
  hole: number = TESTER_HOLE,
): number {
  return heldBehind(hole, air, (behind) => airHoleFlow(leak, behind));
}
