/** What a class answered, learner by learner, as its files say it. */
import type { Certainty } from '../certainty.ts';
import type { Result } from '../result.ts';

export interface ClassAnswer {
  readonly item: string;
  readonly result: Result;
  readonly certainty: Certainty;
  /** The options that were chosen, or the named wrong rule that a typed number came from. */
  readonly ids: readonly string[];
  /** What the clock said [ms of Unix time]. */
  readonly at: number;
}

export interface Learner {
  readonly name: string;
  /** In the order given. */
  readonly answers: readonly ClassAnswer[];
}

/**
 * The first answer to each question: the only one that no explanation of the same question has taught.
 * @example firstAnswers([first, again]).get(first.item) // first
 */
export function firstAnswers(answers: readonly ClassAnswer[]): ReadonlyMap<string, ClassAnswer> {
  const first = new Map<string, ClassAnswer>();
  for (const one of answers) if (!first.has(one.item)) first.set(one.item, one);
  return first;
}
