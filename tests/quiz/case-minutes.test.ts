import { expect, test } from 'vitest';
import { minutesOf, type Priced } from '../../src/quiz/case-minutes.ts';

const one = (
  id: string,
  minutes: number,
  warmth: string | undefined,
  ...setUps: [string, number][]
): Priced => ({
  id,
  minutes,
  warmth,
  setUps: setUps.map(([name, cost]) => ({ id: name, minutes: cost })),
});
const cold = one('cold', 2, 'cold', ['scan', 3], ['cold', 90]);
const hot = one('hot', 2, 'hot', ['scan', 3], ['hot', 20]);
const look = one('look', 6, undefined, ['lift', 4]);

// By hand, from the minutes above.
test('a set-up is paid once, and so is warming', () => {
  expect(minutesOf([], 'cold')).toBe(0);
  expect(minutesOf([cold], 'cold')).toBe(5);
  expect(minutesOf([cold, hot], 'cold')).toBe(5 + 22);
  expect(minutesOf([hot, hot], 'cold')).toBe(25 + 2);
  expect(minutesOf([look, look], 'cold')).toBe(16);
});
test('who warms it first waits a night for the cold reading', () => {
  expect(minutesOf([hot, cold], 'cold')).toBe(25 + 92);
  expect(minutesOf([hot, look, cold], 'cold')).toBe(25 + 10 + 92);
});
test('how it comes in costs nothing', () => {
  expect(minutesOf([hot], 'hot')).toBe(5);
  expect(minutesOf([one('f', 2, 'frost', ['frost', 120])], 'frost')).toBe(2);
});
