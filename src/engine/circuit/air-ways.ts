import { airGapFlow, airHoleFlow, BENCH_AIR } from '../flow/air.ts';
import type { AirSupply } from '../flow/air.ts';
import type { Plant } from '../transmission/plant.ts';
import { BENCH_RIG, type AirRig, type AirTestTarget } from './air-rig.ts';
import { airHeld, airWaysOut, type AirWay } from './air-test.ts';

/**
 * Where the air of a bench test gets away.
 *
 * Equation: airGapFlow or airHoleFlow of each way out, at the pressure behind the tester's hole.
 *
 * @param plant the transmission [-]
 * @param target forward, reverse, high or transferSeal [-]
 * @param air supply and ambient [Pa absolute], tempK [K]; 275 kPa gauge at 20 degC where left out
 * @param rig hole [m2], and whether fluid was put in first; 1.5 mm and wet where left out
 * @param held what airHeld says of the same, for whoever has it already [-]
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
  held: number = airHeld(plant, target, air, rig),
): Partial<Record<AirWay, number>> {
  const { gaps, openPortArea } = airWaysOut(plant, target, air.tempK, rig.wet);
  const behind = { ...air, supply: air.ambient + held * (air.supply - air.ambient) };
  const flows = Object.entries(gaps).map(([way, gap]) => [way, airGapFlow(gap, behind)] as const);
  const all = [...flows, ['openPort', airHoleFlow(openPortArea, behind)] as const];
  return Object.fromEntries(all.filter(([, flow]) => flow > 0));
}
