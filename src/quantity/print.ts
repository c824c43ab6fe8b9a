/** The one printer. Which digits a number gets is the unit's business (quantities.ts), never the caller's. */
import { MARKS, printNumber, type Marks } from './language.ts';
import { toShown, type Digits, type Quantity } from './quantity.ts';
import type { UnitSystem } from './unit-system.ts';

/** Decimals for a size, judged as it will be printed: 9.97 with one decimal is 10.0, and ten has none. */
export function decimalsFor(
  size: number,
  digits: Digits,
): readonly [decimals: number, least: number] {
  let [decimals, least] = [0, 0];
  for (const [i, [from, fewer, fewest = fewer]] of digits.entries()) {
    if (i === 0 || Number(Math.abs(size).toFixed(decimals)) >= from)
      [decimals, least] = [fewer, fewest];
  }
  return [decimals, least];
}

/** What rounds to nothing is "0", without decimals to suggest that somebody measured it. */
export function printed(
  metric: number,
  quantity: Quantity,
  system: UnitSystem,
  more: number,
  marks: Marks = MARKS,
): string {
  // Conversions leave dust in the sixteenth digit, and a value halfway between two prints must not fall by it.
  const shown = Number(toShown(metric, quantity, system).toPrecision(12));
  const [decimals, least] = decimalsFor(shown, quantity[system].digits);
  return Number(shown.toFixed(decimals + more)) === 0
    ? '0'
    : printNumber(shown, decimals + more, least + more, marks);
}

export const withUnit = (number: string, symbol: string): string =>
  symbol === '' ? number : `${number}\u00a0${symbol}`;

/** The number alone, without its unit, from a metric value. */
export const formatNumber = (
  metric: number,
  quantity: Quantity,
  system: UnitSystem,
  marks: Marks = MARKS,
): string => printed(metric, quantity, system, 0, marks);

/** Number and unit, never broken across lines: "620 kPa", "10 thousandths". */
export function format(
  metric: number,
  quantity: Quantity,
  system: UnitSystem,
  marks: Marks = MARKS,
): string {
  const number = formatNumber(metric, quantity, system, marks);
  return Number.isFinite(metric) ? withUnit(number, quantity[system].symbol) : number;
}

/** `format` for one reader: a sentence with several numbers names the unit system once. */
export const printer =
  (system: UnitSystem) =>
  (metric: number, quantity: Quantity): string =>
    format(metric, quantity, system);
