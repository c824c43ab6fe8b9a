/**
 * When the questions of a round that went wrong are asked again: what the schedule makes of every answer kept and of the round's
 * own. Fetched when a round is over, because it brings the schedule along.
 */
import { dayOf } from '../../quiz/schedule/day.ts';
import { readDay } from './read-day.ts';
import { dueDay, knownFrom } from '../../quiz/schedule/schedule.ts';
import { resultOf } from '../../quiz/result.ts';
import { summarise, type Session } from '../../quiz/session.ts';
import { readAnswers } from '../../storage/answers.ts';
import { planKeeper, type Plan } from '../../storage/plan.ts';
import type { AnswersRead } from '../../storage/read-answers.ts';
import { answeredFrom, retrievalsOf } from './answered.ts';

export interface Returns {
  /** Until the first of them comes back [d]. */
  readonly days: number;
  /** All of them come back that day. */
  readonly all: boolean;
}

export interface Kept {
  readonly read: AnswersRead;
  readonly plan: Pick<Plan, 'exam'>;
  readonly now: number;
  readonly minutesWest: (at: number) => number;
}

/** @returns undefined where nothing comes back: this device keeps nothing, or the exam is before it */
export function returnsFrom(
  session: Session,
  { read, plan: { exam }, now, minutesWest }: Kept,
): Returns | undefined {
  if (read.status !== 'ok') return undefined;
  const today = dayOf(now, minutesWest(now));
  // The last answer may be on its way to the log still, so those of this round are taken from the round.
  const before = retrievalsOf(read).filter(({ answer }) => answer.seed !== session.seed);
  const known = knownFrom([
    ...answeredFrom(before, minutesWest),
    ...session.answers.map(({ id, outcome }) => ({
      ...{ item: id, day: today, certainty: outcome.certainty },
      result: resultOf(outcome),
    })),
  ]);
  const examDay = exam === null ? undefined : readDay(exam);
  const due = summarise(session).again.map(({ id }) => {
    const one = known.get(id);
    return one && dueDay(one, examDay);
  });
  const days = due.filter((day) => day !== undefined);
  if (days.length === 0) return undefined;
  const first = Math.min(...days);
  return { days: first - today, all: due.every((day) => day === first) };
}

export const returnsOf = async (session: Session): Promise<Returns | undefined> =>
  returnsFrom(session, {
    read: await readAnswers(),
    plan: planKeeper().read().data,
    now: Date.now(),
    minutesWest: (at) => new Date(at).getTimezoneOffset(),
  });
