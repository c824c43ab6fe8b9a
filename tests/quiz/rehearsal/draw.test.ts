import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  areas,
  REHEARSAL_SIZE,
  shares,
  traitNames,
  wanted,
  type Area,
} from '../../../src/quiz/rehearsal/blueprint.ts';
import {
  drawRehearsal,
  seatsFrom,
  traitsOf,
  type Drawable,
} from '../../../src/quiz/rehearsal/draw.ts';

const seeds = fc.integer({ min: 0, max: 2 ** 32 - 1 });
const banks = fc
  .array(
    fc.record({
      area: fc.constantFrom(...areas),
      concept: fc.constantFrom('a', 'b', 'c', 'd', 'e', 'f'),
      unseen: fc.boolean(),
      next: fc.constantFrom(undefined, true, false),
      healthy: fc.constantFrom(undefined, true, false),
    }),
    { maxLength: 250 },
  )
  .map((all): readonly Drawable[] =>
    all.map((one, i) => ({ ...one, id: `q${i}`, lookAlikes: i % 5 === 0 ? ['a'] : [] })),
  );
const ids = (items: readonly Drawable[]): readonly string[] => items.map(({ id }) => id);

/** Fifty of each area, one in four unseen, one in ten about what comes next, one in eight healthy. */
const plenty: readonly Drawable[] = areas.flatMap((area) =>
  Array.from({ length: 50 }, (_, i) => ({
    ...{ id: `${area}-${i}`, area, concept: `${area}-${i % 12}`, lookAlikes: [] },
    ...{ unseen: i % 4 === 0, next: i % 10 === 1, healthy: i % 8 === 2 },
  })),
);

test('the shares of the blueprint are a hundred, and of fifty questions each is a whole number', () => {
  // The proposal, in percent: 12, 14, 12, 14, 16, 16, 10, 6. Half of each by hand.
  expect(Object.values(shares).reduce((sum, share) => sum + share, 0)).toBe(100);
  const enough = Object.fromEntries(areas.map((area) => [area, 40])) as Record<Area, number>;
  expect([...seatsFrom(enough, REHEARSAL_SIZE).values()]).toEqual([6, 7, 6, 7, 8, 8, 5, 3]);
  // A third, a tenth and an eighth of fifty: 16.7, 5 and 6.25.
  expect(traitNames.map((trait) => wanted(trait, REHEARSAL_SIZE))).toEqual([17, 5, 6]);
});

test('ideas that are not in it yet come before a second question of one', () => {
  const items = ['a', 'a', 'a', 'a', 'b', 'c', 'd'].map((concept, i) => ({
    ...{ id: `q${i}`, area: 'fluid' as const, concept, lookAlikes: [] },
    ...{ unseen: false, next: false, healthy: false },
  }));
  fc.assert(
    fc.property(seeds, (seed) => {
      const drawn = drawRehearsal(items, seed, new Map(), 4);
      expect(new Set(drawn.map(({ concept }) => concept)).size).toBe(4);
    }),
  );
});

test('an area that has too few gives what it has, and the others the rest', () => {
  const few = Object.fromEntries(areas.map((area) => [area, area === 'tests' ? 1 : 40])) as Record<
    Area,
    number
  >;
  const seats = seatsFrom(few, REHEARSAL_SIZE);
  expect(seats.get('tests')).toBe(1);
  expect([...seats.values()].reduce((sum, one) => sum + one, 0)).toBe(REHEARSAL_SIZE);
});

test('a bank with enough of everything is drawn to the letter of the blueprint, by any seed', () => {
  fc.assert(
    fc.property(seeds, (seed) => {
      const drawn = drawRehearsal(plenty, seed);
      expect(areas.map((area) => drawn.filter((item) => item.area === area).length)).toEqual([
        6, 7, 6, 7, 8, 8, 5, 3,
      ]);
      expect(traitsOf(drawn)).toEqual({ unseen: 17, next: 5, healthy: 6 });
    }),
    { numRuns: 50 },
  );
});

describe('any bank and any seed', () => {
  test('give no question twice, and as many as there are up to the size', () => {
    fc.assert(
      fc.property(banks, seeds, (bank, seed) => {
        const drawn = drawRehearsal(bank, seed);
        expect(new Set(ids(drawn)).size).toBe(drawn.length);
        expect(drawn).toHaveLength(Math.min(bank.length, REHEARSAL_SIZE));
      }),
    );
  });

  test('meet each area within half a question where the bank has enough, and the same seed draws the same', () => {
    fc.assert(
      fc.property(banks, seeds, (bank, seed) => {
        const inBank = (area: Area): number => bank.filter((item) => item.area === area).length;
        const enough = areas.every((area) => inBank(area) >= shares[area] / 2);
        const drawn = drawRehearsal(bank, seed);
        expect(ids(drawRehearsal(bank, seed))).toEqual(ids(drawn));
        if (!enough) return;
        for (const area of areas) {
          const count = drawn.filter((item) => item.area === area).length;
          expect(Math.abs(count - (shares[area] * REHEARSAL_SIZE) / 100)).toBeLessThanOrEqual(0.5);
        }
      }),
    );
  });

  test('take no healthy car and nothing on what comes next that the bank has not', () => {
    fc.assert(
      fc.property(banks, seeds, (bank, seed) => {
        const bare = bank.map(({ id, area, concept, lookAlikes }) => ({
          ...{ id, area, concept, lookAlikes },
        }));
        expect(traitsOf(drawRehearsal(bare, seed))).toEqual({ unseen: 0, next: 0, healthy: 0 });
      }),
      { numRuns: 20 },
    );
  });
});

describe('rehearsal after rehearsal', () => {
  /** What a device remembers: how many rehearsals ago each question was asked. */
  function rehearse(bank: readonly Drawable[], times: number, seed: number) {
    const all: (readonly Drawable[])[] = [];
    for (let i = 0; i < times; i += 1) {
      const lately = new Map<string, number>();
      for (const [before, drawn] of [...all].reverse().entries()) {
        for (const { id } of drawn) if (!lately.has(id)) lately.set(id, before + 1);
      }
      all.push(drawRehearsal(bank, seed + i, lately));
    }
    return all;
  }

  test('takes other questions while there are any of the kind', () => {
    fc.assert(
      fc.property(seeds, (seed) => {
        const asked = rehearse(plenty, 4, seed).flatMap(ids);
        expect(new Set(asked).size).toBe(asked.length);
      }),
      { numRuns: 10 },
    );
  });

  test('takes those rehearsed longest ago where none is new', () => {
    // Exactly two rehearsals' worth, without kinds: the third has to be the first again.
    const bank = areas.flatMap((area) =>
      Array.from({ length: shares[area] }, (_, i) => ({
        ...{ id: `${area}-${i}`, area, concept: `${area}-${i}`, lookAlikes: [] },
      })),
    );
    const [first, second, third] = rehearse(bank, 3, 7).map((drawn) => [...ids(drawn)].sort());
    expect(third).toEqual(first);
    expect(third).not.toEqual(second);
  });
});

test('the kind that is rarest in the bank is seen to first', () => {
  // One seat in the area of the only healthy car. Were unseen settings seen to first, one of them would sit there.
  const area: Area = 'proof';
  const bank: Drawable[] = [
    ...Array.from({ length: 9 }, (_, i) => ({
      ...{ id: `unseen-${i}`, area, concept: `u${i}`, lookAlikes: [], unseen: true },
    })),
    { id: 'healthy', area, concept: 'h', lookAlikes: [], healthy: true },
  ];
  for (let seed = 0; seed < 20; seed += 1)
    expect(ids(drawRehearsal(bank, seed, new Map(), 4))).toContain('healthy');
  for (let seed = 0; seed < 20; seed += 1)
    // A share of an eighth of four is one half, which rounds up to one: with a single seat it is that one.
    expect(ids(drawRehearsal(bank, seed, new Map(), 1))).toHaveLength(1);
});
