import { expect, test } from 'vitest';
import { carOfTheWeek, weekOf } from '../../src/cases/car-of-the-week.ts';
import { MOST_SEED } from '../../src/cases/made-key.ts';
import { dayOf } from '../../src/quiz/schedule/day.ts';

const week = (date: string): number => weekOf(dayOf(Date.parse(`${date}T12:00Z`), 0));

// ISO 8601: a week begins on Monday. The calendar: 4 January 2027 is a Monday, 1 January 2027 a Friday.
test('a week begins on Monday and ends on Sunday, over the turn of a year too', () => {
  expect(week('2027-01-03')).toBe(week('2026-12-28'));
  expect(week('2027-01-04')).toBe(week('2027-01-03') + 1);
  expect(week('1970-01-05')).toBe(0);
});

test('every shop gets the same car, another one each week, on either transmission in turn', () => {
  expect(carOfTheWeek(2900, 2)).toEqual(carOfTheWeek(2900, 2));
  const cars = Array.from({ length: 2000 }, (_, i) => carOfTheWeek(2900 + i, 1));
  expect(new Set(cars.map(({ seed }) => seed)).size).toBe(2000);
  for (const { seed } of cars) expect(seed).toBeGreaterThanOrEqual(1);
  for (const { seed } of cars) expect(seed).toBeLessThanOrEqual(MOST_SEED);
  expect(carOfTheWeek(2900, 1).on).not.toBe(carOfTheWeek(2901, 1).on);
});

test('what is no week is refused', () => {
  expect(() => carOfTheWeek(-1, 1)).toThrow(/whole number from 0/);
  expect(() => carOfTheWeek(0.5, 1)).toThrow(RangeError);
});
