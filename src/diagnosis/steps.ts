/** What each reading did to the list, and what the next one would do: Bayes' rule again, a reading at a time. */
import { expectedIn, type Hypothesis } from './cells.ts';
import { NAMES, type Name } from './hypotheses.ts';
import {
  likelihoodOn,
  prior,
  sharesOf,
  take,
  type Posterior,
  type TakenReading,
  type Weighed,
} from './posterior.ts';
import {
  columnOf,
  isNumeric,
  offScale,
  OUTCOMES,
  written,
  type NumericTest,
  type Test,
} from './tests.ts';

export type ByName = Readonly<Record<Name, number>>;

function byName(cells: readonly Weighed[], shares: ArrayLike<number>): ByName {
  const sums = Object.fromEntries(NAMES.map((name) => [name, 0])) as Record<Name, number>;
  cells.forEach(({ hypothesis: { of } }, n) => {
    sums[of.name] += shares[n] ?? 0;
  });
  return sums;
}

/** The hypotheses that are listed, from cells that were made of them. */
export const listedIn = (cells: readonly Weighed[]): readonly Hypothesis[] =>
  cells.flatMap(({ hypothesis, broken }) => (broken ? [] : [hypothesis]));

/** Before the first reading, and after each of them. */
export function stepsOf(
  { cells }: Posterior,
  readings: readonly TakenReading[],
): readonly ByName[] {
  const now = prior(listedIn(cells));
  return [
    byName(now, sharesOf(now)),
    ...readings.map((reading) => {
      take(now, reading);
      return byName(now, sharesOf(now));
    }),
  ];
}

/** The list as it would stand if this were read next. */
export function ifItRead({ cells, shares }: Posterior, reading: TakenReading): ByName {
  const weights = cells.map((cell, n) => (shares[n] ?? 0) * likelihoodOn(cell, reading));
  const sum = weights.reduce((all, one) => all + one, 0);
  return byName(
    cells,
    weights.map((weight) => weight / sum),
  );
}

/** From this share on a name counts as one that may be; under the other it is out. */
const MAY = 0.04;
const OUT = 0.01;

/** A result that a test may have, and the names that it would rule out. */
export interface Outcome {
  readonly reading: TakenReading;
  readonly out: readonly Name[];
}

/** Mean of a test over a name, as the readings have left it, on what a shop reads. */
export function expectedOf({ cells, shares }: Posterior, test: NumericTest, name: Name): number {
  const column = columnOf(test.id);
  let sum = 0;
  let weight = 0;
  cells.forEach(({ hypothesis }, n) => {
    if (hypothesis.of.name !== name) return;
    const share = shares[n] ?? 0;
    sum += share * expectedIn(hypothesis, column).mean;
    weight += share;
  });
  return offScale(test, weight > 0 ? sum / weight : 0);
}

function possible(posterior: Posterior, list: ByName, test: Test): readonly TakenReading[] {
  if (!isNumeric(test)) {
    return test.kind === 'codes' ? [] : OUTCOMES[test.kind].map((value) => ({ test, value }));
  }
  const means = NAMES.filter((name) => name !== 'unlisted' && list[name] >= MAY).map((name) =>
    expectedOf(posterior, test, name),
  );
  if (means.length === 0) return [];
  const [low, high] = [Math.min(...means), Math.max(...means)];
  return [...new Set([written(test, low), written(test, high)])].map((value) => ({ test, value }));
}

/**
 * The results of a test that the names on the list expect, lowest and highest, or what may be seen; with what each would rule
 * out. Results that rule nothing out are left out.
 */
export function outcomesFor(posterior: Posterior, test: Test): readonly Outcome[] {
  const list = byName(posterior.cells, posterior.shares);
  return possible(posterior, list, test)
    .map((reading) => {
      const then = ifItRead(posterior, reading);
      return { reading, out: NAMES.filter((name) => list[name] >= MAY && then[name] < OUT) };
    })
    .filter(({ out }) => out.length > 0);
}
