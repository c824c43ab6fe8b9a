/**
 * What a log can show. The items on its list take turns on one line, so each is read at an even rate, and nobody knows what
 * happened between two readings.
 */

/** Readings of each item a second, where a line that brings so many values a second is shared by all of them. */
export const readingsEach = (valuesASecond: number, items: number): number =>
  items === 0 ? 0 : valuesASecond / items;

/** Chance that something that lasts so long [s] has a reading in it, if it may come at any moment between two. */
export const chanceSeen = (lasts: number, rate: number): number => Math.min(1, lasts * rate);

/**
 * How often readings at a rate seem to swing, where the truth swings so often [1/s].
 *
 * The sampling theorem: readings tell all of a swing only if there are more than two to each. With fewer, it looks as slow as
 * its distance from the nearest whole multiple of the rate.
 */
export const seenAs = (swings: number, rate: number): number =>
  Math.abs(swings - rate * Math.round(swings / rate));

/** Standard deviation of a moment that may lie anywhere between two readings [s], by the rectangular distribution. */
export const spreadOf = (interval: number): number => interval / Math.sqrt(12);
