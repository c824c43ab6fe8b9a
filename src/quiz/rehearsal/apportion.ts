/**
 * Whole numbers in proportion to shares, by the largest remainder (Hamilton's method): each gets the whole part of its quota, and
 * what is left goes one each to the largest remainders; of equal ones the earlier has it.
 * @param shares from 0, in any unit
 * @param seats a whole number from 0
 * @returns as many numbers as shares; their sum is `seats`, and each is within one of its quota
 * @throws RangeError if a share is negative or no number, if all are 0, or if seats is no whole number from 0
 * @example apportion([1, 1, 2], 5) // [1, 1, 3]
 */
export function apportion(shares: readonly number[], seats: number): readonly number[] {
  const sum = shares.reduce((total, share) => total + share, 0);
  if (shares.some((share) => !(share >= 0)) || !Number.isFinite(sum) || sum === 0) {
    throw new RangeError(
      `Shares are numbers from 0, not all of them 0; "${shares.join(', ')}" are not.`,
    );
  }
  if (!Number.isInteger(seats) || seats < 0) {
    throw new RangeError(`What is shared out is a whole number from 0; "${seats}" is none.`);
  }
  const quotas = shares.map((share) => (share * seats) / sum);
  const given = quotas.map(Math.floor);
  const left = seats - given.reduce((total, one) => total + one, 0);
  const remainder = (at: number): number => (quotas[at] ?? 0) - (given[at] ?? 0);
  const more = new Set(
    quotas
      .map((_, at) => at)
      .sort((a, b) => remainder(b) - remainder(a))
      .slice(0, left),
  );
  return given.map((one, at) => one + Number(more.has(at)));
}
