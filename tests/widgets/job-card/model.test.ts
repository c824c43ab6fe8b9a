import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import {
  airAfter,
  driveAfter,
  missingBefore,
  skippedOf,
  STEPS,
  type Step,
} from '../../../src/car/back-together.ts';
import { cardOf, cardWithout, makeModel } from '../../../src/widgets/job-card/model.ts';
import { sim } from '../../../src/widgets/job-card/sim.ts';
import { tasks } from '../../../src/widgets/job-card/tasks.ts';
import { words } from '../../../src/widgets/job-card/words.en.ts';
import { textFor } from '../../../src/quantity/unit-system.ts';
import { begun } from '../../simulation/task-of.ts';

interface Tap {
  kPa: number;
  pulls: boolean;
}
type Drive = Record<'cold' | 'hot', Record<'forward' | 'reverse', Tap>>;
const truth = JSON.parse(
  readFileSync(new URL('../../truth/back.json', import.meta.url), 'utf8'),
) as {
  orders: number;
  cards: Record<string, Step[]>;
  reads: Record<string, Drive & { air: number }>;
};
const nameOf = (done: readonly Step[]): string => [...done].sort().join('+');
const pressAll = (...steps: readonly Step[]) => {
  const model = makeModel();
  model.apply({ ...cardOf([]), strict: true });
  for (const step of steps) model.press(step);
  return model;
};

// tests/truth/back.py enumerates all orders from a list of its own, written out near and far.
test('on every card that can come about, the same lines are free as in the enumeration', () => {
  const seen = new Set<string>();
  const visit = (done: readonly Step[]): void => {
    const name = nameOf(done);
    if (seen.has(name) || done.length === STEPS.length) return;
    seen.add(name);
    const free = STEPS.filter(
      (step) => !done.includes(step) && missingBefore(step, done) === undefined,
    );
    expect([...free].sort(), name).toEqual(truth.cards[name]);
    for (const step of free) visit([...done, step]);
  };
  visit([]);
  expect([...seen].sort()).toEqual(Object.keys(truth.cards).sort());
});

test('the task tells as many orders as the enumeration found', () => {
  expect(truth.orders).toBe(12);
  expect(textFor(tasks[0]?.after ?? '', 'si')).toContain(`lets ${truth.orders} orders through`);
});

// The same file, by the second model; a thousandth of a kPa, and a hundredth of a percent of air.
test('what the car reads with a line left out is what the second model reads', () => {
  for (const [name, { air, cold, hot }] of Object.entries(truth.reads)) {
    const skipped = name === 'none' ? [] : [name as Step];
    const read = driveAfter(skipped);
    for (const [when, taps] of Object.entries({ cold, hot }) as ['cold' | 'hot', Drive['cold']][])
      for (const circuit of ['forward', 'reverse'] as const) {
        const here = read[when][circuit];
        expect(Math.abs(here.kPa - taps[circuit].kPa), `${name} ${when}`).toBeLessThan(0.001);
        expect(here.pulls, `${name} ${when} ${circuit}`).toBe(taps[circuit].pulls);
      }
    expect(Math.abs(airAfter(skipped) - air), name).toBeLessThan(0.01);
  }
});

// By hand: 0.6 L on a pan of 500 cm² is 600 / 500 = 1.2 cm.
test('filled cold to MAX it stands 12 mm over the middle in its window, and no tap moves', () => {
  const { stickMm, ...taps } = driveAfter(['level']);
  expect(stickMm).toBeCloseTo(12, 9);
  const { stickMm: right, ...sound } = driveAfter([]);
  expect(right).toBeCloseTo(0, 9);
  expect(taps).toEqual(sound);
});

test('a line too early is refused with its reason, and nothing is signed', () => {
  const model = pressAll('clean', 'lip', 'rings', 'drums', 'body');
  expect(model.done.value).not.toContain('body');
  expect(model.answer.value).toMatchObject({ refused: 'body', missing: 'air' });
  expect(sim.says(model, 'us')).toContain(words.refuse.body.air);
  model.press('air');
  expect(model.answer.value).toBeNull();
});

test('every refusal that can come about has its sentence', () => {
  for (const card of Object.keys(truth.cards)) {
    const done = card === '' ? [] : (card.split('+') as Step[]);
    for (const step of STEPS) {
      const missing = missingBefore(step, done);
      if (done.includes(step) || missing === undefined) continue;
      const why: Partial<Record<Step, string>> = words.refuse[step];
      expect(why[missing], `${step} before ${missing}`).toMatch(/\.$/u);
    }
  }
});

test('a line taken back takes what hides it along, and on a card that lets it pass it alone', () => {
  const model = makeModel();
  model.apply({ ...cardWithout(), strict: true });
  model.press('drums');
  // Seen only with the drum out again: air, bridge, body and all that lies over the body. The balls stay.
  expect(nameOf(model.done.value)).toBe('balls+clean+lip+rings');
  expect(model.answer.value).toEqual(expect.objectContaining({ backTo: 'drums', lines: 9 }));
  model.apply({ ...cardWithout(), strict: false });
  model.press('drums');
  expect(model.skipped.value).toEqual(['drums']);
  expect(skippedOf(['clean'])).toEqual([]);
});

test('the run ends in "B and C", and the picture has nothing to read before the drive', () => {
  const model = makeModel();
  model.apply(sim.predict.start);
  expect(model.driven.value).toBeNull();
  model.apply(sim.predict.end);
  expect(sim.predict.outcome(model).option).toBe('two');
  expect(sim.says(model, 'us')).toMatch(/Bridge.*cold: pulls. Hot: slips/u);
});

test('the tasks take a lip or a ring, the level alone, and no card with something hidden', () => {
  const on = begun(tasks, makeModel, 'body-on');
  on.model.press('balls');
  on.model.press('body');
  expect(on.task.done(on.model)).toBe(false);
  for (const step of ['bridge', 'body'] as const) on.model.press(step);
  expect(on.task.verdict?.(on.model)?.is).toBe('nearly');
  on.model.press('pan');
  expect(on.task.done(on.model)).toBe(true);
  on.model.apply(cardOf(['clean', 'body', 'pan']));
  expect(on.task.verdict?.(on.model)?.is).toBe('not-that');

  const taken = (id: string) =>
    STEPS.filter((step) => {
      const { task, model } = begun(tasks, makeModel, id);
      model.press(step);
      return task.done(model);
    });
  expect(taken('drive-alone')).toEqual(['lip', 'rings']);
  expect(taken('no-gauge-shows')).toEqual(['level']);
});
