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

/** "Write a number with psi or kPa, such as 250 psi." */
export function allowed(quantity: Quantity, system: UnitSystem, range?: Range): string {
  const symbols = new Set([quantity[system].symbol, quantity.us.symbol, quantity.si.symbol]);
  symbols.delete('');
  const units = listOf([...symbols], 'disjunction');
  const [own = ''] = symbols;
  if (range === undefined) {
    const example = own === '' ? '2.5' : `250\u00a0${own}`;
    return units === '' ? words.write({ example }) : words.writeWithUnit({ units, example });
  }
  const example = formatNumber(range.example ?? (range.min + range.max) / 2, quantity, system);
  const inside = { range: rangeWords(range, quantity, system), example };
  return units === ''
    ? words.writeInRange(inside)
    : words.writeInRangeWithUnit({ ...inside, units });
}
