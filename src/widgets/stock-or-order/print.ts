/** This simulation's own words for its numbers. */
import { printer } from '../../quantity/print.ts';
import { count } from '../../quantity/quantities.ts';
import { rate } from '../../quantity/part-quantities.ts';
import type { ShelfModel } from './model.ts';
import { words } from './words.en.ts';

const print = printer('si');
/** Reads alike in both unit systems. */
export const printCount = (value: number): string => print(value, count);
/** With a tenth: cars a year, parts on the average. */
export const printTenth = (value: number): string => print(value, rate);
/** Of a hundred cars; never 100 while one may wait. */
export const printIn100 = (share: number): string =>
  printCount(share < 1 ? Math.min(99, 100 * share) : 100);

export function saysOf({ shelf, givens }: ShelfModel): string {
  const { keep, found, waitAYear, lying, money } = shelf.value;
  const wait = printTenth(waitAYear);
  return keep === 0
    ? words.says.none({ wait, days: printCount(givens.days.value) })
    : words.says.some({
        keep: printCount(keep),
        found: printIn100(found),
        wait,
        lying: printTenth(lying),
        money: printCount(money),
      });
}
