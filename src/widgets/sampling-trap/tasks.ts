import { PLUG, SHUDDER } from '../../car/live-cars.ts';
import { chanceSeen, readingsEach, seenAs } from '../../car/sampling.ts';
import { listOf as inWords } from '../../quantity/lists.ts';
import { printer } from '../../quantity/print.ts';
import { count, percent, seconds } from '../../quantity/quantities.ts';
import { aim, judged } from '../../simulation/judged.ts';
import type { TaskSpec } from '../../simulation/sim-spec.ts';
import { told } from '../../simulation/told.ts';
import { ALL, ITEMS, listOf, type Item, type TrapGivens, type TrapModel } from './model.ts';
import { printRate } from './sim.ts';
import { words as names } from './words.en.ts';
import { words } from './task-words.en.ts';

/** What a stop time takes. */
const NEEDED: readonly Item[] = ['range', 'turbine', 'temperature'];
const LINE = 60;
/** An event of 0.6 s needs a point every 0.1 s (common practice, no source) [1/s]. */
const ENOUGH = 10;
/** Quotients miss a whole number by this much. */
const BIT = 1e-6;
const three = { ...listOf(...NEEDED), line: 30, late: 50, truth: false } as const;
const { reached } = words;

const sure = 1 / PLUG.lasts;
/** A line at which the shudder looks slow, with three items on it. */
const SLOW = readingsEach(40, NEEDED.length);
const texts = told(words.tasks, (system) => {
  const print = printer(system);
  return {
    swings: printRate(SHUDDER.swings),
    slow: printRate(SLOW),
    seen: printRate(seenAs(SHUDDER.swings, SLOW)),
    lasts: print(PLUG.lasts, seconds),
    rate: printRate(sure),
    chance: print(100 * chanceSeen(PLUG.lasts, sure / 2), percent),
    most: print(LINE / ENOUGH, count),
    // Both ends can be off by a row.
    all: print(2 / readingsEach(LINE, ITEMS.length), seconds),
  };
});

export const tasks: readonly TaskSpec<TrapGivens, TrapModel>[] = [
  {
    id: 'smooth',
    ...texts.smooth,
    start: { ...three, car: 'shudder' },
    controls: ['line', 'late', 'truth'],
    ...judged(({ rate }) => {
      const each = rate.value;
      const [seen, printed] = [seenAs(SHUDDER.swings, each), printRate(each)];
      if (Math.abs(each - 2 * SHUDDER.swings) < BIT)
        return { is: 'nearly', reached: reached.edge({ rate: printed }) };
      return {
        is: each > 2 * SHUDDER.swings ? 'done' : 'too-low',
        reached:
          seen < 0.5
            ? reached.flat({ rate: printed })
            : reached.swings({ rate: printed, seen: printRate(seen) }),
      };
    }),
  },
  {
    id: 'plug',
    ...texts.plug,
    start: { ...three, car: 'plug' },
    controls: ['line', 'late', 'truth'],
    ...judged(({ rate }) => {
      const each = rate.value;
      const share = 100 * chanceSeen(PLUG.lasts, each + BIT);
      return {
        is: aim({ value: each, least: sure - BIT, most: sure + BIT, near: 3.4 }),
        reached: (s) =>
          each > sure + BIT
            ? reached.more({ rate: printRate(each) })
            : reached.seen({ rate: printRate(each), share: printer(s)(share, percent) }),
      };
    }),
  },
  {
    id: 'list',
    ...texts.list,
    start: { ...ALL, line: LINE, car: 'friction', late: 50, truth: false },
    controls: ITEMS,
    ...judged(({ on, rate }) => {
      const missing = NEEDED.filter((item) => !on.value.includes(item));
      if (missing.length > 0)
        return {
          is: 'not-that',
          reached: reached.missing({ items: inWords(missing.map((item) => names.items[item])) }),
        };
      return {
        is: aim({ value: rate.value, least: ENOUGH - BIT, near: 2 }),
        reached: (s) => reached.slow({ every: printer(s)(1 / rate.value, seconds) }),
      };
    }),
  },
];
