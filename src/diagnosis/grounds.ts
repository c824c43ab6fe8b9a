/** What a table says before anything is read. */
import { expectedIn, healthyIn, type Hypothesis } from './cells.ts';
import { expectedAt } from './posterior.ts';
import { columnOf, NUMERIC, offScale, type NumericTest } from './tests.ts';

/** Mean and variance of a test on a car of a hypothesis of which nothing has been read yet. */
export function aloneOn(hypothesis: Hypothesis, test: NumericTest, temperatureC?: number) {
  const one = expectedIn(hypothesis, columnOf(test.id));
  const at = { test, value: null, ...(temperatureC !== undefined && { temperatureC }) };
  const { mean, moves, own } = expectedAt(one, at);
  return { mean, variance: moves.reduce((sum, move) => sum + move * move, own), moves, own };
}

/**
 * Small enough to be handed to whoever has no table: mean and variance of each
 * numeric test on each hypothesis, test after test, and the car with nothing wrong.
 */
export interface Grounds {
  readonly count: number;
  readonly means: Float64Array;
  readonly variances: Float64Array;
  readonly sound: Hypothesis;
  /** What each numeric test reads on that car, in shop units. */
  readonly usual: readonly number[];
}
export function groundsOf(hypotheses: readonly Hypothesis[]): Grounds {
  const sound = healthyIn(hypotheses);
  const alone = NUMERIC.flatMap((test) => hypotheses.map((one) => aloneOn(one, test)));
  return {
    count: hypotheses.length,
    means: Float64Array.from(alone, ({ mean }) => mean),
    variances: Float64Array.from(alone, ({ variance }) => variance),
    sound,
    usual: NUMERIC.map((test) => offScale(test, aloneOn(sound, test).mean)),
  };
}
