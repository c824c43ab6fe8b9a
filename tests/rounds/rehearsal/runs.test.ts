import fc from 'fast-check';
import { expect, test } from 'vitest';
import { runsOf } from '../../../src/rounds/rehearsal/runs.ts';

test('three in a row are a run, two are not', () => {
  expect(runsOf([1, 2, 3, 5, 8, 9])).toEqual([
    [1, 3],
    [5, 5],
    [8, 8],
    [9, 9],
  ]);
  expect(runsOf([])).toEqual([]);
});

test('the runs of any places hold each of them once, and no other', () => {
  fc.assert(
    fc.property(fc.uniqueArray(fc.integer({ min: 1, max: 50 })), (some) => {
      const places = [...some].sort((a, b) => a - b);
      const held = runsOf(places).flatMap(([first, last]) =>
        Array.from({ length: last - first + 1 }, (_, i) => first + i),
      );
      expect(held).toEqual(places);
    }),
  );
});
