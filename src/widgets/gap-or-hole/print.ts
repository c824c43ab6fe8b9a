/** This simulation's own numbers as printed. */
import { GAP_REYNOLDS_LIMIT } from '../../engine/index.ts';
import {
  count,
  flow,
  format,
  printNumber,
  type Quantity,
  type UnitSystem,
} from '../../ui/quantity.ts';
import { words } from './words.en.ts';

/** Flow with more places when it is small: a thin crack in cold fluid lets drops through. */
export const leak: Quantity = {
  ...flow,
  si: { ...flow.si, digitsUnderTen: 3 },
  us: { ...flow.us, digitsUnderTen: 4 },
};
const midLeak: Quantity = {
  ...flow,
  si: { ...flow.si, digitsUnderTen: 2 },
  us: { ...flow.us, digitsUnderTen: 2 },
};

/** L/min or gpm with about three figures; below what a spoon could catch, in words. */
export function printLeak(litres: number, system: UnitSystem): string {
  if (litres < 0.002) return words.lessThan({ leak: format(0.002, leak, system) });
  return format(litres, litres < 0.4 ? leak : midLeak, system);
}

/** 10.4, 1.03: two places where the first would hide the growth. */
export const printTimes = (ratio: number): string =>
  printNumber(ratio, ratio < 2 ? 2 : ratio < 19.95 ? 1 : 0);

/** Where the laminar law ends. */
export const limit = format(GAP_REYNOLDS_LIMIT, count, 'si');
