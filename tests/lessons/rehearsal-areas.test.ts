import fc from 'fast-check';
import { expect, test } from 'vitest';
import { bankIndex } from '../../src/lessons/bank-index.ts';
import { objectives } from '../../src/lessons/objectives.ts';
import { areaOf, asksWhatNext } from '../../src/lessons/rehearsal-areas.ts';
import { areas, REHEARSAL_SIZE, shares, wanted } from '../../src/quiz/rehearsal/blueprint.ts';
import { drawRehearsal, traitsOf } from '../../src/quiz/rehearsal/draw.ts';
import { farPairs } from '../../src/quiz/schedule/interleave.ts';

const { items } = bankIndex();
const seeds = fc.integer({ min: 0, max: 2 ** 32 - 1 });

test('every objective has an area, and nothing else has', () => {
  expect(Object.keys(areaOf).sort()).toEqual(objectives.map(({ id }) => id).sort());
});

test('every area has questions for two rehearsals at least', () => {
  for (const area of areas) {
    const count = items.filter((item) => item.area === area).length;
    expect(count, area).toBeGreaterThanOrEqual((2 * shares[area] * REHEARSAL_SIZE) / 100);
  }
});

test('every objective that asks what comes next has questions', () => {
  expect(asksWhatNext.length).toBeGreaterThan(0);
  expect(items.filter(({ next }) => next).length).toBeGreaterThanOrEqual(
    2 * wanted('next', REHEARSAL_SIZE),
  );
});

test('fifty questions of the bank, by any seed, are the blueprint', () => {
  fc.assert(
    fc.property(seeds, (seed) => {
      const drawn = drawRehearsal(items, seed);
      expect(new Set(drawn.map(({ id }) => id)).size).toBe(REHEARSAL_SIZE);
      for (const area of areas) {
        const count = drawn.filter((item) => item.area === area).length;
        expect(Math.abs(count - (shares[area] * REHEARSAL_SIZE) / 100), area).toBeLessThanOrEqual(
          0.5,
        );
      }
      const has = traitsOf(drawn);
      // At least three in ten in settings not seen before: more than the requirement, a third.
      expect(has.unseen).toBe(wanted('unseen', REHEARSAL_SIZE));
      expect(has.next).toBe(wanted('next', REHEARSAL_SIZE));
      // As many healthy cars as are wanted, or as there are.
      expect(has.healthy).toBeLessThanOrEqual(wanted('healthy', REHEARSAL_SIZE));
      expect(farPairs(drawn)).toEqual([]);
    }),
    { numRuns: 100 },
  );
});

test('a second and a third rehearsal share no question with those before', () => {
  const lately = new Map<string, number>();
  for (const seed of [1, 2, 3]) {
    const drawn = drawRehearsal(items, seed, lately);
    expect(drawn.filter(({ id }) => lately.has(id))).toEqual([]);
    for (const { id } of drawn) lately.set(id, 4 - seed);
  }
});
