/** How the tables of quantities are written: a unit with the digits of the instrument that shows it. */
import type { Digits, Quantity, Scale, Unit } from './quantity.ts';

export const WHOLE: Digits = [[0, 0]];
/** A dial: a decimal under ten, where a whole number would hide a real difference. */
export const DIAL: Digits = [
  [0, 1],
  [10, 0],
];
/** The same for numbers that people choose: 5, not 5.0. */
export const ROUND: Digits = [
  [0, 1, 0],
  [10, 0],
];
/** A meter with three figures. */
export const METER: Digits = [
  [0, 2],
  [10, 1],
  [100, 0],
];
/** A dynamometer. */
export const DYNO: Digits = [
  [0, 1],
  [100, 0],
];
export const fixed = (decimals: number): Digits => [[0, decimals]];

export const scale = (symbol: string, factor: number, zero = 0): Scale => ({
  symbol,
  factor,
  zero,
});
export const unit = (symbol: string, factor: number, digits: Digits, zero = 0): Unit => ({
  symbol,
  factor,
  zero,
  digits,
});
export const both = (name: string, si: Unit, us: Unit): Quantity => ({ name, si, us });
/** Reads the same in both systems. */
export const shared = (name: string, only: Unit): Quantity => both(name, only, only);
