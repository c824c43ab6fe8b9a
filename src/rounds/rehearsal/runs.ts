/**
 * Whole numbers in order as runs, each by its first and its last; two are no run yet.
 * @example runsOf([1, 2, 3, 5, 8, 9]) // [[1, 3], [5, 5], [8, 8], [9, 9]]
 */
export function runsOf(numbers: readonly number[]): readonly (readonly [number, number])[] {
  const runs: [number, number][] = [];
  for (const one of numbers) {
    const run = runs.at(-1);
    if (run !== undefined && one === run[1] + 1) run[1] = one;
    else runs.push([one, one]);
  }
  return runs.flatMap(([first, last]): readonly (readonly [number, number])[] =>
    last === first + 1
      ? [
          [first, first],
          [last, last],
        ]
      : [[first, last]],
  );
}
