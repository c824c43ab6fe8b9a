import fc from 'fast-check';
import { expect, test } from 'vitest';
import { correlation } from '../../../src/quiz/class/correlation.ts';

// F. J. Anscombe, "Graphs in statistical analysis", The American Statistician 27 (1973), 17 to 21: four sets of eleven pairs, printed
// with the multiple R squared 0.667 of each.
const X = [10, 8, 13, 9, 11, 14, 6, 4, 12, 7, 5];
const QUARTET: readonly (readonly (readonly [number, number])[])[] = [
  pairs(X, [8.04, 6.95, 7.58, 8.81, 8.33, 9.96, 7.24, 4.26, 10.84, 4.82, 5.68]),
  pairs(X, [9.14, 8.14, 8.74, 8.77, 9.26, 8.1, 6.13, 3.1, 9.13, 7.26, 4.74]),
  pairs(X, [7.46, 6.77, 12.74, 7.11, 7.81, 8.84, 6.08, 5.39, 8.15, 6.42, 5.73]),
  pairs(
    [8, 8, 8, 8, 8, 8, 8, 19, 8, 8, 8],
    [6.58, 5.76, 7.71, 8.84, 8.47, 7.04, 5.25, 12.5, 5.56, 7.91, 6.89],
  ),
];

function pairs(x: readonly number[], y: readonly number[]) {
  return x.map((one, i) => [one, y[i] ?? Number.NaN] as const);
}

test.each(QUARTET.map((set) => ({ set })))('is Anscombe’s for each of his four sets', ({ set }) => {
  // Printed alike for all four, so that the third place is not sure.
  expect((correlation(set) ?? 0) ** 2).toBeCloseTo(0.667, 2);
});

test('says nothing where one of the two never varies, or there is nothing', () => {
  expect(correlation([])).toBeUndefined();
  expect(correlation([[1, 2]])).toBeUndefined();
  expect(
    correlation([
      [1, 2],
      [1, 3],
    ]),
  ).toBeUndefined();
});

test('is the same whichever way round, turns its sign with one of the two, and stays within one', () => {
  const value = fc.integer({ min: -1000, max: 1000 });
  fc.assert(
    fc.property(fc.array(fc.tuple(value, value), { minLength: 2, maxLength: 30 }), (some) => {
      const r = correlation(some);
      if (r === undefined) return;
      expect(Math.abs(r)).toBeLessThanOrEqual(1 + 1e-12);
      expect(correlation(some.map(([x, y]) => [y, x]))).toBeCloseTo(r, 12);
      expect(correlation(some.map(([x, y]) => [x, -y]))).toBeCloseTo(-r, 12);
      expect(correlation(some.map(([x, y]) => [3 * x + 7, y]))).toBeCloseTo(r, 9);
    }),
  );
});
