/** The way that the planner takes: each time the test that tells most for its minutes, until it is sure or nothing is worth it. */
import type { Hypothesis } from './cells.ts';
import { findingsOf, type Finding } from './findings.ts';
import { ARRIVES, bestTest, minutesFor, stateAfter, type CarState } from './next-test.ts';
import { SURE } from './planner.ts';
import {
  posteriorOf,
  prior,
  take,
  type Posterior,
  type TakenReading,
  type Weighed,
} from './posterior.ts';
import type { Test } from './tests.ts';

/** From here down a hypothesis does not come back: it is some six contradictions behind the likeliest [ln]. */
const HOPELESS = 60;

/** The cells after one more reading, less the hopeless: most of the work is theirs. */
export function narrowed(cells: readonly Weighed[], reading: TakenReading): readonly Weighed[] {
  take(cells, reading);
  const most = cells.reduce((log, cell) => Math.max(log, cell.log), -Infinity);
  return cells.filter(({ log }) => log > most - HOPELESS);
}

export const isSure = ([top]: readonly Finding[]): boolean => (top?.probability ?? 0) >= SURE;

/** How matters stand on the way: before the first test, and after each. */
export interface Milestone {
  readonly posterior: Posterior;
  readonly faults: readonly Finding[];
  /** What was read last, and what it took; missing before the first. */
  readonly last?: { readonly reading: TakenReading; readonly minutes: number };
}

interface Start {
  readonly state?: CarState;
  /** The best first test, where it is known already: of every car the same is asked. */
  readonly first?: Test | undefined;
}

/** One milestone after the other, so that a page can breathe between two of them; the last one is where it ends. */
export function* wayOf(
  hypotheses: readonly Hypothesis[],
  read: (test: Test) => TakenReading,
  { state: from = ARRIVES, first }: Start = {},
): Generator<Milestone, void> {
  let cells: readonly Weighed[] = prior(hypotheses);
  let state = from;
  const readings: TakenReading[] = [];
  let last: Milestone['last'];
  for (;;) {
    const posterior = posteriorOf(cells, readings);
    const faults = findingsOf(posterior);
    yield { posterior, faults, ...(last && { last }) };
    const best = () => (last === undefined ? first : undefined) ?? bestTest(posterior, state)?.test;
    const test = isSure(faults) ? undefined : best();
    if (test === undefined) return;
    const minutes = minutesFor(test, state);
    state = stateAfter(test, state);
    const reading = read(test);
    readings.push(reading);
    cells = narrowed(cells, reading);
    last = { reading, minutes };
  }
}
