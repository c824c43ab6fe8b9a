/**
 * A range typed where one number is asked: makers print "55-65". Apart from the parser, which every page with a slider
 * carries: this is for the fields into which somebody copies what a maker prints.
 */
import { parseAmount } from './parse-amount.ts';
import type { Quantity } from './quantity.ts';
import { words } from './range-words.en.ts';
import { readNumber } from './read-number.ts';
import { allowed, type Range } from './refusals.ts';
import { typedUnits, unitKey } from './typed-units.ts';
import type { UnitSystem } from './unit-system.ts';

/** Dashes of all lengths stand between two numbers, and so do spaces of all widths. */
const tidy = (text: string): string =>
  text
    .normalize('NFKC')
    .replace(/[\u2212\u2010-\u2014]/gu, '-')
    .replace(/\s+/gu, ' ')
    .trim();

const SECOND = /^(.*?) ?(?:-|to) ?([\d.].*)$/u;

/** The middle of what is a range, with its unit where one was typed; undefined for anything else. */
function middleOf(text: string, quantity: Quantity): string | undefined {
  const first = readNumber(tidy(text));
  const [, before = '', after = ''] = SECOND.exec(first?.rest ?? '') ?? [];
  const second = readNumber(after);
  const [low, high] = [first, second].map((number) => number?.values[0]);
  if (low === undefined || high === undefined) return undefined;
  const units = [before, second?.rest ?? ''].map((unit) => unit.trim()).filter(Boolean);
  const known = typedUnits(quantity);
  if (!units.every((unit) => known.has(unitKey(unit)))) return undefined;
  return [Number(((low + high) / 2).toPrecision(6)), ...units.slice(-1)].join(' ');
}

/**
 * What is said to a range, and what may be typed in its place where its middle is allowed. Undefined for what is none.
 *
 * @example
 * rangeTyped('55-65', pressure, 'us')?.middle // '60'
 */
export function rangeTyped(
  text: string,
  quantity: Quantity,
  system: UnitSystem,
  range?: Range,
): { readonly sentence: string; readonly middle?: string } | undefined {
  const middle = middleOf(text, quantity);
  if (middle === undefined) return undefined;
  const says = words.aRange(text.trim());
  return parseAmount(middle, quantity, system, range).ok
    ? { sentence: `${says} ${words.middle(middle)}`, middle }
    : { sentence: `${says} ${allowed(quantity, system, range)}` };
}
