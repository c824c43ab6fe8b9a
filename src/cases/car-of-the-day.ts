import { MOST_SEED, type MadeKey } from './made-key.ts';

/** Shares no divisor with MOST_SEED, so that no car comes twice in as many days. */
const STRIDE = 48_271;

/**
 * The car that everybody gets on a day: plain, then with a look-alike, then perhaps with two faults, on either transmission.
 * @param day counted from 1 January 1970 where the learner is, a whole number from 0
 * @throws RangeError if it is none
 * @example carOfTheDay(20454) // { seed: 44908, level: 3, on: 'training' }
 */
export function carOfTheDay(day: number): MadeKey {
  if (!Number.isInteger(day) || day < 0) {
    throw new RangeError(`A day is a whole number from 0; "${day}" is none.`);
  }
  return {
    seed: 1 + ((day * STRIDE) % MOST_SEED),
    level: ([1, 2, 1, 2, 3] as const)[day % 5] ?? 1,
    on: day % 2 === 0 ? 'training' : 'second',
  };
}
