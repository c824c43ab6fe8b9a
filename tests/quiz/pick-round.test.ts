import fc from 'fast-check';
import { expect, test } from 'vitest';
import { pickRound, ROUND_SIZE } from '../../src/quiz/pick-round.ts';
import { seededRandom } from '../../src/quiz/seeded-order.ts';
import { ask, number, single } from './sample.ts';

const bank = Array.from({ length: 12 }, (_, i) =>
  ask({
    ...(i % 4 === 3 ? number : single),
    id: `q-${i}`,
    objectives: [`a-${(i % 4) + 1}`],
    unseen: i === 3 || i === 8,
  }),
);

test('a round is short, has no question twice, touches every objective and a new setting, whatever the seed', () => {
  fc.assert(
    fc.property(fc.integer(), (seed) => {
      const round = pickRound(bank, seededRandom(seed));
      expect(round).toHaveLength(ROUND_SIZE);
      expect(new Set(round.map((q) => q.id)).size).toBe(ROUND_SIZE);
      expect(new Set(round.flatMap((q) => q.objectives)).size).toBe(4);
      expect(round.some((q) => q.unseen)).toBe(true);
    }),
  );
});

test('the next round asks what the first left out, but for what an objective needs', () => {
  const first = pickRound(bank, seededRandom(1));
  const second = pickRound(bank, seededRandom(2), new Set(first.map((q) => q.id)));
  // Six and six of twelve: one repeat is the price of touching every objective again.
  expect(new Set([...first, ...second].map((q) => q.id)).size).toBeGreaterThanOrEqual(11);
});

test('a question that shares one of its objectives is taken for the other', () => {
  const common = ask({ ...single, id: 'q-both', objectives: ['a-1', 'a-2'], unseen: false });
  const rest = Array.from({ length: 9 }, (_, i) =>
    ask({ ...single, id: `q-one-${i}`, objectives: ['a-1'], unseen: i === 0 }),
  );
  fc.assert(
    fc.property(fc.integer(), (seed) => {
      expect(pickRound([...rest, common], seededRandom(seed), new Set(), 2)).toContain(common);
    }),
  );
});

test('a small bank is asked whole', () => {
  expect(pickRound(bank.slice(0, 3), seededRandom(1))).toHaveLength(3);
});
