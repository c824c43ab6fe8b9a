/** What goes over the line of further variants, and that it comes back. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Asked, Varied } from '../../src/quiz/asked.ts';
import { changesOf, withChanges } from '../../src/quiz/variants-sent.ts';
import { ask, single } from './sample.ts';

const first = ask(single);
const varied = (...others: readonly object[]): Varied => ({ ...first, others: others as Asked[] });
/** As they arrive on the other side. */
const back = (question: Varied): unknown => {
  const bare = Object.fromEntries(
    Object.entries(question).filter(([key]) => key !== 'others'),
  ) as unknown as Varied;
  const sent = JSON.parse(JSON.stringify(changesOf([question]) ?? {})) as Record<string, never>;
  return withChanges([bare], sent, (value) => value as Asked)[0];
};

describe('what differs goes, under the keys that lead to it', () => {
  test('one amount, one word, one list', () => {
    const other = { ...first, stem: ['Another stem'], unseen: true };
    expect(changesOf([varied(other)])).toEqual({
      'q-single': [{ stem: [['Another stem']], unseen: [true] }],
    });
  });
  test('inside a list by its place, an amount whole', () => {
    const [one, ...rest] = (first as unknown as { options: readonly object[] }).options;
    const other = {
      ...first,
      options: [{ ...one, words: [{ si: '1 kPa', us: '2 psi' }] }, ...rest],
    };
    expect(changesOf([varied(other)])).toEqual({
      'q-single': [{ options: { 0: { words: { 0: [{ si: '1 kPa', us: '2 psi' }] } } } }],
    });
  });
  test('a key more, a key less and another key go whole', () => {
    for (const chart of [{ a: 1, b: 2 }, { a: 1 }, { c: 1, b: 2 }, [1, 2]]) {
      const from = { ...first, chart: { a: 1, b: 3 } } as unknown as Varied;
      const [sent] =
        changesOf([{ ...from, others: [{ ...from, chart } as unknown as Asked] }])?.['q-single'] ??
        [];
      expect(sent).toEqual(
        'a' in chart && 'b' in chart ? { chart: { b: [2] } } : { chart: [chart] },
      );
    }
  });
  test('one that is the same sends nothing but that it is there', () => {
    expect(changesOf([varied({ ...first })])).toEqual({ 'q-single': [undefined] });
  });
  test('where none varies nothing goes', () => {
    expect(changesOf([first, varied()])).toBeUndefined();
    expect(withChanges([first], {}, (value) => value as Asked)).toEqual([first]);
  });
});

test('any variants come back as they went', () => {
  const words = fc.array(fc.oneof(fc.string(), fc.record({ si: fc.string(), us: fc.string() })), {
    maxLength: 3,
  });
  const other = fc.record({ stem: words, chart: fc.record({ a: fc.integer(), b: words }) });
  fc.assert(
    fc.property(other, fc.array(other, { minLength: 1, maxLength: 3 }), (one, more) => {
      const begins = { ...first, ...one } as unknown as Varied;
      const others = more.map((each) => ({ ...begins, ...each })) as unknown as Asked[];
      const question = { ...begins, others };
      expect(back(question)).toEqual(question);
    }),
  );
});
