/** This simulation's own numbers as printed. */
import { GAP_REYNOLDS_LIMIT } from '../../engine/index.ts';
import { format, formatNumber } from '../../quantity/print.ts';
import { count, flow, times } from '../../quantity/quantities.ts';
import { fromShown } from '../../quantity/quantity.ts';
import type { UnitSystem } from '../../quantity/unit-system.ts';
import { words } from './words.en.ts';

/** The finest flow that is printed; below it, in words. */
const FINEST = 0.001;
export function printLeak(litres: number, system: UnitSystem): string {
  const finest = fromShown(FINEST, flow, system);
  return litres < finest
    ? words.lessThan({ leak: format(finest, flow, system) })
    : format(litres, flow, system);
}

export const printTimes = (ratio: number): string => formatNumber(ratio, times, 'si');

/** Where the laminar law ends. */
export const limit = format(GAP_REYNOLDS_LIMIT, count, 'si');
