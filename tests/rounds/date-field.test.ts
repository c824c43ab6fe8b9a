import fc from 'fast-check';
import { expect, test } from 'vitest';
import { printDay, readDay } from '../../src/widgets/retrieval/read-day.ts';
import { dayInWords } from '../../src/rounds/date-field.ts';

test('a date field is read strictly, and what is printed is read back', () => {
  expect(readDay('2026-01-01')).toBe(20454);
  // 29 February is a day in 2028 and none in 2026 (Gregorian rule).
  expect(readDay('2028-02-29')).toBeDefined();
  for (const none of ['2026-02-29', '2026-13-01', '2026-1-1', '', 'tomorrow', '2026-01-01T00:00']) {
    expect(readDay(none), none).toBeUndefined();
  }
  fc.assert(
    fc.property(fc.integer({ min: 0, max: 60_000 }), (day) => {
      expect(readDay(printDay(day))).toBe(day);
    }),
  );
});

test('a day reads as a reader writes it', () => {
  // Day 20454 is 1 January 2026: see day.test.ts.
  expect(dayInWords(20_454)).toBe('Jan 1, 2026');
});
