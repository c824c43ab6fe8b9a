import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { seededRandom } from '../../../src/quiz/seeded-order.ts';
import { LAST_DAYS, longestGap } from '../../../src/quiz/schedule/exam.ts';
import type { Idea } from '../../../src/quiz/schedule/interleave.ts';
import { roundOf, waiting } from '../../../src/quiz/schedule/round.ts';
import { isConfidentError, isWeak, knownFrom } from '../../../src/quiz/schedule/schedule.ts';
import { live } from './learner.ts';

const some = (count: number): readonly Idea[] =>
  Array.from({ length: count }, (_, i) => ({ id: `q${i}`, concept: `c${i % 17}`, lookAlikes: [] }));

/** Answers at random: how often right, and how often sure. */
const byChance = (seed: number, right: number) => {
  const random = seededRandom(seed);
  return () =>
    ({
      result: random() < right ? 'right' : random() < 0.3 ? 'partial' : 'wrong',
      certainty: (1 + Math.floor(random() * 3)) as 1 | 2 | 3,
    }) as const;
};
const seeds = fc.integer({ min: 1, max: 1e6 });

describe('learners of 120 days', () => {
  test('nothing is asked on the day of the exam or after it, whoever answers how (L8)', () => {
    fc.assert(
      fc.property(seeds, fc.integer({ min: 1, max: 119 }), (seed, exam) => {
        const random = seededRandom(seed + 1);
        const { answers } = live({
          items: some(60),
          days: 120,
          exam,
          size: () => Math.floor(random() * 14),
          answer: byChance(seed, 0.7),
        });
        expect(answers.filter(({ day }) => day >= exam)).toEqual([]);
      }),
      { numRuns: 25 },
    );
  });

  test('who answers all that waits has no gap too long, and every weak question once more in the last days (L8)', () => {
    fc.assert(
      fc.property(seeds, fc.integer({ min: 8, max: 110 }), (seed, exam) => {
        const { answers, seen } = live({
          items: some(30),
          days: exam,
          exam,
          answer: byChance(seed, 0.75),
        });
        const last = new Map<string, number>();
        for (const { item, day } of answers) {
          const before = last.get(item);
          if (before !== undefined && before < exam - LAST_DAYS) {
            const allowed = longestGap(exam - before);
            if (day !== exam - LAST_DAYS) expect(day - before).toBeLessThanOrEqual(allowed);
          }
          last.set(item, day);
        }
        const atLast = seen[exam - LAST_DAYS]?.before;
        const weak = [...(atLast ?? [])].filter(([, one]) => isWeak(one, exam));
        for (const [item] of weak) {
          expect(last.get(item), `${item} with the exam on day ${exam}`).toBeGreaterThanOrEqual(
            exam - LAST_DAYS,
          );
        }
      }),
      { numRuns: 25 },
    );
  });

  test('nobody waits for ever: six questions a day, sixty in the bank', () => {
    fc.assert(
      fc.property(seeds, fc.constantFrom(0.3, 0.6, 0.9), (seed, right) => {
        const { seen } = live({
          items: some(60),
          days: 120,
          size: () => 6,
          answer: byChance(seed, right),
        });
        const since = new Map<string, number>();
        let longest = 0;
        for (const { day, waits, asked } of seen) {
          for (const { id } of waits.due) if (!since.has(id)) since.set(id, day);
          for (const { id } of asked) {
            longest = Math.max(longest, day - (since.get(id) ?? day));
            since.delete(id);
          }
        }
        for (const [, day] of since) longest = Math.max(longest, 120 - day);
        // Two of six places go by the day it was due and by nothing else, and 59 others can stand before it.
        expect(longest).toBeLessThanOrEqual(30);
        // Half of each round is kept for new ones: 60 of them are through in 20 days.
        expect(seen[20]?.waits.fresh).toEqual([]);
      }),
      { numRuns: 20 },
    );
  });

  test('with an exam and enough places, every question has been asked before the last days', () => {
    fc.assert(
      fc.property(seeds, fc.integer({ min: 20, max: 100 }), (seed, exam) => {
        const { seen } = live({
          items: some(60),
          days: exam,
          exam,
          size: () => 40,
          answer: byChance(seed, 0.8),
        });
        expect(seen[exam - LAST_DAYS]?.waits.fresh).toEqual([]);
      }),
      { numRuns: 20 },
    );
  });
});

test('what was certain and wrong opens the round, and takes half of it at most (L13)', () => {
  fc.assert(
    fc.property(seeds, (seed) => {
      const { seen } = live({
        items: some(40),
        days: 40,
        size: () => 8,
        answer: byChance(seed, 0.5),
      });
      for (const { waits, asked, before } of seen) {
        const isError = ({ id }: Idea): boolean => {
          const one = before.get(id);
          return one !== undefined && isConfidentError(one);
        };
        if (!waits.due.some(isError)) continue;
        expect(isError(asked[0] as Idea)).toBe(true);
        const others = waits.due.filter((item) => !isError(item)).length;
        // Half of the places for what is due, which is half of the round where new ones wait.
        const old = asked.filter(({ id }) => before.has(id));
        if (others >= 8)
          expect(old.filter(isError).length).toBeLessThanOrEqual(Math.max(1, old.length / 2));
      }
    }),
    { numRuns: 20 },
  );
});

test('a beginner gets a full round, and an empty bank an empty one', () => {
  const none = knownFrom([]);
  const items = some(20);
  const first = waiting(items, none, { today: 0 });
  expect(roundOf(first, none, 6).map(({ id }) => id)).toEqual(['q0', 'q1', 'q2', 'q3', 'q4', 'q5']);
  expect(roundOf(waiting([], none, { today: 0 }), none, 6)).toEqual([]);
  expect(() => roundOf(first, none, 0)).toThrow(/whole number of questions/u);
  expect(() => roundOf(first, none, 2.5)).toThrow(/whole number of questions/u);
});

test('of twenty due, half certain and wrong, a round of eight has four of each; of three, one; of one, that one (L13)', () => {
  const items: readonly Idea[] = Array.from({ length: 20 }, (_, i) => ({
    ...{ id: `q${i}`, concept: `c${i}`, lookAlikes: [] },
  }));
  const known = knownFrom(
    items.map(({ id }, i) => ({
      item: id,
      day: 0,
      result: 'wrong' as const,
      certainty: i < 10 ? (3 as const) : (1 as const),
    })),
  );
  const waits = waiting(items, known, { today: 30 });
  expect(waits.due).toHaveLength(20);
  const errorsOf = (size: number): number =>
    roundOf(waits, known, size).filter(({ id }) => Number(id.slice(1)) < 10).length;
  expect([8, 3, 1].map(errorsOf)).toEqual([4, 1, 1]);
  expect(roundOf(waits, known, 8)).toHaveLength(8);
});

test('nothing waits on the day of the exam; on the day before it what is due does', () => {
  const items = some(5);
  const none = knownFrom([]);
  expect(waiting(items, none, { today: 10, exam: 10 })).toEqual({
    due: [],
    fresh: [],
    freshToday: 0,
  });
  expect(waiting(items, none, { today: 11, exam: 10 }).fresh).toEqual([]);
  expect(waiting(items, none, { today: 9, exam: 10 }).fresh).toEqual(items);
});

test('new questions are spread over the days that are left before the last ones', () => {
  const items = some(20);
  const none = knownFrom([]);
  const freshOn = (today: number, exam?: number) =>
    waiting(items, none, { today, exam }).freshToday;
  // 20 days, less the last 3: 17 for 20 questions. With one day left, all; without an exam six.
  expect([freshOn(0, 20), freshOn(15, 20), freshOn(16, 20), freshOn(18, 20), freshOn(0)]).toEqual([
    2, 10, 20, 20, 6,
  ]);
});

test('a round is never larger than asked for, however many new ones the exam wants', () => {
  const items = some(60);
  const answered = items.slice(0, 4).map(({ id }) => ({
    ...{ item: id, day: 0, result: 'wrong' as const, certainty: 1 as const },
  }));
  const known = knownFrom(answered);
  const waits = waiting(items, known, { today: 1, exam: 6 });
  // 56 new ones in two days.
  expect(waits).toMatchObject({ freshToday: 28 });
  expect(waits.due).toHaveLength(4);
  for (const size of [1, 3, 6, 8, 20]) {
    const round = roundOf(waits, known, size);
    expect(round).toHaveLength(size);
    expect(new Set(round.map(({ id }) => id)).size).toBe(size);
  }
});
