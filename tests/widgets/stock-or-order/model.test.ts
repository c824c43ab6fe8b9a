import { describe, expect, it } from 'vitest';
import { makeModel, type ShelfGivens } from '../../../src/widgets/stock-or-order/model.ts';
import { sim } from '../../../src/widgets/stock-or-order/sim.ts';
import { tasks } from '../../../src/widgets/stock-or-order/tasks.ts';
import shop from '../../truth/shop.json' with { type: 'json' };

const at = (...states: readonly Partial<ShelfGivens>[]) => {
  const model = makeModel();
  for (const state of states) model.apply(state);
  return model;
};
const done = (id: string, state: Partial<ShelfGivens>) => {
  const task = tasks.find((one) => one.id === id);
  if (!task) throw new Error(`no task ${id}`);
  return task.done(at(task.start, state));
};
const plain = (text: string) => text.replaceAll('\u00a0', ' ');

describe('the prediction', () => {
  const run = (state: Partial<ShelfGivens>) =>
    sim.predict.outcome(at(sim.predict.start, sim.predict.end, state)).option;

  // Cumulative Poisson table: mean 1 gives 0.3679, 0.7358, 0.9197; mean 0.5 gives 0.9098 for one or none.
  it('comes out at three, and could have come out each of the other ways', () => {
    expect(run({})).toBe('three');
    expect(run({ days: 7 })).toBe('two');
    expect(run({ days: 1 })).toBe('one');
    expect(run({ days: 28 })).toBe('more');
  });
  it('says what the table says', () => {
    const { words } = sim.predict.outcome(at(sim.predict.start, sim.predict.end));
    expect(words).toBe('One kept serves 37 cars in 100, two serve 74, and three serve 92.');
  });
});

describe('what is said, as the shelf was played', () => {
  it.each(shop.shelves.filter(({ keep }) => keep > 0))('$keep kept, $aYear a year', (asked) => {
    const { keep, aYear, days } = asked;
    const said = plain(sim.says(at({ keep, aYear, days, price: 100 }), 'si'));
    const [, , found, wait, lying, money] = Array.from(
      said.matchAll(/\d[\d,]*(?:\.\d+)?/gu),
      ([text]) => Number(text.replace(',', '')),
    );
    expect(Math.abs((found ?? 0) - 100 * asked.found)).toBeLessThan(1.2);
    expect(Math.abs((wait ?? 0) - aYear * (1 - asked.found))).toBeLessThan(0.35);
    expect(Math.abs((lying ?? 0) - asked.lying)).toBeLessThan(0.08);
    expect(Math.abs((money ?? 0) - 100 * asked.lying)).toBeLessThan(3);
  });
  it('with none kept everybody waits', () => {
    expect(plain(sim.says(at({ keep: 0 }), 'si'))).toMatch(
      /all 26 cars a year wait, 14 days each/u,
    );
  });
});

// By the cumulative Poisson table: mean 2 needs five (0.9473; four give 0.8571).
describe('the tasks, by the table', () => {
  it('twice the use takes five', () => {
    expect([3, 4, 5, 6].map((keep) => done('twice-the-use', { keep }))).toEqual([
      false,
      false,
      true,
      false,
    ]);
  });
  // P(X <= 1) falls through 0.9 at mean 0.532: 26 a year make that 7.5 days.
  it('two kept take seven days', () => {
    expect([6, 7, 8].map((days) => done('nearer-by', { days }))).toEqual([false, true, false]);
  });
  // Mean 0.077: none used with chance 0.926.
  it('a pack that goes twice a year takes one', () => {
    expect([0, 1, 2].map((keep) => done('slow-pack', { keep }))).toEqual([false, true, false]);
  });
});
