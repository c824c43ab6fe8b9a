import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { bankIndex } from '../../src/lessons/bank-index.ts';
import {
  MOST_SUSPENDED,
  nothingYet,
  resume,
  scoreOf,
  statusOf,
  suspend,
  type Standing,
} from '../../src/scorm/launch/standing.ts';

const bank = bankIndex();
const standings: fc.Arbitrary<Standing> = fc
  .record({
    done: fc.subarray(bank.lessons.map(({ id }) => id)),
    right: fc
      .subarray(bank.items.map(({ id }) => id))
      .chain((ids) =>
        fc.tuple(...ids.map((id) => fc.boolean().map((right) => [id, right] as const))),
      ),
  })
  .map(({ done, right }) => ({ done: new Set(done), right: new Map(right) }));

test('what is put aside fits, and reads back as it was', () => {
  fc.assert(
    fc.property(standings, (standing) => {
      const text = suspend(bank, standing);
      expect(text.length).toBeLessThanOrEqual(MOST_SUSPENDED);
      const back = resume(bank, text);
      expect(back.done).toEqual(standing.done);
      expect(new Map([...back.right].sort())).toEqual(new Map([...standing.right].sort()));
    }),
    { numRuns: 50 },
  );
});

test('what is not ours, or of another bank, is nothing yet', () => {
  for (const text of ['', 'x', '2;1;1', '{"a":1}']) expect(resume(bank, text)).toEqual(nothingYet);
  const fewer = { ...bank, items: bank.items.slice(1) };
  const [first = ''] = bank.lessons.map(({ id }) => id);
  const text = suspend(bank, {
    done: new Set([first]),
    right: new Map([[bank.items[3]?.id ?? '', true]]),
  });
  expect(resume(fewer, text)).toEqual({ done: new Set([first]), right: new Map() });
});

describe('score and status', () => {
  const small = {
    lessons: [{ id: 'a' }, { id: 'b' }],
    items: ['a1', 'a2', 'b1', 'b2'].map((id) => ({ id, lesson: id.charAt(0) })),
  };
  const standing = (done: string, right: Record<string, boolean>): Standing => ({
    done: new Set(done),
    right: new Map(Object.entries(right)),
  });
  test.each([
    ['', {}, 0, 'incomplete'],
    // Half of one lesson's two, none of the other's: a quarter.
    ['a', { a1: true, a2: false }, 25, 'incomplete'],
    ['', { a1: true, a2: true, b1: true, b2: true }, 100, 'incomplete'],
    ['ab', { a1: true, b1: true, b2: false }, 75, 'completed'],
    ['ab', { a1: true, b1: true }, 100, 'passed'],
  ])('%j done and %j is %i, %s', (done, right, score, status) => {
    expect(scoreOf(small, standing(done, right))).toBe(score);
    expect(statusOf(small, standing(done, right))).toBe(status);
  });
});
