/**
 * A sum that closes as printed: whoever takes a calculator to the figures on the page comes to the figure on the page. The
 * result is printed as everywhere else; its parts get more digits where it would not close without.
 */
import { printed, withUnit } from '../../quantity/print.ts';
import { quantityOf, type QuantityName } from '../../quantity/by-name.ts';
import { toShown } from '../../quantity/quantity.ts';
import type { UnitSystem } from '../../quantity/unit-system.ts';
import { numbersIn, readSum, valueOf, type Term } from './read-sum.ts';
import { inSi, unitFactor, type UnitFactor } from './unit-factor.ts';

export interface SumNumber {
  readonly quantity: QuantityName;
  /** In the metric unit of its quantity. */
  readonly value: number;
}
type Lookup = (id: string) => SumNumber;

/** How far result and parts may be apart before rounding: what the last digits of a computer's numbers lose. */
const SAME = 1e-6;
const MORE_DIGITS = 3;

const figure = (text: string): number => Number(text.replace('−', '-').replace(/[,\u202f]/g, ''));

/** The units left over, and whether the numbers make this sum at all. */
function factorOf(text: string, lookup: Lookup, system: UnitSystem): UnitFactor {
  const { result, term } = readSum(text);
  const shown = (id: string): number => {
    const { quantity, value } = lookup(id);
    return toShown(value, quantityOf(quantity), system);
  };
  const plain = valueOf(term, shown);
  const factor = multiplies(term) ? unitFactor(leftOver(result, term, lookup, system)) : ONE;
  if (Math.abs(plain * factor.value - shown(result)) > SAME * Math.abs(shown(result)))
    throw new Error(
      `The sum "${text}" comes to ${(plain * factor.value).toPrecision(6)}, and "${result}" is ${shown(result).toPrecision(6)} (${system === 'si' ? 'metric' : 'US'} units). Name the numbers that make it.`,
    );
  return factor;
}
const ONE: UnitFactor = { value: 1, words: '' };

const multiplies = (term: Term): boolean =>
  'left' in term
    ? term.kind === '*' || term.kind === '/' || multiplies(term.left) || multiplies(term.right)
    : 'of' in term;

function leftOver(result: string, term: Term, lookup: Lookup, system: UnitSystem): number {
  const unit = (id: string): number => inSi(quantityOf(lookup(id).quantity), system);
  const shown = (id: string): number =>
    toShown(lookup(id).value, quantityOf(lookup(id).quantity), system);
  const inUnits = valueOf(term, (id) => shown(id) * unit(id)) / unit(result);
  return inUnits / valueOf(term, shown);
}

/** Each way to give `count` numbers more digits, fewest first. */
function moreDigits(count: number): readonly (readonly number[])[] {
  let ways: number[][] = [[]];
  for (let i = 0; i < count; i += 1)
    ways = ways.flatMap((way) =>
      Array.from({ length: MORE_DIGITS + 1 }, (_, more) => [...way, more]),
    );
  const total = (way: readonly number[]): number => way.reduce((sum, more) => sum + more, 0);
  return ways.toSorted((a, b) => total(a) - total(b));
}

/** "58 psi × 13.2 in² = 764 lbf", in one unit system. Throws a sentence where it cannot be made to close. */
export function printSum(text: string, lookup: Lookup, system: UnitSystem): string {
  const { result, term } = readSum(text);
  const factor = factorOf(text, lookup, system);
  const print = (id: string, more: number): string => {
    const { quantity, value } = lookup(id);
    return printed(value, quantityOf(quantity), system, more);
  };
  const goal = print(result, 0);
  const decimals = goal.split('.')[1]?.length ?? 0;
  const ids = numbersIn(term);
  for (const more of moreDigits(ids.length)) {
    const parts = new Map(ids.map((id, i) => [id, print(id, more[i] ?? 0)]));
    const comesTo = valueOf(term, (id) => figure(parts.get(id) ?? '')) * factor.value;
    if (Number(Number(comesTo.toPrecision(12)).toFixed(decimals)) !== figure(goal)) continue;
    const unit = (id: string): string => quantityOf(lookup(id).quantity)[system].symbol;
    const amount = (id: string): string => withUnit(parts.get(id) ?? '', unit(id));
    return `${inWords(term, amount)}${factor.words} = ${withUnit(goal, unit(result))}`;
  }
  throw new Error(
    `The sum "${text}" does not close in ${system === 'si' ? 'metric' : 'US'} units, not with ${MORE_DIGITS} more digits each.`,
  );
}

const SIGNS = { '+': '+', '-': '−', '*': '×', '/': '÷' } as const;
const STRENGTH: Readonly<Record<Term['kind'], number>> = {
  '+': 1,
  '-': 1,
  '*': 2,
  '/': 2,
  square: 3,
  root: 3,
  number: 4,
  figure: 4,
  pi: 4,
};

function inWords(term: Term, amount: (id: string) => string): string {
  const inside = (one: Term, least: number): string => {
    const words = inWords(one, amount);
    return STRENGTH[one.kind] < least ? `(${words})` : words;
  };
  switch (term.kind) {
    case 'number':
      return amount(term.id);
    case 'figure':
      return String(term.value);
    case 'pi':
      return 'π';
    case 'root':
      return `√(${inWords(term.of, amount)})`;
    case 'square':
      // "170 rpm²" would square the unit alone.
      return `(${inWords(term.of, amount)})²`;
    default: {
      const own = STRENGTH[term.kind];
      const right = term.kind === '-' || term.kind === '/' ? own + 1 : own;
      return `${inside(term.left, own)} ${SIGNS[term.kind]} ${inside(term.right, right)}`;
    }
  }
}
