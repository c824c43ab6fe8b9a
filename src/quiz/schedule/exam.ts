/** What the date of an exam does to a plan. */
import type { Day } from './day.ts';

/** Weak questions come back once more in as many days before the exam [d]. */
export const LAST_DAYS = 3;

/** The best gap is a share of the time that it has to last, and the smaller a share the longer that is (Cepeda et al. 2008). */
const shareOf = (left: number): number => (left <= 14 ? 0.3 : left <= 60 ? 0.2 : 0.1);

/**
 * The longest gap before the next review, with an exam ahead.
 * @param left days until the exam, from 1 [d]
 * @returns whole days, from 1 [d]
 * @throws RangeError if there is no day left
 * @example longestGap(10) // 3
 */
export function longestGap(left: number): number {
  if (!Number.isFinite(left) || left < 1) {
    throw new RangeError(`A plan toward an exam needs a day at least; "${left}" was left.`);
  }
  return Math.max(1, Math.round(shareOf(left) * left));
}

/** The last day on which anything is asked: the exam's own day is kept free. */
export const lastDayBefore = (exam: Day): Day => exam - 1;
