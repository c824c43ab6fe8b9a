import fc from 'fast-check';
import { expect, test } from 'vitest';
import {
  LONGEST_INTERVAL,
  recallAfter,
  recallOf,
  remember,
  wantedGap,
  type Memory,
  type Recall,
} from '../../../src/quiz/schedule/memory.ts';

/**
 * FSRS 6 as its authors publish it (open-spaced-repetition, "The Algorithm"): the first stability by grade, and the curve
 * R = (1 + f t / S)^-d with f = 0.9^(-1/d) - 1. The parameters are those printed there, from memory.
 */
const FIRST: Readonly<Record<Recall, number>> = { 1: 0.212, 2: 1.2931, 3: 2.3065, 4: 8.2956 };
const DECAY = 0.1542;
const curve = (days: number, stability: number): number =>
  (1 + ((0.9 ** (-1 / DECAY) - 1) * days) / stability) ** -DECAY;

test.each([1, 2, 3, 4] as const)(
  'the first answer of grade %d gives the printed stability',
  (grade) => {
    expect(remember(undefined, 0, grade).stability).toBeCloseTo(FIRST[grade], 4);
  },
);

test('what is forgotten follows the printed curve', () => {
  for (const stability of [0.5, 2.3065, 40, 300]) {
    for (const days of [0, 1, 7, 30, 200]) {
      // The package rounds to eight places.
      expect(recallAfter({ stability, difficulty: 5 }, days)).toBeCloseTo(
        curve(days, stability),
        6,
      );
    }
    expect(recallAfter({ stability, difficulty: 5 }, stability)).toBeCloseTo(0.9, 6);
  }
});

test('it comes back when nine in ten would know it', () => {
  // By the definition of stability; whole days.
  expect(wantedGap({ stability: 5, difficulty: 5 })).toBe(5);
  expect(wantedGap({ stability: 0.2, difficulty: 5 })).toBe(1);
  expect(wantedGap({ stability: 30_000, difficulty: 5 })).toBe(LONGEST_INTERVAL);
});

test('a guess that came out right counts as hard, part of several too', () => {
  expect([1, 2, 3].map((sure) => recallOf('right', sure as 1 | 2 | 3))).toEqual([2, 3, 4]);
  expect(recallOf('partial', 3)).toBe(2);
  expect(recallOf('wrong', 1)).toBe(1);
});

test('any history of answers gives a memory that can be reckoned with', () => {
  const step = fc.tuple(fc.integer({ min: 0, max: 4000 }), fc.constantFrom<Recall>(1, 2, 3, 4));
  fc.assert(
    fc.property(fc.array(step, { minLength: 1, maxLength: 60 }), (steps) => {
      let memory: Memory | undefined;
      for (const [days, recall] of steps) memory = remember(memory, days, recall);
      const gap = wantedGap(memory as Memory);
      expect(Number.isInteger(gap) && gap >= 1 && gap <= LONGEST_INTERVAL).toBe(true);
      const recall = recallAfter(memory as Memory, gap);
      expect(recall > 0 && recall <= 1).toBe(true);
    }),
  );
});

test('a wrong answer brings it back sooner than a right one', () => {
  const step = fc.record({
    stability: fc.double({ min: 0.5, max: 300, noNaN: true }),
    difficulty: fc.double({ min: 1, max: 10, noNaN: true }),
  });
  fc.assert(
    fc.property(step, fc.integer({ min: 1, max: 400 }), (memory, days) => {
      expect(wantedGap(remember(memory, days, 1))).toBeLessThanOrEqual(
        wantedGap(remember(memory, days, 3)),
      );
    }),
  );
});

test('what is no number is refused, where the package would hand it on', () => {
  expect(() => remember({ stability: 5, difficulty: 5 }, Number.NaN, 3)).toThrow(
    /has to be a number/u,
  );
  expect(() => remember(undefined, -1, 3)).toThrow(/has to be a number/u);
  expect(() => remember({ stability: Number.NaN, difficulty: 5 }, 1, 3)).toThrow();
  expect(() => recallAfter({ stability: 5, difficulty: 5 }, -1)).toThrow(/has to be a number/u);
  expect(() => wantedGap({ stability: Number.NaN, difficulty: 5 })).toThrow(/has to be a number/u);
});

test.each([
  [
    'The time since the answer before is -1; it has to be a number from 0.',
    () => remember(undefined, -1, 3),
  ],
  [
    'The time since the last answer is NaN; it has to be a number from 0.',
    () => recallAfter({ stability: 5, difficulty: 5 }, Number.NaN),
  ],
  [
    'The stability is -2; it has to be a number from 0.',
    () => wantedGap({ stability: -2, difficulty: 5 }),
  ],
])('refused with: %s', (sentence, call) => {
  expect(call).toThrow(new RangeError(sentence));
});

test('on the same day it is allowed, and the gap is never under a day', () => {
  expect(remember({ stability: 5, difficulty: 5 }, 0, 3).stability).toBeGreaterThan(0);
  expect(recallAfter({ stability: 5, difficulty: 5 }, 0)).toBe(1);
  expect(wantedGap({ stability: 0, difficulty: 5 })).toBe(1);
});
