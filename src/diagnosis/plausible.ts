/** Whether a number is one that a test can show at all, on any of the cars that the planner knows. */
import type { Grounds } from './grounds.ts';
import { normalDensity } from './normal.ts';
import { columnOf, LONGEST_STOP, onScale, type NumericTest } from './tests.ts';

/**
 * How often a test shows about this number, over all listed hypotheses alike: a density on the solver's scale. Severities
 * count alike, so that a number that only a badly worn car shows is still one that is shown.
 */
export function shownAlike(
  { count, means, variances }: Grounds,
  test: NumericTest,
  value: number,
): number {
  const at = onScale(test, Math.min(value, test.kind === 'stopTime' ? LONGEST_STOP : value));
  const from = count * columnOf(test.id);
  let sum = 0;
  for (let i = from; i < from + count; i += 1) {
    sum += normalDensity(at, means[i] ?? 0, variances[i] ?? 1);
  }
  return sum / count;
}

/** So many times likelier in the other unit, and it is asked whether that one was meant. */
const ASK = 20;

/** Whether a bare number was probably meant in the other unit. Values metric; `asRead` is missing where it is out of range. */
export function ratherInOther(
  grounds: Grounds,
  test: NumericTest,
  asRead: number | undefined,
  inOther: number,
): boolean {
  const other = shownAlike(grounds, test, inOther);
  const own = asRead === undefined ? 0 : shownAlike(grounds, test, asRead);
  const [from, to] = test.span;
  // What no car shows in either unit is nonsense in both.
  return other > 0.02 / (to - from) && other > ASK * own;
}
