/**
 * The one parser of typed amounts: "383", "5,7 kPa", "83psi", "1 200 kPa", "1,200.5", "−10 °C", "180F", "1/64 in".
 */
import { MARKS, type Marks } from './language.ts';
import { format } from './print.ts';
import { fromScale, type Quantity } from './quantity.ts';
import { readNumber } from './read-number.ts';
import { allowed, outside, problems, type Range, type Unbounded } from './refusals.ts';
import { typedUnits, unitKey } from './typed-units.ts';
import type { UnitSystem } from './unit-system.ts';

export type ParsedAmount =
  { readonly ok: true; readonly value: number } | { readonly ok: false; readonly sentence: string };

/** Copied text and phone keyboards bring their own minus signs, spaces and half signs. */
const clean = (text: string): string =>
  text
    .replace(/[°º˚]/gu, ' ')
    .replace(/(\d)([¼-¾⅐-⅞])/gu, '$1 $2')
    .normalize('NFKC')
    .replace(/[\u2212\u2013\u2010\u2011]/gu, '-')
    .replace(/[\s\u200b\ufeff]+/gu, ' ')
    .trim();

/**
 * What a person typed, as a metric value, or a sentence that says what was wrong and what is allowed. A unit in the text wins
 * over the system in force, so "212 F" means the same to everybody. Never throws.
 */
export function parseAmount(
  text: string,
  quantity: Quantity,
  system: UnitSystem,
  range?: Range | Unbounded,
  marks: Marks = MARKS,
): ParsedAmount {
  const no = (problem: string): ParsedAmount => ({
    ok: false,
    sentence: `${problem} ${allowed(quantity, system, range)}`,
  });
  const tidy = clean(text);
  if (tidy === '') return no(problems.empty());
  const number = readNumber(tidy, marks[1]);
  if (number === undefined) return no(problems.noNumber(text.trim()));
  const { values, digits, rest } = number;
  if (values.length === 0) return no(problems.twoNumbers(digits));
  const key = unitKey(rest);
  const unit = key === '' ? quantity[system] : typedUnits(quantity).get(key);
  if (unit === undefined)
    return no(/^\d/u.test(rest) ? problems.twoNumbers(tidy) : problems.unknownUnit(rest, quantity));
  const metric = values.map((value) => fromScale(value, unit));
  const [first = Number.NaN] = metric;
  if (range?.min === undefined) return { ok: true, value: first };
  const settled = metric.map((value) => settle(value, range, quantity, system));
  const inside = settled.find((value) => value >= range.min && value <= range.max);
  return inside === undefined
    ? { ok: false, sentence: outside(first, range, quantity, system) }
    : { ok: true, value: inside };
}

/**
 * Conversions leave dust (212 °F = 100.00000000000001 °C). Six decimals are finer than any control and keep links short. What
 * prints like a limit is the limit: "16 thousandths" is taken where 0.4 mm is the most and reads "16 thousandths".
 */
function settle(value: number, range: Range, quantity: Quantity, system: UnitSystem): number {
  const rounded = Math.round(value * 1e6) / 1e6 + 0;
  if (rounded >= range.min && rounded <= range.max) return rounded;
  const limit = rounded < range.min ? range.min : range.max;
  return format(value, quantity, system) === format(limit, quantity, system) ? limit : rounded;
}
