import { expect, test } from 'vitest';
import { sensorReading } from '../../../src/engine/index.ts';

const COUNT = 4000;
const readings = (noiseRpm: number, trueRpm: number, seed = 1): readonly number[] =>
  Array.from({ length: COUNT }, (_, count) =>
    sensorReading({ resolutionRpm: 0, noiseRpm, seed }, trueRpm, count),
  );

test('noise is even within its limit: its middle is the true speed, its spread the limit over the root of three', () => {
  const limit = 6;
  const errors = readings(limit, 700).map((rpm) => rpm - 700);
  expect(Math.max(...errors.map(Math.abs))).toBeLessThanOrEqual(limit);
  const mean = errors.reduce((sum, one) => sum + one, 0) / COUNT;
  const spread = Math.sqrt(errors.reduce((sum, one) => sum + (one - mean) ** 2, 0) / COUNT);
  // Of an even law between -a and a: standard deviation a / sqrt 3. Three standard errors of a mean, and of a spread, of so many.
  expect(Math.abs(mean)).toBeLessThan((3 * limit) / Math.sqrt(3 * COUNT));
  expect(Math.abs(spread / (limit / Math.sqrt(3)) - 1)).toBeLessThan(3 * Math.sqrt(0.2 / COUNT));
});

test('a sensor reads nothing below zero, the same for a seed and something else for another', () => {
  expect(Math.min(...readings(6, 1))).toBe(0);
  expect(readings(6, 700)).toEqual(readings(6, 700));
  expect(readings(6, 700, 2)).not.toEqual(readings(6, 700));
});
