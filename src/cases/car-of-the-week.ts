import { MOST_SEED, type Level, type MadeKey } from './made-key.ts';

/** Shares no divisor with MOST_SEED, so that no car comes twice in as many weeks; another one than that of the days. */
const STRIDE = 32_771;
/** 1 January 1970 was a Thursday: the first Monday came four days later. */
const FIRST_MONDAY = 4;

/** Whole weeks since Monday, 5 January 1970. @param day counted from 1 January 1970 where the shop is */
export const weekOf = (day: number): number => Math.floor((day - FIRST_MONDAY) / 7);

/**
 * The car that every shop gets in a week, at one difficulty, on either transmission in turn.
 * @param week as weekOf counts it, a whole number from 0
 * @throws RangeError if it is none
 */
export function carOfTheWeek(week: number, level: Level): MadeKey {
  if (!Number.isInteger(week) || week < 0) {
    throw new RangeError(`A week is a whole number from 0; "${week}" is none.`);
  }
  return {
    seed: 1 + ((week * STRIDE) % MOST_SEED),
    level,
    on: week % 2 === 0 ? 'training' : 'second',
  };
}
