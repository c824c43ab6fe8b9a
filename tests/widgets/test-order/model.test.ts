/**
 * What the tests of the bay are worth, against a second planner in Python that shares no code with src (tests/truth/bay.py,
 * frozen in bay.json), and the sum itself against C. E. Shannon, A Mathematical Theory of Communication, Bell System Technical
 * Journal 27 (1948): its sections from memory, each of its sums short enough to be done by hand.
 */
import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import {
  bestOf,
  bringSuspects,
  canSay,
  LEAST,
  ranked,
  readingsOn,
  SURE,
} from '../../../src/cases/bay-list.ts';
import { BAY_TESTS, BEFORE_OPENING, reachOf, type BayKey } from '../../../src/cases/bay-tests.ts';
import { BAY_CARS } from '../../../src/cases/bay-cars.ts';
import { solveBay } from '../../../src/cases/solve-bay.ts';
import { asGoodAs, entropy, tells } from '../../../src/cases/talk-list.ts';
import { SURE as PLANNER_SURE } from '../../../src/diagnosis/findings.ts';
import { NAMES, type Name } from '../../../src/diagnosis/hypotheses.ts';
import { LEAST_BITS } from '../../../src/diagnosis/next-test.ts';
import { commandsAt, training } from '../../../src/engine/index.ts';
import { makeModel, orderOf } from '../../../src/widgets/test-order/model.ts';
import { sim } from '../../../src/widgets/test-order/sim.ts';
import { tasks } from '../../../src/widgets/test-order/tasks.ts';
import { words } from '../../../src/widgets/test-order/words.en.ts';
import { begun } from '../../simulation/task-of.ts';

bringSuspects(solveBay());

interface Way {
  readonly car: number;
  readonly taken: readonly BayKey[];
  readonly minutes: number;
  readonly names: Readonly<Record<Name, number>>;
  readonly next: Readonly<Record<string, readonly [bits: number, minutes: number]>>;
}
const truth = JSON.parse(
  readFileSync(new URL('../../truth/bay.json', import.meta.url), 'utf8'),
) as { readonly said: readonly (readonly number[])[]; readonly ways: readonly Way[] };

const modelOf = (car: number, ...taken: readonly BayKey[]) => {
  const model = makeModel();
  model.apply({ ...orderOf(...taken), car: String(car) });
  return model;
};

describe('the sum, against what Shannon prints', () => {
  // Section 6, figure 6: H(1/2, 1/3, 1/6) = H(1/2, 1/2) + 1/2 H(2/3, 1/3).
  test('a choice broken into two', () => {
    expect(entropy([1 / 2, 1 / 3, 1 / 6])).toBeCloseTo(
      entropy([1 / 2, 1 / 2]) + 0.5 * entropy([2 / 3, 1 / 3]),
      12,
    );
  });
  // Section 10: letters of chance 1/2, 1/4, 1/8, 1/8 have 7/4 bits.
  test('four letters', () => {
    expect(entropy([1 / 2, 1 / 4, 1 / 8, 1 / 8])).toBeCloseTo(7 / 4, 12);
  });
  // Section 12: two even symbols, one in a hundred received wrongly. "Equivocation" 0.081 bits, so 0.919 come through.
  test('a channel that errs once in a hundred', () => {
    const through = tells(
      [0.5, 0.5],
      [
        [0.99, 0.01],
        [0.01, 0.99],
      ],
      (shares) => shares,
    );
    expect(through).toBeCloseTo(0.919, 3);
  });
  // The same section: where half come wrongly, nothing is told, though what comes is as open as can be.
  test('a channel that errs half of the time', () => {
    const both = [0.5, 0.5];
    expect(tells(both, [both, both], (shares) => shares)).toBeCloseTo(0, 12);
  });
});

test('the numbered cars read what the second planner reads on them', () => {
  expect(BAY_CARS.map((_car, i) => readingsOn(i))).toEqual(truth.said);
});

/**
 * Chances are handed over in thousandths, of which a list of fifteen readings multiplies fifteen: a share moves by some
 * hundredths at most, bits by less than three hundredths. Predictions of the two planners differ by less.
 */
const SHARE = 0.02;
const BITS = 0.02;
describe.each(truth.ways)('car $car after $taken', ({ car, taken, minutes, names, next }) => {
  const { job, list } = modelOf(car, ...taken);
  test('its minutes', () => {
    expect(job.value.minutes).toBe(minutes);
  });
  test('its list', () => {
    NAMES.forEach((name, i) => {
      expect(Math.abs((list.value[i] ?? 0) - names[name]), name).toBeLessThan(SHARE);
    });
  });
  test('what each test is worth, and takes', () => {
    const all = ranked(job.value);
    expect(all.map(({ one }) => one.key).sort()).toEqual(Object.keys(next).sort());
    for (const { one, worth, minutes: takes } of all) {
      const [bits = Number.NaN, expected] = next[one.key] ?? [];
      expect(takes, one.key).toBe(expected);
      expect(Math.abs(worth - bits), one.key).toBeLessThan(BITS);
    }
  });
});

test('it stops where the planner does', () => {
  expect([LEAST, SURE]).toEqual([LEAST_BITS, PLANNER_SURE]);
});

test('the gauge is judged by what the training transmission commands at idle', () => {
  const { line, clutch } = commandsAt(training, 'idle', 'forward');
  const cutsOf = (key: BayKey) => {
    const found = BAY_TESTS.find((one) => one.key === key);
    return found && 'cuts' in found ? found.cuts : [];
  };
  // Half, and 85 %, as the page says.
  expect(cutsOf('line')).toEqual([0.5, 0.85].map((part) => (part * line) / 1e3));
  expect(cutsOf('tap')).toEqual([0.5, 0.85].map((part) => (part * clutch) / 1e3));
});

test('there are words for all that a test can say', () => {
  const { job } = makeModel();
  for (const one of BAY_TESTS) {
    expect(canSay(job.value.shares, one).length, one.key).toBe(words.readings[one.key].length);
  }
});

describe('what the lesson says of it', () => {
  const start = modelOf(1, 'codes', 'turbine', 'level', 'cable');
  const worthIn = (model: ReturnType<typeof modelOf>, key: BayKey) =>
    ranked(model.job.value).find(({ one }) => one.key === key)?.worth ?? Number.NaN;

  test('the dearest test tells most and the cheapest is worth most for its minutes', () => {
    const all = ranked(start.job.value);
    expect(all[0]?.one.key).toBe('cold');
    for (const key of ['tap', 'cold'] as const)
      expect(worthIn(start, 'seal')).toBeGreaterThan(worthIn(start, key));
    // "Nearly as much."
    expect(worthIn(start, 'cold')).toBeGreaterThan(0.9 * worthIn(start, 'tap'));
  });
  test('the run names the cold stop time, and the suspect is no longer in front', () => {
    const model = makeModel();
    model.apply(sim.predict.start);
    const before = NAMES.indexOf('transferSeal');
    expect(model.list.value[before]).toBe(Math.max(...model.list.value));
    model.apply(sim.predict.end);
    expect(sim.predict.outcome(model).option).toBe('cold');
    const ahead = NAMES.filter(
      (_n, i) => (model.list.value[i] ?? 0) > (model.list.value[before] ?? 0),
    );
    expect([...ahead].sort()).toEqual(['pumpWear', 'regulatorBore']);
  });
  test('two tests that share a warm-up name the seal with the pan on', () => {
    const model = modelOf(1, 'codes', 'turbine', 'level', 'cable', 'cold', 'hotReverse', 'line');
    expect(model.list.value[NAMES.indexOf('transferSeal')]).toBeGreaterThan(SURE);
    expect(model.reach.value).toBe('line');
  });
  test('a test whose answer is known is worth nothing', () => {
    const taken = ['codes', 'turbine', 'level', 'cable', 'cold', 'hotReverse', 'hotDrive'] as const;
    const model = modelOf(1, ...taken);
    for (const key of ['current', 'air'] as const)
      expect(worthIn(model, key), key).toBeLessThan(LEAST);
  });
  test('a worn bore beside a worn pump: nothing outside parts them, and the pan comes off', () => {
    const outside = BAY_TESTS.filter((one) => ['seat', 'outside', 'line'].includes(reachOf(one)));
    const model = modelOf(3, ...outside.map(({ key }) => key));
    expect(asGoodAs(model.list.value)).toBeLessThan(2.2);
    expect(model.best.value?.one.key).toBe('pan');
  });
});

test('nothing is opened as the best before what comes first', () => {
  const model = modelOf(3, 'codes', 'turbine', 'cold', 'look', 'current', 'line', 'hotReverse');
  expect(bestOf(model.job.value)?.one.key).toBe('hotDrive');
  const next = modelOf(3, ...model.taken.value.map(({ key }) => key), 'hotDrive');
  expect(BEFORE_OPENING).toContain(bestOf(next.job.value)?.one.key);
  expect(sim.says(modelOf(3, 'codes', 'pan'), 'us')).toMatch(/pan came off before/u);
});

test('readings that fit nothing accuse no part', () => {
  const model = modelOf(7, 'cold', 'codes', 'hotDrive', 'hotReverse', 'tap');
  expect(sim.says(model, 'us')).toMatch(/not in this list/u);
});

test('a place in the order is given and taken back', () => {
  const model = modelOf(1, 'codes', 'level');
  model.toggle('cold');
  model.toggle('codes');
  model.toggle('codes');
  expect(model.taken.value.map(({ key }) => key)).toEqual(['level', 'cold', 'codes']);
});

test('the tasks tell the pan, a second test, and a car that is not opened', () => {
  const { task: name, model } = begun(tasks, makeModel, 'one-name-in-time');
  model.toggle('seal');
  expect(name.verdict?.(model)?.is).toBe('not-that');
  model.toggle('seal');
  model.toggle('hotReverse');
  expect(name.verdict?.(model)?.is).toBe('not-that');
  model.toggle('line');
  expect(name.done(model)).toBe(true);
  const { task: nothing, model: other } = begun(tasks, makeModel, 'tells-nothing');
  other.toggle('line');
  expect(nothing.verdict?.(other)?.is).toBe('not-that');
  other.toggle('current');
  expect(nothing.verdict?.(other)?.is).toBe('too-high');
  other.toggle('line');
  expect(nothing.done(other)).toBe(true);
  const { task: open, model: third } = begun(tasks, makeModel, 'opening-is-right');
  third.toggle('pan');
  const verdicts = BAY_CARS.map((_car, i) => {
    third.apply({ car: String(i + 1) });
    return open.verdict?.(third)?.is;
  });
  const not = 'not-that';
  expect(verdicts).toEqual([not, not, 'done', not, not, not, not, 'nearly', not, not]);
});
