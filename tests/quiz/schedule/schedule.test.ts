import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { LAST_DAYS, longestGap } from '../../../src/quiz/schedule/exam.ts';
import {
  dueDay,
  isConfidentError,
  isWeak,
  knownFrom,
  type Answered,
  type Known,
} from '../../../src/quiz/schedule/schedule.ts';

const DAY = 20_000;
const one = (day: number, over: Partial<Answered> = {}): Answered => ({
  item: 'a',
  day,
  result: 'right',
  certainty: 2,
  ...over,
});
const after = (...answers: readonly Answered[]): Known => knownFrom(answers).get('a') as Known;

test('the longest gap before an exam is the share that the requirement prints', () => {
  // max(1, round(f D)), f .30 up to 14 days, .20 to 60, .10 beyond (after Cepeda et al. 2008), worked by hand.
  for (const [left, gap] of [
    [1, 1],
    [3, 1],
    [5, 2],
    [10, 3],
    [14, 4],
    [15, 3],
    [30, 6],
    [60, 12],
    [61, 6],
    [120, 12],
  ] as const) {
    expect(longestGap(left), `${left} days left`).toBe(gap);
  }
  expect(() => longestGap(0)).toThrow(/a day at least/u);
  expect(() => longestGap(Number.NaN)).toThrow(/a day at least/u);
});

test('a wrong answer comes back on the next day, a right one later each time', () => {
  expect(dueDay(after(one(DAY, { result: 'wrong' })))).toBe(DAY + 1);
  const first = dueDay(after(one(DAY))) as number;
  const second = dueDay(after(one(DAY), one(first))) as number;
  expect(first).toBeGreaterThan(DAY);
  expect(second - first).toBeGreaterThan(first - DAY);
});

test('a clock that was set back, or a date far ahead, breaks nothing', () => {
  const back = after(one(DAY), one(DAY - 400), one(DAY + 3));
  expect(back).toMatchObject({ last: DAY + 3, answers: 3 });
  // The answer of the wrong date counts for the latest day there was.
  expect(back.memory).toEqual(after(one(DAY), one(DAY), one(DAY + 3)).memory);
  expect(() => knownFrom([one(Number.NaN)])).toThrow(/whole number/u);
  expect(() => knownFrom([one(1.5)])).toThrow(/whole number/u);
});

describe('with an exam ahead', () => {
  const history = fc
    .array(
      fc.record({
        gap: fc.integer({ min: 0, max: 40 }),
        result: fc.constantFrom('right', 'partial', 'wrong'),
        certainty: fc.constantFrom(1, 2, 3),
      }),
      { minLength: 1, maxLength: 12 },
    )
    .map((steps) => {
      let day = DAY;
      return steps.map(({ gap, result, certainty }) => one((day += gap), { result, certainty }));
    });

  test('nothing falls on it or after it, and no gap is longer than allowed (L8)', () => {
    fc.assert(
      fc.property(history, fc.integer({ min: 1, max: 400 }), (answers, left) => {
        const known = after(...answers);
        const exam = known.last + left;
        const due = dueDay(known, exam);
        if (due === undefined) return;
        expect(due).toBeLessThan(exam);
        expect(due).toBeGreaterThan(known.last);
        const weakOnes = exam - LAST_DAYS;
        if (due !== weakOnes) expect(due - known.last).toBeLessThanOrEqual(longestGap(left));
      }),
    );
  });

  test('a weak one comes back in the last three days, a firm one need not (L8)', () => {
    fc.assert(
      fc.property(history, fc.integer({ min: LAST_DAYS + 1, max: 6 }), (answers, left) => {
        const known = after(...answers);
        const exam = known.last + left;
        // Asked before the last days, and weak: some day before the exam has it.
        if (isWeak(known, exam)) expect(dueDay(known, exam)).toBeDefined();
      }),
    );
  });

  test('on the day before and later nothing more comes', () => {
    expect(dueDay(after(one(DAY)), DAY + 1)).toBeUndefined();
    expect(dueDay(after(one(DAY)), DAY)).toBeUndefined();
    expect(dueDay(after(one(DAY)), DAY - 5)).toBeUndefined();
  });
});

test('certain and wrong is a confident error, a wrong guess is none (L13)', () => {
  expect(isConfidentError(after(one(DAY, { result: 'wrong', certainty: 3 })))).toBe(true);
  expect(isConfidentError(after(one(DAY, { result: 'wrong', certainty: 1 })))).toBe(false);
  expect(isConfidentError(after(one(DAY, { result: 'right', certainty: 3 })))).toBe(false);
});

describe('a question that is weak by the day of the exam', () => {
  // Right once, a guess: weak, and due within a few days.
  const guess = after(one(DAY, { certainty: 1 }));
  test('whatever is asked before the last three days comes back by the end of them, firm or not', () => {
    for (let left = LAST_DAYS + 1; left <= 400; left += 1) {
      const exam = DAY + left;
      for (const known of [guess, after(one(DAY, { certainty: 3 }))]) {
        let now = known;
        let due = dueDay(now, exam);
        // Answered alike on each day that it is due, it is asked in the last days at latest.
        for (
          let times = 0;
          due !== undefined && due < exam - LAST_DAYS && times < 400;
          times += 1
        ) {
          now = { ...now, last: due };
          due = dueDay(now, exam);
        }
        expect(due, `${left} days`).toBeGreaterThanOrEqual(exam - LAST_DAYS);
        expect(due, `${left} days`).toBeLessThan(exam);
      }
    }
  });
  test('the longest gap counts where its own would be longer', () => {
    // Certain and right: FSRS 6 brings it in 8 days. With five left the longest gap is two, so it comes before.
    const firm = after(one(DAY, { certainty: 3 }));
    expect(dueDay(firm)).toBe(DAY + 8);
    expect(dueDay(firm, DAY + 5)).toBe(DAY + 2);
  });
  test('once asked in the last days it does not come back for that', () => {
    const exam = DAY + 2;
    // One day of the three is left: longestGap(2) is 1.
    expect(dueDay(guess, exam)).toBe(DAY + 1);
    expect(dueDay(guess, DAY + 1)).toBeUndefined();
  });
  test.each([
    // Firm at the exam or not, by the curve of FSRS 6: nine in ten after as many days as the stability, 8.2956 of a first "easy".
    [8, false],
    [9, true],
  ])('certain and right is weak %i days on: %s', (days, weak) => {
    expect(isWeak(after(one(DAY, { certainty: 3 })), DAY + days)).toBe(weak);
  });
  test('a guess and a part are weak at once, a date before the answer changes nothing', () => {
    expect(isWeak(guess, DAY)).toBe(true);
    expect(isWeak(after(one(DAY, { result: 'partial', certainty: 3 })), DAY)).toBe(true);
    expect(isWeak(after(one(DAY, { certainty: 3 })), DAY - 50)).toBe(false);
  });
});
