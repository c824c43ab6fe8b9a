import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Result } from '../../../src/quiz/result.ts';
import { areas, type Area } from '../../../src/quiz/rehearsal/blueprint.ts';
import { readNext, scoreByArea, type Rehearsed } from '../../../src/quiz/rehearsal/score.ts';

let count = 0;
const item = (area: Area, lesson: string, result?: Result): Rehearsed => ({
  id: `q${(count += 1)}`,
  area,
  lesson,
  result,
});

/** Worked out on paper: see the comment at each area. */
const paper: readonly Rehearsed[] = [
  // 4 asked, 3 right: one in four missed, which is not more than one in four.
  item('fluid', 'pressure', 'right'),
  item('fluid', 'pressure', 'right'),
  item('fluid', 'viscosity', 'right'),
  item('fluid', 'viscosity', 'wrong'),
  // 3 asked, 1 right, 1 open: two in three missed.
  item('log', 'slip', 'right'),
  item('log', 'codes', 'partial'),
  item('log', 'codes'),
  // 5 asked, 2 right, 2 open: three in five missed, two of them in "seal".
  item('parts', 'together', 'right'),
  item('parts', 'seal', 'right'),
  item('parts', 'together', 'wrong'),
  item('parts', 'seal'),
  item('parts', 'seal'),
];

test('areas are scored as on paper: a part is not right, what is open was asked', () => {
  expect(scoreByArea(paper)).toEqual([
    { area: 'fluid', asked: 4, right: 3, open: 0 },
    { area: 'log', asked: 3, right: 1, open: 1 },
    { area: 'parts', asked: 5, right: 2, open: 2 },
  ]);
});

test('what to read next is the weakest area first, its most missed lesson first', () => {
  expect(readNext(paper)).toEqual([
    { area: 'log', asked: 3, right: 1, open: 1, lessons: [{ lesson: 'codes', missed: 2 }] },
    {
      ...{ area: 'parts', asked: 5, right: 2, open: 2 },
      lessons: [
        { lesson: 'seal', missed: 2 },
        { lesson: 'together', missed: 1 },
      ],
    },
  ]);
});

test('of two areas alike the one that was asked more comes first', () => {
  const all = [
    item('fluid', 'a', 'wrong'),
    item('fluid', 'a', 'right'),
    ...['wrong', 'wrong', 'right', 'right'].map((result) => item('proof', 'b', result as Result)),
  ];
  expect(readNext(all).map(({ area }) => area)).toEqual(['proof', 'fluid']);
});

describe('any rehearsal', () => {
  const any = fc.array(
    fc.record({
      id: fc.string(),
      lesson: fc.constantFrom('a', 'b', 'c'),
      area: fc.constantFrom(...areas),
      result: fc.constantFrom('right', 'partial', 'wrong', undefined),
    }),
  );

  test('has its questions in the areas, each once', () => {
    fc.assert(
      fc.property(any, (items) => {
        const rows = scoreByArea(items);
        const sum = (of: 'asked' | 'right' | 'open'): number =>
          rows.reduce((total, row) => total + row[of], 0);
        expect(sum('asked')).toBe(items.length);
        expect(sum('right')).toBe(items.filter(({ result }) => result === 'right').length);
        expect(sum('open')).toBe(items.filter(({ result }) => result === undefined).length);
      }),
    );
  });

  test('sends nobody to an area that was all right, and from each weak one to a lesson', () => {
    fc.assert(
      fc.property(any, (items) => {
        const next = readNext(items);
        for (const { asked, right, lessons } of next) {
          expect(right).toBeLessThan(asked);
          expect(lessons.reduce((sum, { missed }) => sum + missed, 0)).toBe(asked - right);
        }
        const shares = next.map(({ asked, right }) => right / asked);
        expect(shares).toEqual([...shares].sort((a, b) => a - b));
      }),
    );
  });
});
