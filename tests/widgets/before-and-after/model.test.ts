import { expect, test } from 'vitest';
import {
  compare,
  doubtOf,
  errorAt,
  rowsDoubt,
  type Taken,
} from '../../../src/diagnosis/before-after.ts';
import { numbers } from '../../../src/numbers/index.ts';
import {
  HAS,
  makeModel,
  pairAt,
  take,
  testBehind,
} from '../../../src/widgets/before-and-after/model.ts';
import { bringReadings, readingAt } from '../../../src/widgets/before-and-after/brought.ts';
import { solveReadings } from '../../../src/widgets/before-and-after/solve-readings.ts';
import { readingOf } from '../../../src/car/readings.ts';
import { repaired } from '../../../src/car/repairs.ts';
import { standsAfter } from '../../../src/car/stands-after.ts';
import { sim } from '../../../src/widgets/before-and-after/sim.ts';
import { tasks } from '../../../src/widgets/before-and-after/tasks.ts';
import type { Repair } from '../../../src/car/repair-names.ts';
import { begun } from '../../simulation/task-of.ts';
import truth from '../../truth/proof.json' with { type: 'json' };

bringReadings(solveReadings());

// tests/truth/proof.py: the second model and SciPy, from the model paper alone. The page keeps hundredths of a kPa.
test('what the four cars read is what the second model reads', () => {
  expect(truth.cars).toHaveLength(16);
  for (const { car, temp, tap, line, tapFast, stop } of truth.cars) {
    const of = (name: 'tap' | 'line' | 'stop', point: 'idle' | 'load' = 'idle') =>
      take(car as Repair, name, temp, point).value;
    expect(of('tap'), `${car} ${temp}`).toBeCloseTo(tap, 1);
    expect(of('line'), `${car} ${temp}`).toBeCloseTo(line, 1);
    expect(of('tap', 'load'), `${car} ${temp}`).toBeCloseTo(tapFast, 1);
    // A stop is 50 rpm there and rest here, and an event may lie 20 ms off.
    if (stop === null) expect(of('stop'), `${car} ${temp}`).toBeNull();
    else expect(Math.abs((of('stop') ?? NaN) - stop), `${car} ${temp}`).toBeLessThan(0.02);
  }
});

test('between two degrees a reading is what the engine has there', () => {
  for (const [repair, tempC] of [
    ['half', 93.2],
    ['half', 86.4],
    ['rings', 108.9],
    ['untouched', 83.8],
    ['sound', 11.1],
  ] as const) {
    const stop = readingAt(repair, 'stop', 'idle', tempC);
    expect(stop, repair).toBeCloseTo(standsAfter(repair, tempC) ?? NaN, 2);
    const real = readingOf(repaired(repair), { tempC }).clutches.forward.kPa;
    expect(Math.abs((readingAt(repair, 'tap', 'idle', tempC) ?? NaN) - real)).toBeLessThan(0.7);
  }
  expect(readingAt('untouched', 'stop', 'idle', 89.5)).toBeNull();
  expect(readingAt('sound', 'tap', 'idle', 200)).toBe(readingAt('sound', 'tap', 'idle', 110));
});

// JCGM 100:2008, 5.1.2, by hand: the root of 30 squared and 40 squared is 50; of 5 and 12, 13. 4.3.7: a step of 0.6 spreads by 0.6/√12 = 0.1732 at
// each of two ends, so by 0.2449.
test('two errors make one by the root of their squares', () => {
  expect(doubtOf(30 / 2, 40 / 2)).toBeCloseTo(50, 9);
  expect(doubtOf(5 / 2, 12 / 2)).toBeCloseTo(13, 9);
  expect(rowsDoubt(0.6)).toBeCloseTo(0.2449, 4);
});
// In place of the law: a million pairs drawn by chance (tests/truth/proof.py). A thousandth is what a million leave open.
test('the doubt is what a million pairs drawn by chance come to', () => {
  for (const { temp, difference, doubt } of truth.pairs) {
    const pair = pairAt({ before: temp, after: temp });
    expect(Math.abs(pair.difference - difference)).toBeLessThan(0.05);
    expect(Math.abs(pair.doubt / doubt - 1)).toBeLessThan(0.003);
  }
});
// By hand: 2 % of 600 kPa is 12, and 10 at the least. Stop times: 0.08 s and 5 %, here of 1 s, and two ends of a row of 0.5 s: the root of 0.0064,
// 0.0025 and 0.25/6.
test('a gauge and a log err as the site says', () => {
  expect(errorAt(testBehind('line'), 600, 0.5)).toBeCloseTo(12, 9);
  expect(errorAt(testBehind('tap'), 175, 0.5)).toBeCloseTo(10, 9);
  expect(errorAt(testBehind('stop'), 1, 0.5)).toBeCloseTo(0.22485, 4);
});

const tap = testBehind('tap');
const taken = (value: number, tempC: number, rpm = 700): Taken => ({ value, tempC, rpm });
const asked = { right: 400, hotC: 95, step: 0.1 };
// By hand, with an error of 10 kPa a reading: a difference of more than 20·√2 = 28.3 counts, and a sound car of 400 may read 10 and
// 2 % of 400 off, twice the root of 164: 25.6.
test('each rule decides by itself', () => {
  const is = (one: Taken, other: Taken) => compare(tap, one, other, asked).by;
  expect(is(taken(200, 95), taken(398, 95))).toBe('right');
  expect(is(taken(200, 95), taken(398, 92))).toBe('right');
  expect(is(taken(200, 95), taken(398, 91.9))).toBe('temperature');
  expect(is(taken(200, 95), taken(398, 95, 1500))).toBe('speed');
  expect(is(taken(370, 95), taken(398, 95))).toBe('doubt');
  expect(is(taken(369, 95), taken(398, 95))).toBe('right');
  expect(is(taken(200, 90), taken(398, 90))).toBe('cooler');
  expect(is(taken(200, 95), taken(374, 95))).toBe('off');
  expect(is(taken(200, 95), taken(375, 95))).toBe('right');
  // Not right is not cured, whatever stands beside it.
  expect(is(taken(200, 20), taken(300, 95, 1500))).toBe('off');
});

test('only the same test hot proves it; cold, ten degrees off and the line do not', () => {
  const model = makeModel();
  model.apply(sim.predict.start);
  expect(model.pair.value).toMatchObject({ is: 'nothing', by: 'doubt' });
  model.apply(sim.predict.end);
  expect(sim.predict.outcome(model).option).toBe('hot');
  expect(model.pair.value.is).toBe('proves');
  expect(pairAt({ after: 85 }).by).toBe('temperature');
  expect(pairAt({ test: 'line' }).by).toBe('doubt');
  // Another car and another test make another answer.
  model.apply({ car: 'b' });
  expect(sim.predict.outcome(model).option).toBe('any');
});

test('better is not cured, and right cold is no proof: what the pages say of the cars', () => {
  // B: cold and ten degrees cooler it reads as a sound car; at the complaint it does not.
  const half = (after: number) => pairAt({ car: 'b', before: after, after });
  for (const temp of [20, 85])
    expect(Math.abs(half(temp).offRight), String(temp)).toBeLessThan(half(temp).room);
  expect(half(95).is).toBe('notCured');
  // Its stop time cannot tell.
  expect(pairAt({ car: 'b', test: 'stop' }).is).toBe('proves');
  // C: better by more than the doubt, and not cured.
  const rings = pairAt({ car: 'c' });
  expect(rings.difference).toBeGreaterThan(rings.doubt);
  expect(rings.is).toBe('notCured');
  // D: a leap up, and nobody touched it.
  const untouched = pairAt({ car: 'd', after: 20 });
  expect(untouched.difference).toBeGreaterThan(5 * untouched.doubt);
  expect(untouched.is).toBe('nothing');
  expect(Object.keys(HAS)).toHaveLength(4);
});

test('rows half a second apart widen the doubt and move no reading', () => {
  const [fine, coarse] = [pairAt({ test: 'stop' }), pairAt({ test: 'stop', rows: '0.5' })];
  expect(coarse.doubt).toBeGreaterThan(1.5 * fine.doubt);
  expect(coarse.difference).toBe(fine.difference);
});

test('the numbers of the lesson bear its words', () => {
  const value = (id: string) => numbers.get(`proof-${id}`)?.value ?? Number.NaN;
  expect(value('hot-is') - value('hot-was')).toBeGreaterThan(7 * value('doubt'));
  expect(value('cold-change')).toBeLessThan(value('doubt'));
  // "Not to be told apart" ten degrees cooler, and short at the complaint.
  expect(value('sound-warm') - value('half-warm')).toBeLessThan(value('each'));
  expect(value('hot-is') - value('half-hot')).toBeGreaterThan(value('doubt'));
  // The old pump with revs: all of its command, as the new one.
  expect(value('pump-old')).toBeCloseTo(value('pump-is'), 6);
  expect(value('pump-was')).toBeLessThan(0.7 * value('pump-command'));
  expect(value('rings-hot')).toBeGreaterThan(value('hot-was') + value('doubt'));
});

test('the tasks tell too cold from right, gained from lost, and a test that is blind', () => {
  const { task: second, model } = begun(tasks, makeModel, 'make-it-count');
  expect(second.verdict?.(model)?.is).toBe('too-low');
  model.apply({ after: 98 });
  expect(second.done(model)).toBe(true);
  expect(model.pair.value.is).toBe('proves');
  const { task: fooled, model: other } = begun(tasks, makeModel, 'fooled-by-cold');
  other.apply({ before: 20, after: 95 });
  expect(fooled.verdict?.(other)?.is).toBe('too-low');
  other.apply({ before: 95, after: 20 });
  expect(fooled.done(other)).toBe(true);
  const { task: half, model: third } = begun(tasks, makeModel, 'half-cured');
  expect(half.verdict?.(third)).toBeNull();
  third.apply({ test: 'line' });
  expect(half.verdict?.(third)?.is).toBe('not-that');
  third.apply({ test: 'tap' });
  expect(half.done(third)).toBe(true);
});
