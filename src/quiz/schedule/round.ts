/** Today's round: which questions, and in what order. */
import type { Day } from './day.ts';
import { LAST_DAYS, lastDayBefore } from './exam.ts';
import { interleave, type Idea } from './interleave.ts';
import { dueDay, isConfidentError, type Known } from './schedule.ts';

/** What a question takes, its explanation read [s] (our assumption; the lessons count with it too). */
export const SECONDS_EACH = 45;

/** What is asked of a day. */
export interface Plan {
  readonly today: Day;
  readonly exam?: Day | undefined;
}

export interface Waiting<Item extends Idea> {
  /** Asked before and due, the longest overdue first. */
  readonly due: readonly Item[];
  /** Never asked, in the order of the course. */
  readonly fresh: readonly Item[];
  /** How many of the fresh ones today should have, so that none is left when the last days begin. */
  readonly freshToday: number;
}

/** Without an exam a day brings as many new questions as a round has at most. */
const FRESH_WITHOUT_EXAM = 6;

/**
 * What waits on a day.
 * @param items the bank, in the order of the course
 * @returns nothing once the exam has come
 */
export function waiting<Item extends Idea>(
  items: readonly Item[],
  known: ReadonlyMap<string, Known>,
  { today, exam }: Plan,
): Waiting<Item> {
  if (exam !== undefined && today > lastDayBefore(exam)) {
    return { due: [], fresh: [], freshToday: 0 };
  }
  const due: { item: Item; on: Day }[] = [];
  const fresh: Item[] = [];
  for (const item of items) {
    const one = known.get(item.id);
    if (one === undefined) {
      fresh.push(item);
      continue;
    }
    const on = dueDay(one, exam);
    if (on !== undefined && on <= today) due.push({ item, on });
  }
  due.sort((a, b) => a.on - b.on);
  const daysForNew = exam === undefined ? undefined : Math.max(1, exam - LAST_DAYS - today);
  return {
    due: due.map(({ item }) => item),
    fresh,
    freshToday:
      daysForNew === undefined ? FRESH_WITHOUT_EXAM : Math.ceil(fresh.length / daysForNew),
  };
}

/**
 * Half of a round may be kept for new questions, since one that was never asked is worth more than one that is asked a third
 * time; and half of the rest goes to what was certain and wrong, so that who errs with confidence still sees the others.
 */
const FOR_FRESH = 1 / 2;
const FOR_ERRORS = 1 / 2;

/**
 * The questions of a round.
 * @param size how many it may have, from 1
 * @returns fewer if fewer wait
 * @throws RangeError if the size is no whole number from 1
 */
export function roundOf<Item extends Idea>(
  { due, fresh, freshToday }: Waiting<Item>,
  known: ReadonlyMap<string, Known>,
  size: number,
): readonly Item[] {
  if (!Number.isInteger(size) || size < 1) {
    throw new RangeError(`A round has a whole number of questions from 1; "${size}" is none.`);
  }
  const kept = Math.min(fresh.length, freshToday, Math.floor(size * FOR_FRESH));
  const forDue = size - kept;
  const isError = ({ id }: Item): boolean => {
    const one = known.get(id);
    return one !== undefined && isConfidentError(one);
  };
  const errors = due.filter(isError);
  const others = due.filter((item) => !isError(item));
  const half = Math.max(1, Math.floor(forDue * FOR_ERRORS));
  const chosen = [...errors.slice(0, Math.max(half, forDue - others.length)), ...others].slice(
    0,
    forDue,
  );
  const room = Math.min(size - chosen.length, Math.max(kept, freshToday));
  return interleave([...chosen, ...fresh.slice(0, room)]);
}
