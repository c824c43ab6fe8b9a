// Sums on the built pages close as they are printed, in both unit systems: 58 × 13.2 is 766, whatever the model has behind it.
import { describe, expect, test } from 'vitest';
import { builtPages } from '../../src/build/pages.ts';
import { blocksOf, doesNotClose, sumsIn, workedOut } from './printed-sums.ts';

describe('the reader of sums', () => {
  // By hand.
  test.each([
    ['58\u00a0psi × 13.2\u00a0in²', 765.6],
    ['2 + 3 × 4', 14],
    ['(2 + 3) × 4', 20],
    ['12 ÷ 3 ÷ 2', 2],
    ['(700\u00a0rpm ÷ 170\u00a0rpm/√(N·m))²', (700 / 170) ** 2],
    ['√(9 × 4)', 6],
    ['2π ÷ 60', Math.PI / 30],
    ['1,200\u00a0N − 900\u00a0N', 300],
    ['−5 + 8', 3],
    ['74\u00a0N·m over 0.277\u00a0m', 74 / 0.277],
  ])('%s', (left, expected) => {
    expect(workedOut(left)).toBeCloseTo(expected, 9);
  });

  test.each([
    ['58\u00a0psi × 13.2\u00a0in² = 764\u00a0lbf', /comes to 765.6/],
    ['So 74\u00a0lbf·ft ÷ 0.277\u00a0ft = 266\u00a0lbf.', /comes to 267/],
    ['And 468\u00a0lbf over 13.2\u00a0in² is 36\u00a0psi.', /comes to 35.4/],
    ['44\u00a0lbf·ft divided by 0.277\u00a0ft is 160\u00a0lbf.', /comes to 158/],
    ['3400\u00a0N less 900\u00a0N leaves 2500\u00a0N.', null],
    ['4 times 67\u00a0rpm makes 269\u00a0rpm', /comes to 268/],
  ])('%s', (text, why) => {
    const [sum] = sumsIn(text);
    if (sum === undefined) throw new Error(`No sum was found in: ${text}`);
    const wrong = doesNotClose(sum);
    if (why === null) expect(wrong).toBeNull();
    else expect(wrong).toMatch(why);
  });

  test.each([
    'At 700\u00a0rpm it makes 3.14\u00a0gpm.',
    'P0741 is a code.',
    '3 × 10⁻⁸ to 1.6 × 10⁻⁶',
  ])('%s is no sum', (text) => {
    expect(sumsIn(text)).toEqual([]);
  });
});

const pages = builtPages();

test.each(['si', 'us'] as const)('every sum on every page closes, %s', (system) => {
  const found = pages.flatMap(({ address, html }) =>
    blocksOf(html, system).flatMap((block) => sumsIn(block).map((sum) => ({ address, sum }))),
  );
  expect(found.length).toBeGreaterThan(20);
  const open = found.flatMap(({ address, sum }) => {
    const wrong = doesNotClose(sum);
    return wrong === null ? [] : [`${address} ${wrong}`];
  });
  expect(open).toEqual([]);
});

test.each(['si', 'us'] as const)('and each that is marked as a sum is read, %s', (system) => {
  for (const { address, html } of pages) {
    const marked = Array.from(
      html.matchAll(/<span class="sum([^"]*)">([^<]*)<\/span>/g),
      ([, kind = '', text = '']) => ({ kind, text }),
    ).filter(({ kind }) => kind === '' || kind.includes(`u-${system}`));
    for (const { text } of marked) {
      expect(
        sumsIn(text.trim()).map(({ words }) => words),
        address,
      ).toEqual([text.trim()]);
    }
  }
});
