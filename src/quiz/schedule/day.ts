/** A day where the learner is, counted from 1 January 1970 there: whole numbers, so that no clock and no zone is in the sums. */
export type Day = number;

const MS = 86_400_000;

/**
 * The learner's day at a moment.
 * @param at milliseconds of Unix time
 * @param minutesWest what `Date.prototype.getTimezoneOffset` says at that moment [min]
 * @throws RangeError if either is no finite number
 * @example dayOf(Date.UTC(2026, 0, 2, 3), 300) // 20454: 3 in the morning UTC is still 1 January five hours west
 */
export function dayOf(at: number, minutesWest: number): Day {
  if (!Number.isFinite(at) || !Number.isFinite(minutesWest)) {
    throw new RangeError(
      `A moment is a number of milliseconds, and "${at}" at ${minutesWest} is none.`,
    );
  }
  return Math.floor((at - minutesWest * 60_000) / MS);
}

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
  return Number.isNaN(at) || printDay(at / MS) !== text ? undefined : at / MS;
}

/**
 * The other way round: what a date field takes.
 * @example printDay(20454) // '2026-01-01'
 */
export const printDay = (day: Day): string => new Date(day * MS).toISOString().slice(0, 10);
