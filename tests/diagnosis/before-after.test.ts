/**
 * Two readings and their doubt: JCGM 100:2008 (GUM), 4.3.7 (a law of even chance), 5.1.2 equation 10 (a difference of two), 6.2
 * (twice the standard deviation). Errors are those of the specification's section 2, by hand.
 */
import { describe, expect, test } from 'vitest';
import {
  compare,
  doubtOf,
  errorAt,
  readAs,
  rowsDoubt,
  type Taken,
} from '../../src/diagnosis/before-after.ts';
import { numeric } from './made.ts';

const line = numeric('line.drive.700.hot');
const stop = numeric('stopTime.drive.hot');
const taken = (value: number | null, tempC = 95, rpm = 700): Taken => ({ value, tempC, rpm });
const at = { right: 600, hotC: 95, step: 0 };

describe('doubt', () => {
  test('is twice the root of the sum of the squares', () => {
    expect(doubtOf(3, 4)).toBe(10);
    expect(doubtOf(5)).toBe(10);
  });
  test('of a time between two rows of a log: each end lies anywhere in its step', () => {
    // 0.1 s: each end 0.1 / root 12, two of them 0.0408.
    expect(rowsDoubt(0.1)).toBeCloseTo(Math.hypot(0.1 / Math.sqrt(12), 0.1 / Math.sqrt(12)), 12);
    expect(errorAt(stop, 1.2, 0.1)).toBeCloseTo(Math.hypot(0.1, 0.0408248), 6);
    expect(errorAt(stop, 1.2, 0)).toBeCloseTo(0.1, 12);
    // A gauge has no rows.
    expect(errorAt(line, 400, 5)).toBe(10);
  });
  test('a turbine that never stopped is read as one that takes longer than anybody waits', () => {
    expect([readAs(taken(null)), readAs(taken(0.9)), readAs(taken(0))]).toEqual([2.5, 0.9, 0]);
  });
});

describe('before and after', () => {
  test('a line that is back proves it, with every figure', () => {
    // 400 and 598 are read to 10 and 11.96; a sound car is 9 off from another.
    const found = compare(line, taken(400, 94), taken(598, 96), at);
    expect(found).toMatchObject({
      difference: 198,
      offRight: -2,
      apartC: 2,
      is: 'proves',
      by: 'right',
    });
    expect(found.doubt).toBeCloseTo(2 * Math.hypot(10, 11.96), 9);
    expect(found.room).toBeCloseTo(2 * Math.hypot(11.96, 9), 9);
    expect(found.errors.before).toBeCloseTo(20, 9);
    expect(found.errors.after).toBeCloseTo(23.92, 9);
    expect(found.errors.sound).toBeCloseTo(18, 9);
  });
  test.each([
    ['still off what is right', taken(400), taken(560), 'notCured', 'off'],
    ['off on the other side', taken(400), taken(640), 'notCured', 'off'],
    ['just inside of it', taken(400), taken(571), 'proves', 'right'],
    ['three degrees apart', taken(400, 92), taken(600, 95), 'proves', 'right'],
    ['more than three', taken(400, 91.9), taken(600, 95), 'nothing', 'temperature'],
    ['more than three, the other way', taken(400, 98.1), taken(600, 95), 'nothing', 'temperature'],
    ['at another speed', taken(400, 95, 1500), taken(600), 'nothing', 'speed'],
    ['no larger than their doubt', taken(570), taken(600), 'nothing', 'doubt'],
    ['just larger', taken(566), taken(600), 'proves', 'right'],
    [
      'cooler than where the complaint comes',
      taken(400, 89),
      taken(600, 91.9),
      'nothing',
      'cooler',
    ],
    ['three cooler is as hot', taken(400, 90), taken(600, 92), 'proves', 'right'],
    // What decides first: a car that is not cured is not cured at whatever temperature.
    ['off and at another temperature', taken(400, 80), taken(500), 'notCured', 'off'],
  ] as const)('%s', (_what, before, after, is, by) => {
    expect(compare(line, before, after, at)).toMatchObject({ is, by });
  });
  test('a turbine that never stopped and does now', () => {
    const found = compare(stop, taken(null), taken(0.8), { right: 0.8, hotC: 95, step: 0.1 });
    expect(found).toMatchObject({ difference: 0.8 - 2.5, is: 'proves' });
  });
});
