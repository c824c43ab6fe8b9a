import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Asked } from '../../src/quiz/asked.ts';
import { asPrinted, mixedUp } from '../../src/quiz/mixed-up.ts';
import { seededRandom } from '../../src/quiz/seeded-order.ts';
import { all, amounts, ask, forms, match, order, shortCase, several, single } from './sample.ts';

const questions = [...all, ...forms].map(ask);
/** What is shown of a question, in its order. */
const shown = (asked: Asked): readonly string[] => {
  switch (asked.kind) {
    case 'single':
    case 'several':
    case 'case':
      return asked.options.map(({ id }) => id);
    case 'order':
    case 'spot':
      return asked.steps.map(({ id }) => id);
    case 'match':
      return asked.partners.map(({ id }) => id);
    case 'number':
      return [];
  }
};
const seeds = fc.integer({ min: 1, max: 1e6 });
const ordersOf = (asked: Asked): ReadonlySet<string> =>
  new Set(
    Array.from({ length: 400 }, (_, seed) => shown(mixedUp(asked, seededRandom(seed))).join()),
  );

describe('mixed up by chance', () => {
  test('nothing is lost, nothing is added, and the same seed gives the same', () => {
    fc.assert(
      fc.property(seeds, fc.constantFrom(...questions), (seed, asked) => {
        const mixed = mixedUp(asked, seededRandom(seed));
        expect([...shown(mixed)].sort()).toEqual([...shown(asked)].sort());
        expect(mixedUp(asked, seededRandom(seed))).toEqual(mixed);
      }),
    );
  });

  test.each([
    // 3 options: 3! orders; 4 partners: 4!; 4 steps: 4! less the two right ones.
    ['single', single, 6],
    ['several', several, 6],
    ['case', shortCase, 6],
    ['match', match, 24],
    ['order', order, 22],
    ['amounts, by size', amounts, 1],
  ] as const)('%s comes in each order that is no answer', (_, question, orders) => {
    expect(ordersOf(ask(question)).size).toBe(orders);
  });

  test('steps never stand in a right order', () => {
    const orders = ordersOf(ask(order));
    expect(orders).not.toContain('chock,level,codes,drive');
    expect(orders).not.toContain('chock,codes,level,drive');
  });
});

describe('as printed', () => {
  test('what stands in its right order when it is written is mixed up, always alike', () => {
    for (const asked of [ask(order), ask(match)]) {
      const printed = asPrinted(asked);
      expect(asPrinted(asked)).toEqual(printed);
      expect([...shown(printed)].sort()).toEqual([...shown(asked)].sort());
    }
    expect(['chock,level,codes,drive', 'chock,codes,level,drive']).not.toContain(
      shown(asPrinted(ask(order))).join(),
    );
  });

  test('by its id: of forty that are else alike, partners and steps stand in many orders', () => {
    for (const asked of [ask(order), ask(match)]) {
      const orders = new Set(
        Array.from({ length: 40 }, (_, n) => shown(asPrinted({ ...asked, id: `q-${n}` })).join()),
      );
      expect(orders.size).toBeGreaterThan(10);
    }
  });

  test('everything else stays as it was written', () => {
    for (const asked of questions)
      if (asked.kind !== 'order' && asked.kind !== 'match') expect(asPrinted(asked)).toBe(asked);
  });
});
