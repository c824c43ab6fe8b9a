/** This simulation's own words for its numbers. */
import { hours } from '../../quantity/part-quantities.ts';
import { printer } from '../../quantity/print.ts';
import { count } from '../../quantity/quantities.ts';
import { CARS } from '../../shop/examples.ts';
import type { OpenModel } from './model.ts';
import { words } from './words.en.ts';

const print = printer('si');
/** Reads alike in both unit systems. */
export const printHours = (value: number): string => print(value, hours);
export const printCount = (value: number): string => print(value, count);
export const cars = printCount(CARS);

export function saysOf({ sums }: OpenModel): string {
  const { costs, worth, left, renewed } = sums.value;
  const told = {
    costs: printHours(costs),
    worth: printHours(worth),
    cars,
    by: printHours(Math.abs(left - renewed)),
  };
  if (worth < 0) return words.says.worse(told);
  if (told.costs === told.worth) return words.says.even(told);
  return words.says[costs < worth ? 'pays' : 'loses'](told);
}
