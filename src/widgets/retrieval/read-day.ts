import { DAY_MS, type Day } from '../../quiz/schedule/day.ts';

/**
 * A date as a date field gives it.
 * @param text year, month and day, as in 2026-11-29 (ISO 8601)
 * @returns undefined if there is no such day
 * @example readDay('2026-02-30') // undefined
 */
export function readDay(text: string): Day | undefined {
  if (!/^\d{4}-\d{2}-\d{2}$/u.test(text)) return undefined;
  const at = Date.parse(`${text}T00:00:00Z`);
  // February 30 is read as March 2 by some.
  return Number.isNaN(at) || printDay(at / DAY_MS) !== text ? undefined : at / DAY_MS;
}

/**
 * The other way round: what a date field takes.
 * @example printDay(20454) // '2026-01-01'
 */
export const printDay = (day: Day): string => new Date(day * DAY_MS).toISOString().slice(0, 10);
