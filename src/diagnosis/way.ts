/** The way that the planner takes: each time the test that tells most for its minutes, until it is sure or nothing is worth it. */
import type { Hypothesis } from './cells.ts';
import { findingsOf, SURE, type Finding } from './findings.ts';
import { ARRIVES, minutesFor, stateAfter, type CarState } from './car-state.ts';
import { bestTest } from './next-test.ts';
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

/** One milestone after the other; each but the last says which test it wants, and is given what that read. */
export function* walkOf(
  hypotheses: readonly Hypothesis[],
  { state: from = ARRIVES, first }: Start = {},
): Generator<Milestone & { readonly wants?: Test }, void, TakenReading> {
  let cells: readonly Weighed[] = prior(hypotheses);
  let state = from;
  const readings: TakenReading[] = [];
  let last: Milestone['last'];
  for (;;) {
    const posterior = posteriorOf(cells, readings);
    const faults = findingsOf(posterior);
    const milestone: Milestone = { posterior, faults, ...(last && { last }) };
    const best = () => (last === undefined ? first : undefined) ?? bestTest(posterior, state)?.test;
    const test = isSure(faults) ? undefined : best();
    if (test === undefined) {
      // Nobody answers the last one.
      yield milestone;
      return;
    }
    const minutes = minutesFor(test, state);
    state = stateAfter(test, state);
    const reading = yield { ...milestone, wants: test };
    readings.push(reading);
    cells = narrowed(cells, reading);
    last = { reading, minutes };
  }
}

/** The same on a car that can be read at once. */
export function* wayOf(
  hypotheses: readonly Hypothesis[],
  read: (test: Test) => TakenReading,
  start: Start = {},
): Generator<Milestone, void> {
  const walk = walkOf(hypotheses, start);
  let step = walk.next();
  while (step.done !== true) {
    const { wants, ...milestone } = step.value;
    yield milestone;
    if (wants === undefined) return;
    step = walk.next(read(wants));
  }
}
