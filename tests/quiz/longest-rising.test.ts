import fc from 'fast-check';
import { expect, test } from 'vitest';
import { longestRising } from '../../src/quiz/longest-rising.ts';

/** By trying every part of the list. */
function bruteForce(values: readonly number[]): number {
  let most = 0;
  for (let mask = 0; mask < 1 << values.length; mask += 1) {
    const part = values.filter((_, i) => (mask >> i) & 1);
    if (part.every((v, i) => i === 0 || v >= (part[i - 1] ?? 0)))
      most = Math.max(most, part.length);
  }
  return most;
}

test('it is in order, and no part of the list that is in order is longer', () => {
  fc.assert(
    fc.property(fc.array(fc.integer({ min: 0, max: 6 }), { maxLength: 7 }), (values) => {
      const at = longestRising(values);
      expect([...at].sort((a, b) => a - b)).toEqual(at);
      const part = at.map((i) => values[i] ?? Number.NaN);
      expect([...part].sort((a, b) => a - b)).toEqual(part);
      expect(at.length).toBe(bruteForce(values));
    }),
  );
});

test('one that was moved too far is the one that is out', () => {
  expect(longestRising([3, 0, 1, 2])).toEqual([1, 2, 3]);
  expect(longestRising([1, 2, 3, 0])).toEqual([0, 1, 2]);
  expect(longestRising([])).toEqual([]);
});
