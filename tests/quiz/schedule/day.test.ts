import { expect, test } from 'vitest';
import { dayOf } from '../../../src/quiz/schedule/day.ts';

test('a day is the learner’s own, whatever the zone', () => {
  // 1 January 2026 is day 20454: 56 years of 365 days and 14 leap days from 1970 (counted by hand).
  expect(56 * 365 + 14).toBe(20454);
  expect(dayOf(Date.UTC(2026, 0, 1, 12), 0)).toBe(20454);
  expect(dayOf(Date.UTC(2026, 0, 2, 3), 300), 'still evening, five hours west').toBe(20454);
  expect(dayOf(Date.UTC(2025, 11, 31, 23), -60), 'past midnight, one hour east').toBe(20454);
});

test('what is no moment is refused in words', () => {
  expect(() => dayOf(Number.NaN, 0)).toThrow(/number of milliseconds/u);
  expect(() => dayOf(0, Number.POSITIVE_INFINITY)).toThrow(/number of milliseconds/u);
});
