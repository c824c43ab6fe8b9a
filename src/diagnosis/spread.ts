/**
 * Where a law over single values has 5, 50 and 95 % of its weight at or below: what a shop is told of a size that is not known.
 *
 * @param weighted values with their weights, in any order; a value may come more than once
 * @returns the three values, each one of those given; NaN where there are none
 * Range: weights from 0; they need not sum to 1.
 * @example
 * spreadOf([[3, 0.5], [1, 0.25], [2, 0.25]]) // [1, 2, 3]
 */
export function spreadOf(
  weighted: readonly (readonly [value: number, weight: number])[],
): readonly [number, number, number] {
  const sorted = weighted.toSorted(([a], [b]) => a - b);
  const total = sorted.reduce((sum, [, weight]) => sum + weight, 0);
  const at = (wanted: number): number => {
    let held = 0;
    // The last holds all, but for what rounding takes.
    const [value] = sorted.find(([, weight]) => (held += weight) >= wanted * total) ??
      sorted.at(-1) ?? [NaN];
    return value;
  };
  return [at(0.05), at(0.5), at(0.95)];
}
