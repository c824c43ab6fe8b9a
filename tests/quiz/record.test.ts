import fc from 'fast-check';
import { expect, test } from 'vitest';
import { byLesson, calibrationOf, dayByDay, readNext } from '../../src/quiz/record.ts';
import type { Answered } from '../../src/quiz/schedule/schedule.ts';

const DAY = 20_454;
const items = ['a', 'b', 'c'].map((id) => ({ id, lesson: id === 'c' ? 'two' : 'one' }));
const one = (item: string, over: Partial<Answered> = {}): Answered => ({
  item,
  day: DAY,
  result: 'right',
  certainty: 2,
  ...over,
});

test('what was right and not guessed solid, until nine in ten would not know it any more', () => {
  const answers = [one('a'), one('b', { certainty: 1 }), one('c', { result: 'wrong' })];
  expect(byLesson(items, answers, DAY)).toEqual([
    { lesson: 'one', questions: 2, asked: 2, solid: 1, shaky: 1 },
    { lesson: 'two', questions: 1, asked: 1, solid: 0, shaky: 1 },
  ]);
  // FSRS 6: a first "good" is known by nine in ten for 2.3 days (printed parameter 2.3065).
  expect(byLesson(items, answers, DAY + 2)[0]?.solid).toBe(1);
  expect(byLesson(items, answers, DAY + 3)[0]?.solid).toBe(0);
});

test('the last answer counts, whatever came before', () => {
  const late = [one('a', { result: 'wrong' }), one('a', { day: DAY + 1 })];
  expect(byLesson(items, late, DAY + 1)[0]).toMatchObject({ asked: 1, solid: 1 });
});

test('the shakiest lessons come first, and one without a shaky question is not named', () => {
  const rows = ['x', 'y', 'z'].map((lesson, i) => ({
    lesson,
    questions: 9,
    asked: 5,
    solid: [5, 3, 1][i] ?? 0,
    shaky: [0, 2, 4][i] ?? 0,
  }));
  expect(readNext(rows).map(({ lesson }) => lesson)).toEqual(['z', 'y']);
});

test('everything is counted once', () => {
  const answer = fc.record({
    item: fc.constantFrom('a', 'b', 'c'),
    day: fc.integer({ min: DAY, max: DAY + 40 }),
    result: fc.constantFrom('right', 'partial', 'wrong'),
    certainty: fc.constantFrom(1, 2, 3),
  }) as fc.Arbitrary<Answered>;
  fc.assert(
    fc.property(fc.array(answer), (answers) => {
      const sum = (all: readonly number[]) => all.reduce((a, b) => a + b, 0);
      const right = answers.filter(({ result }) => result === 'right').length;
      expect(sum(calibrationOf(answers).map(({ said }) => said))).toBe(answers.length);
      expect(sum(calibrationOf(answers).map((row) => row.right))).toBe(right);
      expect(sum(dayByDay(answers).map((row) => row.answers))).toBe(answers.length);
      expect(sum(dayByDay(answers).map((row) => row.right))).toBe(right);
      const asked = new Set(answers.map(({ item }) => item)).size;
      const rows = byLesson(items, answers, DAY + 41);
      expect(sum(rows.map((row) => row.asked))).toBe(asked);
      for (const row of rows) expect(row.solid + row.shaky).toBe(row.asked);
    }),
  );
});

test('days, the latest first; certainties, the least first', () => {
  const answers = [
    one('a', { certainty: 1 }),
    one('b', { day: DAY + 3, result: 'wrong', certainty: 3 }),
    one('c', { day: DAY + 1, result: 'partial', certainty: 3 }),
    one('a', { day: DAY + 3, certainty: 3 }),
  ];
  expect(dayByDay(answers)).toEqual([
    { day: DAY + 3, answers: 2, right: 1 },
    { day: DAY + 1, answers: 1, right: 0 },
    { day: DAY, answers: 1, right: 1 },
  ]);
  expect(calibrationOf(answers)).toEqual([
    { certainty: 1, said: 1, right: 1 },
    { certainty: 2, said: 0, right: 0 },
    { certainty: 3, said: 3, right: 1 },
  ]);
});

test('three lessons at most, of even ones the earlier', () => {
  const rows = ['v', 'w', 'x', 'y', 'z'].map((lesson, i) => ({
    ...{ lesson, questions: 9, asked: 5, solid: 0 },
    shaky: [2, 4, 2, 4, 1][i] ?? 0,
  }));
  expect(readNext(rows).map(({ lesson }) => lesson)).toEqual(['w', 'y', 'v']);
  expect(readNext(rows, 4).map(({ lesson }) => lesson)).toEqual(['w', 'y', 'v', 'x']);
});
