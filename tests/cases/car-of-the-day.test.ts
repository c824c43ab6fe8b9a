import { expect, test } from 'vitest';
import { carOfTheDay } from '../../src/cases/car-of-the-day.ts';
import { LEVELS, MOST_SEED, TRANSMISSIONS } from '../../src/cases/made-key.ts';

test('each day has a car of its own, the same for everybody, of every kind', () => {
  // 1 January 2026 is day 20454. By hand: 1 + 20454 x 48271 mod 99999, and 20454 is 4 mod 5 and even.
  expect(carOfTheDay(20_454)).toEqual({ seed: 44908, level: 3, on: 'training' });
  const days = Array.from({ length: 3650 }, (_, i) => carOfTheDay(20_454 + i));
  expect(new Set(days.map(({ seed }) => seed)).size).toBe(days.length);
  expect(days.every(({ seed }) => seed >= 1 && seed <= MOST_SEED)).toBe(true);
  for (const level of LEVELS) {
    for (const on of TRANSMISSIONS) {
      expect(days.slice(0, 10).some((day) => day.level === level && day.on === on)).toBe(true);
    }
  }
});

test.each([-1, 0.5, Number.NaN])('%d is no day', (day) => {
  expect(() => carOfTheDay(day)).toThrow(/whole number from 0/u);
});
