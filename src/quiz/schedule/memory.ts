/**
 * How well a question is remembered, by the free spaced repetition scheduler (FSRS 6, package ts-fsrs), which lets NaN through
 * and may return an interval above its own limit: so what goes in and what comes out is checked here.
 */
import { FSRSAlgorithm } from 'ts-fsrs';
import type { Certainty } from '../certainty.ts';
import type { Result } from '../result.ts';

export interface Memory {
  /** Days after which nine in ten such answers are still right [d]. */
  readonly stability: number;
  /** 1 easy to 10 hard. */
  readonly difficulty: number;
}

/** What the scheduler calls its four grades: again, hard, good, easy. */
export type Recall = 1 | 2 | 3 | 4;

/** A question comes back when nine in ten would still know it, and within this time [d]. */
export const WANTED_RECALL = 0.9;
export const LONGEST_INTERVAL = 365;

const algorithm = new FSRSAlgorithm({
  request_retention: WANTED_RECALL,
  maximum_interval: LONGEST_INTERVAL,
  enable_fuzz: false,
  enable_short_term: true,
});

/**
 * The grade of an answer: a guess that came out right is hardly known, and a part of several is not all of it.
 * @example recallOf('right', 3) // 4
 */
export function recallOf(result: Result, certainty: Certainty): Recall {
  if (result === 'wrong') return 1;
  if (result === 'partial') return 2;
  return ({ 1: 2, 2: 3, 3: 4 } as const)[certainty];
}

function checked(what: string, value: number, least: number): number {
  if (!Number.isFinite(value) || value < least) {
    throw new RangeError(`${what} is ${value}; it has to be a number from ${least}.`);
  }
  return value;
}

/**
 * The memory after one more answer.
 * @param memory undefined at the first answer
 * @param days since the answer before [d], 0 on the same day
 * @throws RangeError if days is negative or no number, or if the scheduler returns no number
 * @example remember(undefined, 0, 3).stability // 2.3065, the third initial stability of FSRS 6
 */
export function remember(memory: Memory | undefined, days: number, recall: Recall): Memory {
  const state = memory === undefined ? null : { ...memory };
  const { stability, difficulty } = algorithm.next_state(
    state,
    checked('The time since the answer before', days, 0),
    recall,
  );
  return {
    stability: checked('The stability', stability, 0),
    difficulty: checked('The difficulty', difficulty, 1),
  };
}

/**
 * The chance that it is still known.
 * @param days since the last answer [d]
 * @returns 0 to 1; 0.9 after as many days as the stability
 * @throws RangeError if days is negative or no number
 * @example recallAfter({ stability: 5, difficulty: 5 }, 5) // 0.9
 */
export const recallAfter = ({ stability }: Memory, days: number): number =>
  algorithm.forgetting_curve(checked('The time since the last answer', days, 0), stability);

/**
 * Days until it should be asked again.
 * @returns a whole number, 1 to LONGEST_INTERVAL [d]
 * @example wantedGap({ stability: 5, difficulty: 5 }) // 5
 */
export const wantedGap = ({ stability }: Memory): number =>
  Math.min(
    LONGEST_INTERVAL,
    Math.max(1, Math.round(algorithm.next_interval(checked('The stability', stability, 0), 0))),
  );
