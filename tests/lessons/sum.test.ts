import { describe, expect, test } from 'vitest';
import { printSum, type SumNumber } from '../../src/lessons/sum/print-sum.ts';
import { numbersIn, readSum, valueOf } from '../../src/lessons/sum/read-sum.ts';

const numbers: Readonly<Record<string, SumNumber>> = {
  push: { quantity: 'pressure', value: 400 },
  area: { quantity: 'area', value: 85 },
  force: { quantity: 'force', value: 3400 },
  spring: { quantity: 'force', value: 900 },
  squeeze: { quantity: 'force', value: 2500 },
  turn: { quantity: 'volume', value: 17 },
  idle: { quantity: 'speed', value: 700 },
  flow: { quantity: 'flow', value: 11.9 },
  wrong: { quantity: 'force', value: 3401 },
  capacity: { quantity: 'converterCapacity', value: 170 },
  torque: { quantity: 'torque', value: (700 / 170) ** 2 },
  warm: { quantity: 'temperature', value: 60 },
  'two-part': { quantity: 'times', value: 4 },
};
const lookup = (id: string): SumNumber => {
  const found = numbers[id];
  if (found === undefined) throw new Error(`There is no number "${id}".`);
  return found;
};
const plain = (text: string): string => text.replaceAll('\u00a0', ' ');
const si = (text: string): string => plain(printSum(text, lookup, 'si'));
const us = (text: string): string => plain(printSum(text, lookup, 'us'));

describe('a sum is read as it is written on paper', () => {
  const value = (text: string): number => valueOf(readSum(`x = ${text}`).term, () => Number.NaN);
  test.each([
    ['2 + 3 * 4', 14],
    ['(2 + 3) * 4', 20],
    ['12 / 3 / 2', 2],
    ['9 - 4 - 3', 2],
    ['sqrt(16) + 2^2', 8],
    ['(1 + 2)^2', 9],
    ['2 * pi', 2 * Math.PI],
  ])('%s', (text, expected) => {
    expect(value(text)).toBeCloseTo(expected, 12);
  });

  test('a hyphen belongs to a name, a minus has spaces', () => {
    expect(numbersIn(readSum('a = two-part - b').term)).toEqual(['two-part', 'b']);
  });

  test.each([
    ['a + b', /Begin with the number that comes out/],
    ['a = ', /breaks off/],
    ['a = b ** c', /A number should stand before "\*"/],
    ['a = (b', /never closed/],
    ['a = b c', /stands behind its end/],
    ['a = b % c', /"% c" in the sum cannot be read/],
  ])('%s is refused', (text, why) => {
    expect(() => readSum(text)).toThrow(why);
  });
});

// Worked by hand with a calculator: 58 × 13.2 is 766 and 400 kPa on 85 cm² is 764 lbf, so an area of 13.18 in² has to stand
// there; 17 cm³ are 1.037 in³.
describe('it closes as printed', () => {
  test('with more digits where it would not', () => {
    expect(us('force = push * area')).toBe('58 psi × 13.18 in² = 764 lbf');
    expect(us('flow = turn * idle')).toBe('1.037 in³ × 700 rpm ÷ 231 = 3.14 gpm');
  });
  test('with what the units leave over', () => {
    expect(si('force = push * area')).toBe('400 kPa × 85 cm² ÷ 10 = 3400 N');
    expect(si('flow = turn * idle')).toBe('17 cm³ × 700 rpm ÷ 1000 = 11.9 L/min');
  });
  test('with minus, brackets and squares', () => {
    expect(si('squeeze = force - spring')).toBe('3400 N − 900 N = 2500 N');
    expect(si('torque = (idle / capacity)^2')).toBe('(700 rpm ÷ 170 rpm/√(N·m))² = 17 N·m');
    expect(si('squeeze = force - (spring + 0)')).toBe('3400 N − (900 N + 0) = 2500 N');
  });
});

test.each([
  ['wrong = push * area', /comes to 3400.00, and "wrong" is 3401.00/],
  ['force = push * are', /no number "are"/],
  ['force = warm * area', /cannot multiply temperature/],
  ['force = push * spring', /leave a factor of|comes to/],
])('%s is refused', (text, why) => {
  expect(() => si(text)).toThrow(why);
});
