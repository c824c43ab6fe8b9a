import { expect, test } from 'vitest';
import { movedBits, pathOf, rolesOf } from '../../src/cases/path.ts';
import { carOfCase } from '../../src/cases/play.ts';
import { readingsOf, type Step } from '../../src/cases/visit.ts';
import { writtenCases } from '../../src/cases/written.ts';
import {
  decodeTable,
  hypothesesOf,
  NAMES,
  plannerOf,
  stepsOf,
  testOf,
  wayOf,
  type ByName,
} from '../../src/diagnosis/index.ts';
import { keptTable } from '../../src/diagnosis/kept-table.ts';
import { training } from '../../src/engine/index.ts';

const table = decodeTable(keptTable);
const ask = plannerOf(table);
const given = writtenCases().find(({ id }) => id === 'fine-cold-revs-hot');
if (given === undefined) throw new Error('The case is gone.');
const read = carOfCase(training, given.id, given);

test('how far a list moved is the relative entropy: a half to a certainty is one bit', () => {
  // Cover and Thomas, Elements of Information Theory, eq. 2.26 (from memory): D(p||q) = sum p log2(p/q).
  const list = (a: number, b: number): ByName => ({
    ...(Object.fromEntries(NAMES.map((name) => [name, 0])) as unknown as ByName),
    transferSeal: a,
    pumpWear: b,
  });
  expect(movedBits(list(0.5, 0.5), list(1, 0))).toBeCloseTo(1, 12);
  expect(movedBits(list(0.5, 0.5), list(0.5, 0.5))).toBe(0);
  expect(movedBits(list(0.5, 0.5), list(0.75, 0.25))).toBeCloseTo(
    0.75 * Math.log2(1.5) + 0.25 * Math.log2(0.5),
    12,
  );
});

test('a way is told step by step, and ends where all its readings together lead', () => {
  const steps: readonly Step[] = [
    { kind: 'ask', what: 'ranges' },
    { kind: 'test', what: 'clutch.forward.700.hot' },
    { kind: 'look', what: 'idle' },
    { kind: 'test', what: 'clutch.reverse.700.hot' },
  ];
  const direct = ask({
    readings: ['clutch.forward.700.hot', 'clutch.reverse.700.hot'].map((id) => read(testOf(id))),
    state: { temperature: 'hot', fitted: [], coldMorning: false },
    priors: {},
  });
  const lists = stepsOf(direct.posterior, readingsOf(steps, read));
  const stages = pathOf(lists, steps, false);
  expect(stages.map(({ told }) => told !== undefined)).toEqual([false, true, false, true]);
  expect(stages.map(({ minutes }) => minutes)).toEqual([10, 34, 3, 14]);
  const moved = stages[3]?.moves?.[0];
  expect(stages[3]?.moves).toHaveLength(1);
  expect(moved?.after).toBe(direct.faults.find(({ fault }) => fault === moved?.fault)?.probability);
  const last = lists.at(-1);
  for (const { fault, probability } of direct.faults) expect(last?.[fault]).toBe(probability);
});

test('the planner finds the seal of this car, in less time than reading everything', () => {
  const way = [...wayOf(hypothesesOf(table), read)];
  const [top] = way.at(-1)?.faults ?? [];
  expect(top?.fault).toBe('transferSeal');
  expect(top?.probability).toBeGreaterThanOrEqual(0.9);
  expect(way.reduce((sum, { last }) => sum + (last?.minutes ?? 0), 0)).toBeLessThan(120);
});

test('each reading tells what it did to the answer and to the real cause, by the planner’s own steps', () => {
  const steps: readonly Step[] = [
    { kind: 'test', what: 'line.drive.700.hot' },
    { kind: 'test', what: 'clutch.forward.700.hot' },
  ];
  const readings = readingsOf(steps, read);
  const { posterior } = ask({
    readings,
    state: { temperature: 'hot', fitted: [], coldMorning: false },
    priors: {},
  });
  const lists = stepsOf(posterior, readings);
  const roles = rolesOf([{ cause: 'hardLip', circuit: 'forward' }], [{ cause: 'transferSeal' }]);
  expect([...roles]).toEqual([
    ['hardLip', 'yours'],
    ['transferSeal', 'real'],
  ]);
  const stages = pathOf(lists, steps, false, [...roles.keys()]);
  for (const [place, { moves = [] }] of stages.entries()) {
    const [yours, real, most] = moves;
    expect(yours).toEqual({
      fault: 'hardLip',
      before: lists[place]?.hardLip,
      after: lists[place + 1]?.hardLip,
    });
    expect(real).toEqual({
      fault: 'transferSeal',
      before: lists[place]?.transferSeal,
      after: lists[place + 1]?.transferSeal,
    });
    // A third line only for another name, which has moved furthest of all.
    const furthest = (one: (typeof moves)[number]): number => Math.abs(one.after - one.before);
    if (most)
      for (const one of [yours, real])
        expect(furthest(most)).toBeGreaterThan(one ? furthest(one) : 1);
  }
});

test('one name for an answer that is the real cause; causes outside the list share its last line', () => {
  expect([...rolesOf([{ cause: 'transferSeal' }], [{ cause: 'transferSeal' }])]).toEqual([
    ['transferSeal', 'both'],
  ]);
  expect([...rolesOf([{ cause: 'coolerBlocked' }], [{ cause: 'drainBack' }])]).toEqual([
    ['unlisted', 'both'],
  ]);
  expect([...rolesOf([{ cause: 'healthy' }], [{ cause: 'drainBack' }])]).toEqual([
    ['healthy', 'yours'],
    ['unlisted', 'real'],
  ]);
});
