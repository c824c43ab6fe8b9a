/** A part kept on the shelf: one is ordered whenever one is used. */

function atLeastNothing(value: number, what: string): number {
  if (!(value >= 0))
    throw new RangeError(`${what} cannot be below 0; this one is ${String(value)}.`);
  return value;
}

/**
 * How many are used, on the average, between an order and its arrival.
 *
 * Equation: m = use a year x days / 365.
 *
 * @param aYear how many are used in a year [1/year]
 * @param days from the order to the shelf [d]
 * @returns mean number [-]
 * Range: both 0 or more.
 * Source: arithmetic.
 * @example
 * usedMeanwhile(26, 14) // 0.9973
 */
export const usedMeanwhile = (aYear: number, days: number): number =>
  (atLeastNothing(aYear, 'A use') * atLeastNothing(days, 'A wait')) / 365;

/**
 * Chance that exactly so many are used meanwhile.
 *
 * Equation: e^-m m^k / k!.
 *
 * @param mean how many on the average [-]
 * @param used how many [-]
 * @returns chance [0 to 1]
 * Range: mean 0 to 700, used a whole number from 0.
 * Source: Poisson distribution; any text on probability. Cars come each by itself, at no set time.
 * @example
 * usedExactly(1, 0) // 0.3679
 * usedExactly(2, 3) // 0.1804
 */
export function usedExactly(mean: number, used: number): number {
  let result = Math.exp(-atLeastNothing(mean, 'A mean'));
  for (let k = 1; k <= used; k += 1) result *= mean / k;
  return result;
}

/**
 * Share of cars that find the part on the shelf: fewer than are kept are still on their way.
 *
 * Equation: P(X <= S - 1), X Poisson with mean m.
 *
 * @param keep how many are kept, on the shelf and on order together [-]
 * @param mean how many are used meanwhile, see usedMeanwhile [-]
 * @returns share [0 to 1]
 * Range: keep a whole number from 0, mean 0 to 700.
 * Source: Feeney and Sherbrooke, Management Science 12 (1966), 391-411: with one ordered for each one used, the number on
 *   order is Poisson, whatever the waits, if only their mean is known.
 * @example
 * foundOnShelf(1, 1) // 0.3679
 * foundOnShelf(3, 1) // 0.9197
 * foundOnShelf(5, 2) // 0.9473
 */
export function foundOnShelf(keep: number, mean: number): number {
  let sum = 0;
  for (let used = 0; used < keep; used += 1) sum += usedExactly(mean, used);
  return Math.min(1, sum);
}

/**
 * How many lie on the shelf, on the average.
 *
 * Equation: sum over k below S of (S - k) P(X = k).
 *
 * @param keep how many are kept, on the shelf and on order together [-]
 * @param mean how many are used meanwhile [-]
 * @returns mean number [-]
 * Range: as for foundOnShelf.
 * Source: as for foundOnShelf.
 * @example
 * lyingOnShelf(3, 1) // 2.0233
 */
export function lyingOnShelf(keep: number, mean: number): number {
  let sum = 0;
  for (let used = 0; used < keep; used += 1) sum += (keep - used) * usedExactly(mean, used);
  return sum;
}

/**
 * The fewest to keep so that a share of cars finds the part there.
 *
 * @param share wanted [0 to 1, below 1]
 * @param mean how many are used meanwhile [-]
 * @returns whole number [-]
 * Range: share below 1, mean 0 to 700.
 * Source: as for foundOnShelf.
 * @example
 * keepFor(0.9, 1) // 3
 * keepFor(0.99, 1) // 5
 */
export function keepFor(share: number, mean: number): number {
  if (!(share < 1))
    throw new RangeError(`No number on a shelf is always enough; ${String(share)} is too much.`);
  let keep = 0;
  while (foundOnShelf(keep, mean) < share) keep += 1;
  return keep;
}
