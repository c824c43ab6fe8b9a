/** What is said to typing that cannot be taken: what was wrong, then what is allowed. */
import { listOf } from './lists.ts';
import { format, formatNumber } from './print.ts';
import type { Quantity } from './quantity.ts';
import type { UnitSystem } from './unit-system.ts';

export interface Range {
  readonly min: number;
  readonly max: number;
}

const quoted = (text: string): string => `“${text.length > 24 ? `${text.slice(0, 23)}…` : text}”`;

export const problems = {
  empty: () => 'There is no number yet.',
  noNumber: (text: string) => `${quoted(text)} does not start with a number.`,
  twoNumbers: (digits: string) => `${quoted(digits)} cannot be read as one number.`,
  unknownUnit: (unit: string, { name }: Quantity) => `${quoted(unit)} is no unit of ${name} here.`,
};

export const rangeWords = ({ min, max }: Range, quantity: Quantity, system: UnitSystem): string =>
  `${format(min, quantity, system)} to ${format(max, quantity, system)}`;

export function outside(
  value: number,
  range: Range,
  quantity: Quantity,
  system: UnitSystem,
): string {
  const side = value > range.max ? 'above' : 'below';
  return `${format(value, quantity, system)} is ${side} what is allowed here: ${rangeWords(range, quantity, system)}.`;
}

/** "Write a number with psi or kPa, such as 250 psi." */
export function allowed(quantity: Quantity, system: UnitSystem, range?: Range): string {
  const symbols = new Set([quantity[system].symbol, quantity.us.symbol, quantity.si.symbol]);
  symbols.delete('');
  const units = symbols.size === 0 ? '' : ` with ${listOf([...symbols], 'disjunction')}`;
  const [own = ''] = symbols;
  const what =
    range === undefined
      ? `such as ${own === '' ? '2.5' : `250\u00a0${own}`}`
      : `${rangeWords(range, quantity, system)}, such as ${formatNumber((range.min + range.max) / 2, quantity, system)}`;
  return `Write a number${units}, ${what}.`;
}
