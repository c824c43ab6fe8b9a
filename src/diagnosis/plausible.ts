/** Whether a number is one that a test can show at all, on any of the cars that the planner knows. */
import type { Hypothesis } from './cells.ts';
import { normalDensity } from './normal.ts';
import { expectedAt, type Weighed } from './posterior.ts';
import { columnOf, LONGEST_STOP, onScale, type NumericTest } from './tests.ts';

/** Mean and variance of a test on a car of a hypothesis of which nothing has been read yet. */
export function aloneOn({ expected }: Hypothesis, test: NumericTest, temperatureC?: number) {
  const one = expected[columnOf.get(test.id) ?? -1];
  if (one === undefined) throw new Error(`The table has no column ${test.id}.`);
  const at = { test, value: null, ...(temperatureC !== undefined && { temperatureC }) };
  const { mean, moves, own } = expectedAt(one, at);
  return { mean, variance: moves.reduce((sum, move) => sum + move * move, own), moves, own };
}

/**
 * How often a test shows about this number, over all listed hypotheses alike: a density on the solver's scale. Severities
 * count alike, so that a number that only a badly worn car shows is still one that is shown.
 */
export function shownAlike(cells: readonly Weighed[], test: NumericTest, value: number): number {
  const listed = cells.filter(({ broken }) => broken === undefined);
  const at = onScale(test, Math.min(value, test.kind === 'stopTime' ? LONGEST_STOP : value));
  const sum = listed.reduce((all, { hypothesis }) => {
    const { mean, variance } = aloneOn(hypothesis, test);
    return all + normalDensity(at, mean, variance);
  }, 0);
  return sum / listed.length;
}

/** So many times likelier in the other unit, and it is asked whether that one was meant. */
const ASK = 20;

/** Whether a bare number was probably meant in the other unit. Values metric; `asRead` is missing where it is out of range. */
export function ratherInOther(
  cells: readonly Weighed[],
  test: NumericTest,
  asRead: number | undefined,
  inOther: number,
): boolean {
  const other = shownAlike(cells, test, inOther);
  const own = asRead === undefined ? 0 : shownAlike(cells, test, asRead);
  const [from, to] = test.span;
  // What no car shows in either unit is nonsense in both.
  return other > 0.02 / (to - from) && other > ASK * own;
}
