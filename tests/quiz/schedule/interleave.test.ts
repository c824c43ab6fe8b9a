import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { farPairs, interleave, NEAR, type Idea } from '../../../src/quiz/schedule/interleave.ts';
import { bank } from './bank.ts';

const idea = (id: string, concept: string, ...lookAlikes: string[]): Idea => ({
  id,
  concept,
  lookAlikes,
});
const ids = (order: readonly Idea[]): readonly string[] => order.map(({ id }) => id);

/** Where three of one concept follow each other although another one was left [place of the third]. */
function needlessThrees(order: readonly Idea[]): readonly number[] {
  return order.flatMap(({ concept }, i) => {
    if (i < 2 || order[i - 1]?.concept !== concept || order[i - 2]?.concept !== concept) return [];
    return order.slice(i).some((later) => later.concept !== concept) ? [i] : [];
  });
}

test('what is urgent comes first where nothing speaks against it', () => {
  expect(ids(interleave([idea('1', 'a'), idea('2', 'b'), idea('3', 'c')]))).toEqual([
    '1',
    '2',
    '3',
  ]);
});

test('a look-alike is fetched from the end of the list', () => {
  const round = [
    idea('gap', 'gap', 'hole'),
    ...['p', 'q', 'r', 's', 't'].map((x) => idea(x, x)),
    idea('hole', 'hole'),
  ];
  expect(farPairs(round)).toEqual(['gap hole']);
  const order = interleave(round);
  expect(ids(order).indexOf('hole')).toBeLessThanOrEqual(NEAR);
  expect(farPairs(order)).toEqual([]);
});

test('two that have stood near each other draw no further ones after them', () => {
  const round = [
    idea('gap', 'gap', 'hole'),
    idea('hole', 'hole'),
    ...['p', 'q', 'r', 's'].map((x) => idea(x, x)),
    idea('gap again', 'gap', 'hole'),
  ];
  expect(ids(interleave(round))).toEqual(ids(round));
});

describe('any round', () => {
  const round = fc
    .array(fc.tuple(fc.integer({ min: 0, max: 7 }), fc.integer({ min: 0, max: 7 })), {
      minLength: 1,
      maxLength: 50,
    })
    .map((all) =>
      all.map(([concept, like], i) =>
        idea(String(i), `c${concept}`, ...(like === concept ? [] : [`c${like}`])),
      ),
    );

  test('keeps its questions, each once', () => {
    fc.assert(
      fc.property(round, (all) => {
        expect([...ids(interleave(all))].sort()).toEqual([...ids(all)].sort());
      }),
    );
  });

  test('has no three of one idea in a row while there are others (L9)', () => {
    fc.assert(
      fc.property(round, (all) => {
        expect(needlessThrees(interleave(all))).toEqual([]);
      }),
    );
  });
});

test('rounds from the bank itself have every pair of look-alikes near (L9)', () => {
  const picks = fc.uniqueArray(fc.integer({ min: 0, max: bank.length - 1 }), {
    minLength: 2,
    maxLength: 50,
  });
  fc.assert(
    fc.property(picks, (places) => {
      const order = interleave(places.map((at) => bank[at] as Idea));
      expect(farPairs(order)).toEqual([]);
      expect(needlessThrees(order)).toEqual([]);
    }),
    { numRuns: 300 },
  );
});

test('who comes first stays first when the look-alike can be fetched', () => {
  const round = [
    idea('gap', 'gap', 'hole'),
    ...['p', 'q', 'r', 's', 't'].map((x) => idea(x, x)),
    idea('hole', 'hole'),
  ];
  // The only one with a deadline is taken at once; the others keep their order.
  expect(ids(interleave(round))).toEqual(['gap', 'hole', 'p', 'q', 'r', 's', 't']);
});

test('a third of one idea waits until another has been', () => {
  const round = ['1', '2', '3', '4'].map((id) => idea(id, 'same')).concat(idea('5', 'other'));
  expect(ids(interleave(round))).toEqual(['1', '2', '5', '3', '4']);
});

test('a pair is far only if it never stands near, whichever names the other and whichever comes first', () => {
  const [p, q, r] = ['p', 'q', 'r'].map((x) => idea(x, x)) as [Idea, Idea, Idea];
  const [a, b] = [idea('a', 'a'), idea('b', 'b', 'a')];
  expect(farPairs([a, p, q, b])).toEqual([]);
  expect(farPairs([a, p, q, r, b])).toEqual(['a b']);
  expect(farPairs([b, p, q, r, a])).toEqual(['a b']);
  expect(farPairs([a, p, q, r, b, idea('a2', 'a')])).toEqual([]);
  expect(farPairs([idea('a2', 'a'), b, p, q, r, a])).toEqual([]);
});
