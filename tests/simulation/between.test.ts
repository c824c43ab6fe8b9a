import { expect, test } from 'vitest';
import { between } from '../../src/simulation/between.ts';

test('a place between two values is on the straight line, worked by hand', () => {
  const row = [10, 20, null, 5];
  expect([0, 0.25, 1, 3].map((place) => between(row, place))).toEqual([10, 12.5, 20, 5]);
});

test('beside a value that is none there is none, and off the row neither', () => {
  const row = [10, 20, null, 5];
  expect([1.5, 2, 2.5, 4].map((place) => between(row, place))).toEqual([null, null, null, null]);
  expect(between([], 0)).toBeNull();
});
