/** How a bracketed search ended. `converged` is false only when the work bound was met first. */
export interface RootResult {
  readonly root: number;
  readonly value: number;
  readonly iterations: number;
  readonly converged: boolean;
}

/**
 * Most function calls a search may take. Chandrupatla's method falls back to halving, so the worst case is that
 * of bisection down to the last bit of a double between brackets of ordinary size.
 */
export const MAX_ITERATIONS = 120;

/**
 * Root of a continuous function between two ends of opposite sign, to the last bits of a double.
 *
 * Inverse quadratic interpolation where the three points show that it is safe, else bisection; the root never
 * leaves the bracket. Rejected: Newton (needs slopes, leaves the bracket at the kinks of a regulating valve),
 * Brent (same certainty, more branches, a few more calls on these curves).
 *
 * @param f the function [any]
 * @param low one end of the bracket [any]
 * @param high the other end [any]
 * @param valueLow f(low), when the caller has it [any]
 * @param valueHigh f(high), when the caller has it [any]
 * @returns root, value there, iterations, converged [-]
 * Range: f(low) and f(high) of opposite sign or zero.
 * Leaves out: nothing; a bracket that does not bracket comes back as not converged at its better end.
 * Source: T. R. Chandrupatla, Adv. Eng. Software 28 (1997) 145-149, the criterion of equation (6).
 * @example
 * findRoot((x) => x * x - 2, 0, 2).root // 1.4142135623730951
 */
export function findRoot(
  f: (x: number) => number,
  low: number,
  high: number,
  valueLow: number = f(low),
  valueHigh: number = f(high),
): RootResult {
  let a = high;
  let fa = valueHigh;
  let b = low;
  let fb = valueLow;
  if (fa === 0) return { root: a, value: 0, iterations: 0, converged: true };
  if (fb === 0) return { root: b, value: 0, iterations: 0, converged: true };
  if (fa > 0 === fb > 0) {
    const better = Math.abs(fa) < Math.abs(fb);
    return { root: better ? a : b, value: better ? fa : fb, iterations: 0, converged: false };
  }
  let c: number;
  let fc: number;
  let t = 0.5;
  for (let iterations = 1; iterations <= MAX_ITERATIONS; iterations += 1) {
    const x = a + t * (b - a);
    const fx = f(x);
    if (fx > 0 === fa > 0) {
      c = a;
      fc = fa;
    } else {
      c = b;
      fc = fb;
      b = a;
      fb = fa;
    }
    a = x;
    fa = fx;
    const nearer = Math.abs(fa) < Math.abs(fb);
    const root = nearer ? a : b;
    const value = nearer ? fa : fb;
    // Half a bit of the root: below this no double lies between the ends.
    const smallest = (Number.EPSILON * Math.abs(root) + Number.MIN_VALUE) / Math.abs(b - a);
    if (value === 0 || smallest > 0.5) return { root, value, iterations, converged: true };
    const xi = (a - b) / (c - b);
    const phi = (fa - fb) / (fc - fb);
    t =
      phi * phi < xi && (1 - phi) * (1 - phi) < 1 - xi
        ? (fa / (fb - fa)) * (fc / (fb - fc)) +
          ((c - a) / (b - a)) * (fa / (fc - fa)) * (fb / (fc - fb))
        : 0.5;
    t = Math.min(1 - smallest, Math.max(smallest, t));
  }
  const nearer = Math.abs(fa) < Math.abs(fb);
  return {
    root: nearer ? a : b,
    value: nearer ? fa : fb,
    iterations: MAX_ITERATIONS,
    converged: false,
  };
}
