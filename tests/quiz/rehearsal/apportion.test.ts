import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { apportion } from '../../../src/quiz/rehearsal/apportion.ts';

/**
 * Electowiki, "Hamilton method", Example (electowiki.org/wiki/Hamilton_method): the fifteen states of 1790 by population, and
 * the seats each would have in a House of 60. The populations are those of the first census.
 */
const states: readonly (readonly [string, number, number])[] = [
  ['Virginia', 630_560, 11],
  ['Massachusetts', 475_327, 8],
  ['Pennsylvania', 432_879, 7],
  ['North Carolina', 353_523, 6],
  ['New York', 331_589, 6],
  ['Maryland', 278_514, 5],
  ['Connecticut', 236_841, 4],
  ['South Carolina', 206_236, 3],
  ['New Jersey', 179_570, 3],
  ['New Hampshire', 141_822, 2],
  ['Vermont', 85_533, 1],
  ['Georgia', 70_835, 1],
  ['Kentucky', 68_705, 1],
  ['Rhode Island', 68_446, 1],
  ['Delaware', 55_540, 1],
];

test('the states of 1790 get the seats of the published example', () => {
  expect(
    apportion(
      states.map(([, people]) => people),
      60,
    ),
  ).toEqual(states.map(([, , seats]) => seats));
});

/**
 * The Alabama paradox, by which the method is known: a seat more in the house takes one from the smallest. By hand, shares 6, 6 and
 * 2 of 14: of 10 seats the quotas are 4.29, 4.29, 1.43, so the third gets the last seat; of 11 they are 4.71, 4.71, 1.57.
 */
test('a seat more can cost the smallest one, as this method does', () => {
  expect(apportion([6, 6, 2], 10)).toEqual([4, 4, 2]);
  expect(apportion([6, 6, 2], 11)).toEqual([5, 5, 1]);
});

test('of equal remainders the earlier has the seat', () => {
  expect(apportion([1, 1, 1], 2)).toEqual([1, 1, 0]);
});

describe('any shares', () => {
  const shares = fc
    .array(fc.integer({ min: 0, max: 1000 }), { minLength: 1, maxLength: 12 })
    .filter((all) => all.some((one) => one > 0));
  const seats = fc.integer({ min: 0, max: 500 });

  test('give away every seat, each within one of its quota', () => {
    fc.assert(
      fc.property(shares, seats, (all, count) => {
        const given = apportion(all, count);
        expect(given.reduce((sum, one) => sum + one, 0)).toBe(count);
        const sum = all.reduce((total, one) => total + one, 0);
        all.forEach((share, i) => {
          expect(Math.abs((given[i] ?? 0) - (share * count) / sum)).toBeLessThan(1 + 1e-9);
        });
      }),
    );
  });

  test('give the larger share no less', () => {
    fc.assert(
      fc.property(shares, seats, (all, count) => {
        const given = apportion(all, count);
        all.forEach((a, i) => {
          all.forEach((b, j) => {
            if (a > b) expect(given[i]).toBeGreaterThanOrEqual(given[j] ?? 0);
          });
        });
      }),
    );
  });
});

test.each([
  [[], 5],
  [[0, 0], 5],
  [[1, -1], 5],
  [[1, Number.NaN], 5],
  [[1, Number.POSITIVE_INFINITY], 5],
  [[1], -1],
  [[1], 1.5],
] as const)('%j and %j are refused', (shares, seats) => {
  expect(() => apportion(shares, seats)).toThrow(RangeError);
});
