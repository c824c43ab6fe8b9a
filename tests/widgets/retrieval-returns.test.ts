import { describe, expect, test } from 'vitest';
import type { Certainty } from '../../src/quiz/certainty.ts';
import { dayOf } from '../../src/quiz/schedule/day.ts';
import { printDay } from '../../src/widgets/retrieval/read-day.ts';
import { dueDay, knownFrom } from '../../src/quiz/schedule/schedule.ts';
import { answer, next, startSession, type Session } from '../../src/quiz/session.ts';
import type { RetrievalAnswer } from '../../src/storage/answer.ts';
import type { AnswersRead } from '../../src/storage/read-answers.ts';
import { returnsFrom } from '../../src/widgets/retrieval/returns.ts';
import { asked } from '../quiz/sample.ts';

const NOW = Date.UTC(2026, 10, 30, 12);
const TODAY = dayOf(NOW, 0);
const SEED = 7;
const single = asked.filter(({ id }) => id === 'q-single');
const both = asked.filter(({ id }) => id === 'q-single' || id === 'q-several');

const idsOf = (question: (typeof asked)[number], right: boolean): readonly string[] =>
  question.kind === 'single' || question.kind === 'several'
    ? question.options.filter(({ correct }) => correct === right).map(({ id }) => id)
    : [];

/** Every question of it answered. */
function answered(
  questions: typeof asked,
  ids: (question: (typeof asked)[number]) => readonly string[],
  certainty: Certainty = 2,
): Session {
  let session = startSession(questions, SEED, 'kept');
  for (const question of questions) {
    const one = answer(session, { kind: 'chosen', ids: ids(question) }, certainty);
    if (!one.ok) throw new Error(one.sentence);
    session = next(one.session);
  }
  return session;
}
const wrong = (question: (typeof asked)[number]) => idsOf(question, false).slice(0, 1);

const log = (
  answers: readonly Partial<RetrievalAnswer>[] = [],
  every = 1,
  status: AnswersRead['status'] = 'ok',
): AnswersRead => ({
  status,
  damaged: [],
  answers: answers.map((one, n) => ({
    n,
    at: NOW - (answers.length - n) * every * 86_400_000,
    clockSetBack: false,
    answer: {
      ...{ kind: 'retrieval', lesson: 'a', item: 'q-single', seed: 1 },
      ...{ given: { kind: 'chosen', ids: [] }, result: 'right', certainty: 2 },
      ...one,
    } as RetrievalAnswer,
  })),
});
const kept = (read = log(), exam: string | null = null) => ({
  ...{ read, plan: { exam }, now: NOW, minutesWest: () => 0 },
});

describe('when a round’s questions come back', () => {
  test('what was wrong comes back tomorrow', () => {
    expect(returnsFrom(answered(single, wrong), kept())).toEqual({ days: 1, all: true });
  });

  test('what was right is not told of', () => {
    const session = answered(single, (question) => idsOf(question, true));
    expect(returnsFrom(session, kept())).toBeUndefined();
  });

  test('a part of several comes back as late as the schedule says, and the first is told', () => {
    const part = (question: (typeof asked)[number]) =>
      question.kind === 'single' ? wrong(question) : idsOf(question, true).slice(0, 1);
    const session = answered(both, part);
    // Known well before: a slip does not bring it back at once.
    const before = [3, 2, 1].map((ago) => ({
      ...{ item: 'q-several', day: TODAY - ago * 30 },
      ...({ result: 'right', certainty: 3 } as const),
    }));
    const known = knownFrom([
      ...before,
      { item: 'q-several', day: TODAY, result: 'partial', certainty: 2 },
    ]).get('q-several');
    const due = known && dueDay(known);
    const read = log(
      before.map(({ item, result, certainty }) => ({ item, result, certainty })),
      30,
    );
    expect(due).toBeGreaterThan(TODAY + 1);
    expect(returnsFrom(session, kept(read))).toEqual({ days: 1, all: false });
  });

  test('an answer of this round that has reached the log counts once', () => {
    const session = answered(single, wrong);
    const read = log([{ seed: SEED, result: 'right' }]);
    expect(returnsFrom(session, kept(read))).toEqual(returnsFrom(session, kept()));
  });

  test('nothing comes back where nothing is kept, or the exam is first', () => {
    const session = answered(single, wrong);
    expect(returnsFrom(session, kept(log([], 1, 'blocked')))).toBeUndefined();
    expect(returnsFrom(session, kept(log(), printDay(TODAY + 1)))).toBeUndefined();
  });
});
