import { expect, test } from 'vitest';
import { movedBits, pathOf, plannersWay } from '../../src/cases/path.ts';
import { carOfCase } from '../../src/cases/play.ts';
import { writtenCases } from '../../src/cases/written.ts';
import { decodeTable, plannerOf, testOf } from '../../src/diagnosis/index.ts';
import { keptTable } from '../../src/diagnosis/kept-table.ts';
import { training } from '../../src/engine/index.ts';

const ask = plannerOf(decodeTable(keptTable));
const given = writtenCases().find(({ id }) => id === 'fine-cold-revs-hot');
if (given === undefined) throw new Error('The case is gone.');
const read = carOfCase(training, given.id, given);

function end<Result>(steps: Generator<void, Result>): Result {
  for (;;) {
    const step = steps.next();
    if (step.done === true) return step.value;
  }
}

test('how far a list moved is the relative entropy: a half to a certainty is one bit', () => {
  // Cover and Thomas, Elements of Information Theory, eq. 2.26 (from memory): D(p||q) = sum p log2(p/q).
  const list = (a: number, b: number) => [
    { fault: 'transferSeal' as const, probability: a },
    { fault: 'pumpWear' as const, probability: b },
  ];
  expect(movedBits(list(0.5, 0.5), list(1, 0))).toBeCloseTo(1, 12);
  expect(movedBits(list(0.5, 0.5), list(0.5, 0.5))).toBe(0);
  expect(movedBits(list(0.5, 0.5), list(0.75, 0.25))).toBeCloseTo(
    0.75 * Math.log2(1.5) + 0.25 * Math.log2(0.5),
    12,
  );
});

test('a way is told step by step, and ends where all its readings together lead', () => {
  const { stages, end: last } = end(
    pathOf(
      ask,
      [
        { kind: 'ask', what: 'ranges' },
        { kind: 'test', what: 'clutch.forward.700.hot' },
        { kind: 'look', what: 'idle' },
        { kind: 'test', what: 'clutch.reverse.700.hot' },
      ],
      read,
      { coldMorning: false, testOf },
    ),
  );
  expect(stages.map(({ told }) => told !== undefined)).toEqual([false, true, false, true]);
  expect(stages.map(({ minutes }) => minutes)).toEqual([10, 34, 3, 14]);
  const { moved } = stages[3] ?? {};
  expect(moved?.after).toBe(last.faults.find(({ fault }) => fault === moved?.fault)?.probability);
  const direct = ask({
    readings: ['clutch.forward.700.hot', 'clutch.reverse.700.hot'].map((id) => read(testOf(id))),
    state: { temperature: 'hot', fitted: [], coldMorning: false },
    priors: {},
  });
  expect(last.faults).toEqual(direct.faults);
});

test('the planner finds the seal of this car, in less time than reading everything', () => {
  const way = end(plannersWay(ask, read, false));
  expect(way.at(-1)?.top.fault).toBe('transferSeal');
  expect(way.at(-1)?.top.probability).toBeGreaterThanOrEqual(0.9);
  expect(way.reduce((sum, { minutes }) => sum + minutes, 0)).toBeLessThan(120);
});
