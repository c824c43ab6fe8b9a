import { expect, test } from 'vitest';
import {
  decodeTable,
  findingsOf,
  hypothesesOf,
  ifItRead,
  NAMES,
  outcomesFor,
  stepsOf,
  testOf,
  walkOf,
  weigh,
  type TakenReading,
} from '../../src/diagnosis/index.ts';
import { keptTable } from '../../src/diagnosis/kept-table.ts';

const hypotheses = hypothesesOf(decodeTable(keptTable));
const read = (id: string, value: TakenReading['value']): TakenReading => ({
  test: testOf(id),
  value,
});
const readings = [
  read('stopTime.drive.hot', 1.4),
  read('fluidLevel', 'full'),
  read('clutch.forward.700.hot', 220),
];

test('the steps begin with the prior, sum to 1, and end where the whole sheet is weighed', () => {
  const steps = stepsOf(weigh(hypotheses, readings), readings);
  expect(steps).toHaveLength(4);
  for (const step of steps)
    expect(NAMES.reduce((sum, name) => sum + step[name], 0)).toBeCloseTo(1, 9);
  // Seventeen names, the last of double weight: the specification's prior.
  expect(steps[0]?.healthy).toBeCloseTo(1 / 18, 9);
  expect(steps[0]?.unlisted).toBeCloseTo(2 / 18, 9);
  for (const { fault, probability } of findingsOf(weigh(hypotheses, readings)))
    expect(steps[3]?.[fault]).toBeCloseTo(probability, 9);
});

test('what a next reading would do is what it does', () => {
  const next = read('clutch.reverse.700.hot', 230);
  const then = ifItRead(weigh(hypotheses, readings), next);
  for (const { fault, probability } of findingsOf(weigh(hypotheses, [...readings, next])))
    expect(then[fault]).toBeCloseTo(probability, 9);
});

test('what a result rules out is under one in a hundred once it is read', () => {
  const posterior = weigh(hypotheses, readings);
  const outcomes = outcomesFor(posterior, testOf('clutch.reverse.700.hot'));
  expect(outcomes.length).toBeGreaterThan(0);
  for (const { reading, out } of outcomes) {
    const after = findingsOf(weigh(hypotheses, [...readings, reading]));
    for (const name of out)
      expect(after.find(({ fault }) => fault === name)?.probability).toBeLessThan(0.01);
  }
});

test('a first test that is known already is asked first, and once', () => {
  const first = testOf('airTest.high');
  const walk = walkOf(hypotheses, { first });
  const begins = walk.next();
  if (begins.done) throw new Error('It did not begin.');
  expect(begins.value.wants).toBe(first);
  const then = walk.next({ test: first, value: 80 });
  if (then.done) throw new Error('It ended after one reading.');
  expect(then.value.wants).toBeDefined();
  expect(then.value.wants).not.toBe(first);
});
