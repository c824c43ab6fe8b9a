import { expect, test } from 'vitest';
import {
  fallsIn,
  LIVE_CARS,
  recordingOf,
  SHUDDER,
  PLUG,
  standsAfter,
  turbineAt,
} from '../../src/car/live-cars.ts';
import { recordAll } from '../../src/car/record.ts';
import { bringRecordings, recording, SELECT } from '../../src/car/recordings.ts';

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

test('a turbine stands where it goes under 30 rpm after selection, between two rows', () => {
  for (const car of LIVE_CARS) {
    const stands = standsAfter(car);
    if (stands === null) {
      expect(recording(recordingOf(car)).stoppedAfter).toBeNull();
      continue;
    }
    expect(stands).toBeGreaterThan(0.2);
    expect(turbineAt(car, stands)).toBeCloseTo(30, 6);
    expect(turbineAt(car, stands - 0.01)).toBeGreaterThan(30);
  }
  expect(standsAfter('cold')).not.toBeNull();
  expect(SELECT).toBe(0.5);
});

test('it falls from nine tenths of what it ran at until it stands', () => {
  for (const car of ['hot', 'cold'] as const) {
    const stands = standsAfter(car) ?? Number.NaN;
    const falls = fallsIn(car);
    const level = 0.9 * turbineAt(car, 0);
    expect(falls).toBeGreaterThan(0.05);
    expect(falls).toBeLessThan(stands);
    // A tenth of a row of the log finer or coarser.
    expect(turbineAt(car, stands - falls)).toBeGreaterThanOrEqual(level);
    expect(turbineAt(car, stands - falls + 0.002)).toBeLessThan(level);
  }
  expect(() => fallsIn('crack25')).toThrow('The turbine of crack25 does not stand.');
});

test('what is no recording of its own is made over the healthy hot one', () => {
  expect(LIVE_CARS.map((car) => recordingOf(car))).toEqual([
    'hot',
    'cold',
    'frost',
    'crack16',
    'friction',
    'crack25',
    'hot',
    'hot',
  ]);
});
