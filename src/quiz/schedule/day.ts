/** A day where the learner is, counted from 1 January 1970 there: whole numbers, so that no clock and no zone is in the sums. */
export type Day = number;

/** A day [ms]. */
export const DAY_MS = 86_400_000;

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
  return Math.floor((at - minutesWest * 60_000) / DAY_MS);
}
