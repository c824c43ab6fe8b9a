/**
 * The kept figures of `npm run accuracy` against the floors of the planner's specification, section 10 (the false alarm: section 8).
 * A line that falls short stands in SHORT with what it reached, and the page prints it in bold.
 */
import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import type { Figures } from '../../src/measure/accuracy/figures.ts';
import { GOALS, reached, type GoalId } from '../../src/measure/accuracy/goals.ts';
import { wilson } from '../../src/measure/accuracy/Reliability.tsx';

const figures = JSON.parse(readFileSync('src/bench/accuracy.json', 'utf8')) as Figures;
const { oneFault, twoFaults, unlisted, leak, seeds } = figures;

const FLOORS: Readonly<Record<GoalId, readonly [least: number, most: number]>> = {
  rightFirst: [0.95, 1],
  rightWithinTwo: [0.98, 1],
  reached90: [0.95, 1],
  calibration: [0, 0.03],
  unlistedAccused: [0, 0.02],
  allReadings: [0.98, 1],
  minutes: [0, 75],
  minutesRatio: [0, 0.55],
  falseAlarm: [0, 0.01],
  twoOnTopAll: [0.85, 1],
  twoOnTop: [0.85, 1],
  twoNoFit: [0.8, 1],
  twoNamed: [0.8, 1],
  outsideOnTop: [0.9, 1],
  outsideAccused: [0, 0.25],
  leakLeast: [0.86, 1],
  leakMost: [0, 0.94],
};
// One of two faults on top when the planner stops in 79 % (the floor says with all readings, where it is 86 %).
const SHORT: readonly GoalId[] = ['twoOnTop'];

test.each(GOALS)('$id reaches its floor, or is said not to', (goal) => {
  const [least, most] = FLOORS[goal.id];
  const value = goal.value(figures);
  const short = value < least || value > most;
  expect(reached(goal, figures)).toBe(!short);
  expect(SHORT.includes(goal.id), `${goal.id} ${value}`).toBe(short);
});

test('there are enough cars to speak of chances, from more than one seed, and a thousand cracks', () => {
  expect(oneFault.cars).toBeGreaterThanOrEqual(2500);
  expect(seeds.length).toBeGreaterThan(1);
  expect(twoFaults.cars).toBeGreaterThanOrEqual(500);
  expect(unlisted.cars).toBeGreaterThanOrEqual(100);
  for (const { cars } of leak) expect(cars).toBe(1000);
  expect(new Set(leak.map(({ taps }) => taps.length))).toEqual(new Set([2, 3, 4]));
});

test('the diagram has every car in it, and gives the error that the table states', () => {
  const { reliability: bins, cars } = oneFault;
  expect(bins.reduce((sum, bin) => sum + bin.cars, 0)).toBe(cars);
  const off = bins.reduce((sum, bin) => sum + bin.cars * Math.abs(bin.said - bin.right), 0) / cars;
  expect(Math.abs(off - oneFault.calibrationError)).toBeLessThan(2e-4);
  for (const { from, to, said } of bins) {
    expect(said).toBeGreaterThanOrEqual(from);
    expect(said).toBeLessThanOrEqual(to);
  }
});

// R. G. Newcombe, Statistics in Medicine 17 (1998) 857, table I, method 3 (from memory).
test.each([
  [81, 263, 0.2553, 0.3662],
  [15, 148, 0.0624, 0.1605],
])('%d of %d lie between', (found, n, low, high) => {
  const [from, to] = wilson(found / n, n);
  expect(from).toBeCloseTo(low, 4);
  expect(to).toBeCloseTo(high, 4);
});
