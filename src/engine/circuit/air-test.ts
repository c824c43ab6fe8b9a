import { EngineError } from '../error.ts';
import { BENCH_AIR, airGapFlow, airHoleFlow } from '../flow/air.ts';
import type { AirSupply } from '../flow/air.ts';
import { CIRCUITS } from '../gearbox.ts';
import type { Circuit, Plant } from '../gearbox.ts';

/** What can be put under air: a circuit with the valve body off, or the transfer seal on its own. */
export type AirTestTarget = Circuit | 'transferSeal';

/**
 * Air lost in a bench test: valve body off, so rings, piston seal and open port remain of a circuit; the transfer
 * seal is checked on its own.
 *
 * @param plant the gearbox [-]
 * @param target forward, reverse, direct or transferSeal [-]
 * @param air supply and ambient [Pa absolute], tempK [K]; 275 kPa gauge at 20 degC where left out
 * @returns mass flow [kg/s]
 * Range: supply at or above ambient.
 * @throws EngineError on an unknown target.
 * Leaves out: how well the rubber nozzle seals, and a piston that blows past until it seats.
 * Source: airGapFlow and airHoleFlow; 30 to 40 psi of clean dry air is common practice, no source.
 * @example
 * airTest(gearbox, 'direct') // 0.00544192
 */
export function airTest(plant: Plant, target: AirTestTarget, air: AirSupply = BENCH_AIR): number {
  if (target === 'transferSeal') return airGapFlow(plant.leaks.forward.transferSeal, air);
  if (!CIRCUITS.includes(target)) {
    throw new EngineError(
      'circuit',
      `There is nothing called ${target} to put under air; it is ${CIRCUITS.join(', ')} or transferSeal.`,
    );
  }
  const { rings, pistonSeal, openPortArea } = plant.leaks[target];
  return airGapFlow(rings, air) + airGapFlow(pistonSeal, air) + airHoleFlow(openPortArea, air);
}
