/** What is said to typing that cannot be taken: what was wrong, then what is allowed. */
import { listOf } from './lists.ts';
import { format, formatNumber } from './print.ts';
import type { Quantity } from './quantity.ts';
import type { UnitSystem } from './unit-system.ts';
import { words } from './words.en.ts';

export interface Range {
  readonly min: number;
  readonly max: number;
  /** A number as it is met in life, for a sentence that says what to write; without one the middle stands in. */
  readonly example?: number;
}
/** Anything may be typed; a number as it is met in life is named where there is one. */
export interface Unbounded {
  readonly min?: never;
  readonly example: number;
}

const cut = (text: string): string => (text.length > 24 ? `${text.slice(0, 23)}…` : text);

export const problems = {
  empty: () => words.empty,
  noNumber: (text: string) => words.noNumber({ text: cut(text) }),
  twoNumbers: (digits: string) => words.twoNumbers({ text: cut(digits) }),
  unknownUnit: (unit: string, { name }: Quantity) =>
    words.unknownUnit({ unit: cut(unit), quantity: name }),
};

export const rangeWords = ({ min, max }: Range, quantity: Quantity, system: UnitSystem): string =>
  words.range({ min: format(min, quantity, system), max: format(max, quantity, system) });

export function outside(
  value: number,
  range: Range,
  quantity: Quantity,
  system: UnitSystem,
): string {
  const says = value > range.max ? words.above : words.below;
  return says({
    value: format(value, quantity, system),
    range: rangeWords(range, quantity, system),
  });
}

/** "Write a number with psi or kPa, 0 psi to 250 psi, such as 58." */
export function allowed(quantity: Quantity, system: UnitSystem, range?: Range | Unbounded): string {
  const symbols = new Set([quantity[system].symbol, quantity.us.symbol, quantity.si.symbol]);
  symbols.delete('');
  const units = listOf([...symbols], 'disjunction');
  if (range?.min === undefined)
    return words.write({
      units,
      range: '',
      example: range === undefined ? '' : format(range.example, quantity, system),
    });
  return words.write({
    units,
    range: rangeWords(range, quantity, system),
    example: formatNumber(range.example ?? (range.min + range.max) / 2, quantity, system),
  });
}
