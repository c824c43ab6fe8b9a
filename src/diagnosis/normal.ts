const SERIES = Float64Array.of(
  -1.26551223,
  1.00002368,
  0.37409196,
  0.09678418,
  -0.18628806,
  0.27886807,
  -1.13520398,
  1.48851587,
  -0.82215223,
  0.17087277,
);

/**
 * The normal distribution function.
 *
 * Equation: Phi(x) = erfc(-x / sqrt 2) / 2, erfc by the rational Chebyshev fit of W. J. Cody's form as in Numerical Recipes
 * (erfcc), relative error below 1.2e-7 everywhere.
 *
 * @param x [-]
 * @returns share below x, 0 to 1 [-]
 * Range: any number; infinities give 0 and 1.
 * Source: W. H. Press et al., Numerical Recipes, section 6.2 (from memory); tested against published values.
 * @example
 * normalBelow(0) // 0.5
 */
export function normalBelow(x: number): number {
  const z = Math.abs(x) / Math.SQRT2;
  const t = 1 / (1 + 0.5 * z);
  let sum = 0;
  for (let i = SERIES.length - 1; i >= 0; i -= 1) sum = sum * t + (SERIES[i] ?? 0);
  const tail = 0.5 * t * Math.exp(-z * z + sum);
  return x >= 0 ? 1 - tail : tail;
}

/** Density of the normal law at y for a mean and a variance. */
export const normalDensity = (y: number, mean: number, variance: number): number =>
  Math.exp((-0.5 * (y - mean) ** 2) / variance) / Math.sqrt(2 * Math.PI * variance);
