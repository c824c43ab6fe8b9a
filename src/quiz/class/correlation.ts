/**
 * Pearson's coefficient of correlation; where one of the two is 0 or 1, the point-biserial one.
 * @param pairs the two values of each case
 * @returns from -1 to 1, or undefined where fewer than two cases are given or one of the two never varies
 * @see K. Pearson, "Notes on regression and inheritance in the case of two parents", Proc. R. Soc. 58 (1895), 240 to 242
 * @example correlation([[0, 1], [1, 3], [2, 5]]) // 1
 */
export function correlation(pairs: readonly (readonly [number, number])[]): number | undefined {
  const mean = (of: readonly number[]): number => of.reduce((a, b) => a + b, 0) / of.length;
  const x = mean(pairs.map(([one]) => one));
  const y = mean(pairs.map(([, other]) => other));
  let xx = 0;
  let yy = 0;
  let xy = 0;
  for (const [one, other] of pairs) {
    xx += (one - x) ** 2;
    yy += (other - y) ** 2;
    xy += (one - x) * (other - y);
  }
  return xx > 0 && yy > 0 ? xy / Math.sqrt(xx * yy) : undefined;
}
