/**
 * What is due when. A schedule is worked out anew from the answers, in the order they were given, and is kept nowhere: an answer
 * that was lost, or came from another device, cannot make it wrong.
 */
import type { Certainty } from '../certainty.ts';
import type { Result } from '../result.ts';
import type { Day } from './day.ts';
import { lastDayBefore, longestGap } from './exam.ts';
import {
  recallAfter,
  recallOf,
  remember,
  WANTED_RECALL,
  wantedGap,
  type Memory,
} from './memory.ts';

export interface Answered {
  readonly item: string;
  readonly day: Day;
  readonly result: Result;
  readonly certainty: Certainty;
}

/** All that counts of the answers to one question. */
export interface Known {
  readonly memory: Memory;
  /** Day of the last answer. */
  readonly last: Day;
  readonly result: Result;
  readonly certainty: Certainty;
  readonly answers: number;
}

/**
 * Reads the answers one after the other. A clock that was set back does not make time run backward: such an answer counts for
 * the latest day there was.
 * @throws RangeError if a day is no whole number
 */
export function knownFrom(answers: Iterable<Answered>): ReadonlyMap<string, Known> {
  const known = new Map<string, Known>();
  let today = Number.NEGATIVE_INFINITY;
  for (const { item, day, result, certainty } of answers) {
    if (!Number.isInteger(day)) throw new RangeError(`A day is a whole number; "${day}" is none.`);
    today = Math.max(today, day);
    const before = known.get(item);
    const gap = before === undefined ? 0 : today - before.last;
    known.set(item, {
      memory: remember(before?.memory, gap, recallOf(result, certainty)),
      last: today,
      result,
      certainty,
      answers: (before?.answers ?? 0) + 1,
    });
  }
  return known;
}

/** Certain, and not right: what one would act on in the shop. It comes back first (L13). */
export const isConfidentError = ({ result, certainty }: Known): boolean =>
  result !== 'right' && certainty === 3;

/**
 * Not to be relied on at a day: the last answer was not right, or right by a guess, or more than one in ten would have
 * forgotten it by then.
 */
export const isWeak = ({ result, certainty, memory, last }: Known, at: Day): boolean =>
  result !== 'right' ||
  certainty === 1 ||
  recallAfter(memory, Math.max(0, at - last)) < WANTED_RECALL;

/**
 * The day on which a question comes back.
 * @param exam with it no question comes back after it, no gap is longer than `longestGap`, and each that was asked before the last
 * days comes back in them (L8)
 * @returns undefined if it does not come back before the exam
 */
export function dueDay(known: Known, exam?: Day): Day | undefined {
  const gap = known.result === 'wrong' ? 1 : wantedGap(known.memory);
  if (exam === undefined) return known.last + gap;
  if (known.last >= lastDayBefore(exam)) return undefined;
  // Less than a third of what is left: it falls before the exam, and what was asked before the last days is asked in them again.
  return known.last + Math.min(gap, longestGap(exam - known.last));
}
