/** Learners that do not exist: they answer by chance and by a published forgetting curve, day after day. */
import type { Certainty } from '../../../src/quiz/certainty.ts';
import type { Result } from '../../../src/quiz/result.ts';
import type { Day } from '../../../src/quiz/schedule/day.ts';
import { roundOf, waiting, type Waiting } from '../../../src/quiz/schedule/round.ts';
import { knownFrom, type Answered, type Known } from '../../../src/quiz/schedule/schedule.ts';
import type { Idea } from '../../../src/quiz/schedule/interleave.ts';

interface Said {
  readonly result: Result;
  readonly certainty: Certainty;
}

interface Month {
  readonly items: readonly Idea[];
  readonly days: number;
  readonly exam?: Day | undefined;
  /** Questions a day; with none the learner answers all that waits. */
  readonly size?: (day: Day) => number;
  readonly answer: (item: Idea, day: Day) => Said;
}

export interface Seen {
  readonly day: Day;
  readonly waits: Waiting<Idea>;
  readonly asked: readonly Idea[];
  readonly before: ReadonlyMap<string, Known>;
}

/** Day after day from 0: a round, its answers, the next day. */
export function live({ items, days, exam, size, answer }: Month) {
  const answers: Answered[] = [];
  const seen: Seen[] = [];
  for (let day = 0; day < days; day += 1) {
    const before = knownFrom(answers);
    const waits = waiting(items, before, { today: day, exam });
    const all = waits.due.length + waits.fresh.length;
    const most = size?.(day) ?? Math.max(1, all);
    const asked = most < 1 ? [] : roundOf(waits, before, most);
    seen.push({ day, waits, asked, before });
    for (const item of asked) answers.push({ item: item.id, day, ...answer(item, day) });
  }
  return { answers, seen };
}
