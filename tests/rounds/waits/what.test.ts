import { describe, expect, test } from 'vitest';
import { dayOf } from '../../../src/quiz/schedule/day.ts';
import { printDay } from '../../../src/widgets/retrieval/read-day.ts';
import { whatWaits, type Kept } from '../../../src/rounds/waits/what.ts';
import type { RetrievalAnswer } from '../../../src/storage/answer.ts';
import type { Rehearsal } from '../../../src/storage/rehearsals.ts';
import type { Visit } from '../../../src/storage/visits.ts';

const NOW = Date.UTC(2026, 10, 30, 12);
const DAY = 86_400_000;
const TODAY = dayOf(NOW, 0);

const answered = (
  item: string,
  daysAgo: number,
  over: Partial<RetrievalAnswer> = {},
): Kept['read']['answers'][number] => ({
  ...{ n: 1, at: NOW - daysAgo * DAY, clockSetBack: false },
  answer: {
    ...{ kind: 'retrieval', lesson: 'a', item, seed: 1, given: { kind: 'chosen', ids: [] } },
    ...{ result: 'wrong', certainty: 2 },
    ...over,
  },
});
const plan = { exam: null, minutes: 5, round: null } as const;
const nothing: Kept = {
  plan,
  underWay: { rehearsal: null },
  visits: { byCase: {} },
  read: { status: 'ok', answers: [], damaged: [] },
  now: NOW,
  minutesWest: () => 0,
  titles: { 'old-wagon': 'The old wagon' },
};
const withAnswers = (...answers: Kept['read']['answers']): Kept => ({
  ...nothing,
  read: { ...nothing.read, answers },
});

test('nothing waits for somebody who has done nothing', () => {
  expect(whatWaits(nothing)).toEqual({ today: undefined, rehearsal: undefined, case: undefined });
});

describe('the round of today', () => {
  test('tells how many are due, and how long a round takes', () => {
    const kept = withAnswers(answered('q-1', 1), answered('q-2', 2));
    expect(whatWaits(kept).today).toEqual({
      what: '2 questions are due.',
      press: 'Start today’s round (5 minutes)',
    });
    expect(whatWaits(withAnswers(answered('q-1', 1))).today?.what).toBe('1 question is due.');
    const long = { ...kept, plan: { ...plan, minutes: 20 } as const };
    expect(whatWaits(long).today?.press).toBe('Start today’s round (20 minutes)');
  });

  test('with nothing due says when the next comes back', () => {
    expect(whatWaits(withAnswers(answered('q-1', 0))).today).toEqual({
      what: 'No question comes back today.',
      press: 'The next comes back tomorrow',
    });
    const sure = answered('q-1', 0, { result: 'right', certainty: 3 });
    expect(whatWaits(withAnswers(sure)).today?.press).toMatch(/^The next comes back in \d+ days$/u);
  });

  test('before an exam nothing comes back that its date leaves out', () => {
    const kept = withAnswers(answered('q-1', 3));
    const on = (day: number) => ({ ...kept, plan: { ...plan, exam: printDay(day) } });
    expect(whatWaits(on(TODAY + 20)).today?.what).toBe('1 question is due.');
    expect(whatWaits(on(TODAY)).today).toEqual({
      what: 'No question comes back today.',
      press: 'Go to today’s round',
    });
  });

  const items = ['q-1', 'q-2', 'q-3'].map((id) => ({ id, lesson: 'a' }));
  test('is gone on with where it was left', () => {
    const kept = {
      ...withAnswers(answered('q-1', 0, { seed: 7 }), answered('q-2', 0, { seed: 6 })),
      plan: { ...plan, round: { day: TODAY, seed: 7, items } },
    };
    expect(whatWaits(kept).today).toEqual({
      what: 'Today’s round is begun.',
      press: 'Go on at question 2 of 3',
    });
    expect(whatWaits({ ...kept, ...withAnswers(), plan: kept.plan }).today?.press).toBe(
      'Go on at question 1 of 3',
    );
  });

  test('of another day, or with all its answers, is not under way', () => {
    const all = withAnswers(...items.map(({ id }) => answered(id, 0, { seed: 7 })));
    for (const day of [TODAY, TODAY - 1]) {
      const kept = { ...all, plan: { ...plan, round: { day, seed: 7, items } } };
      expect(whatWaits(kept).today?.what).toBe('No question comes back today.');
    }
    const left = { ...nothing, plan: { ...plan, round: { day: TODAY - 1, seed: 7, items } } };
    expect(whatWaits(left).today).toBeUndefined();
  });
});

test('a rehearsal waits at its question', () => {
  const rehearsal = { place: 3, items: Array.from({ length: 50 }) } as unknown as Rehearsal;
  expect(whatWaits({ ...nothing, underWay: { rehearsal } }).rehearsal).toEqual({
    what: 'Rehearsal begun.',
    press: 'Go on at question 4 of 50',
  });
});

describe('a case', () => {
  const visit = (serial: number, over: Partial<Visit> = {}): Visit => ({
    ...{ steps: ['ask:ranges'], causes: [], repairs: [], serial },
    ...over,
  });
  const cases = (byCase: Readonly<Record<string, Visit>>) =>
    whatWaits({ ...nothing, visits: { byCase } }).case;

  test('that was begun is named, the one touched last', () => {
    const made = 'made-second-3-417';
    expect(cases({ 'old-wagon': visit(2), [made]: visit(1) })).toEqual({
      ...{ what: 'Case begun: The old wagon.', press: 'Go on with it' },
      href: '/practise/case/?case=old-wagon',
    });
    expect(cases({ 'old-wagon': visit(2), [made]: visit(3) })).toEqual({
      ...{ what: 'Case begun: car number 417.', press: 'Go on with it' },
      href: '/practise/case/?number=417&level=3&on=second',
    });
  });

  test('that was handed in, only looked at, or is gone from the site does not wait', () => {
    const ended = { verdict: 'solved', minutes: 40 } as const;
    expect(
      cases({
        'old-wagon': visit(1, { ended }),
        'made-training-1-2': visit(2, { steps: [] }),
        gone: visit(3),
      }),
    ).toBeUndefined();
  });
});
