/** This simulation's own numbers as printed. */
import { GAP_REYNOLDS_LIMIT } from '../../engine/index.ts';
import { format } from '../../quantity/print.ts';
import { count, flow, times } from '../../quantity/quantities.ts';
import type { UnitSystem } from '../../quantity/unit-system.ts';
import { words } from './words.en.ts';

/** Below what a spoon could catch, in words. */
export function printLeak(litres: number, system: UnitSystem): string {
  if (litres < 0.002) return words.lessThan({ leak: format(0.002, flow, system) });
  return format(litres, flow, system);
}

/** How many times one leak is the other. */
export const printTimes = (ratio: number): string => format(ratio, times, 'si');

/** Where the laminar law ends. */
export const limit = format(GAP_REYNOLDS_LIMIT, count, 'si');
