import { expect, test } from 'vitest';
import { PLUG, SHUDDER, turbineAt } from '../../src/car/live-cars.ts';
import { recordAll } from '../../src/car/record.ts';
import { bringRecordings } from '../../src/car/recordings.ts';

bringRecordings(recordAll());

test('the contact is open from its first moment on, and closed again at its last', () => {
  const { at, lasts } = PLUG;
  expect(turbineAt('plug', at - 0.001)).toBe(turbineAt('hot', at - 0.001));
  expect([at, at + 0.02, at + lasts - 0.001].map((after) => turbineAt('plug', after))).toEqual([
    0, 0, 0,
  ]);
  expect(turbineAt('plug', at + lasts)).toBe(turbineAt('hot', at + lasts));
  expect(turbineAt('hot', at)).toBeGreaterThan(300);
});

test('the shudder swings about the healthy car, rising first, and not before it begins', () => {
  const { from, swings, rpm } = SHUDDER;
  const swing = (quarters: number): number => {
    const after = from + quarters / (4 * swings);
    return turbineAt('shudder', after) - turbineAt('hot', after);
  };
  expect([-3, -2, -1].map(swing)).toEqual([0, 0, 0]);
  expect([1, 3, 5].map(swing).map(Math.round)).toEqual([rpm, -rpm, rpm]);
});
