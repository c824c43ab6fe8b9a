/** Cars drawn by number: the same for everybody, noticed by their customers, and found by the planner of their transmission. */
import { describe, expect, test } from 'vitest';
import { makeCase, type MadeCase } from '../../src/cases/made.ts';
import { LEVELS, type Level } from '../../src/cases/made-key.ts';
import { drivesIn } from '../../src/cases/visit.ts';
import {
  decodeTable,
  hypothesesOf,
  isNumeric,
  testOf,
  TESTS,
  wayOf,
} from '../../src/diagnosis/index.ts';
import { keptSecondTable } from '../../src/diagnosis/kept-second-table.ts';
import { keptTable } from '../../src/diagnosis/kept-table.ts';

const tables = { training: decodeTable(keptTable), second: decodeTable(keptSecondTable) };
const seeds = Array.from({ length: 16 }, (_, i) => i + 1);
/** Each of them asks the planner some ten times. */
const PLAYED = 8;

describe.each(['training', 'second'] as const)('on the %s transmission', (on) => {
  const table = tables[on];
  const cars = new Map<string, MadeCase>();
  const made = (seed: number, level: Level): MadeCase => {
    const name = `${seed} ${level}`;
    const car = cars.get(name) ?? makeCase({ seed, level, on }, table);
    cars.set(name, car);
    return car;
  };

  test('the same number gives the same car, in whatever order it is read', () => {
    const [one, other] = [1, 2].map(() => makeCase({ seed: 4711, level: 3, on }, table));
    if (!one || !other) throw new Error('There is no car.');
    expect(other.classes).toEqual(one.classes);
    expect(other.noticed).toEqual(one.noticed);
    const forth = TESTS.map((test) => one.read(test).value);
    const back = TESTS.toReversed().map((test) => other.read(test).value);
    expect(back.toReversed()).toEqual(forth);
  });

  test('numbers differ: faults, readings, and the errors of two gauges', () => {
    const names = new Set(seeds.map((seed) => made(seed, 1).classes[0]?.[0].name));
    expect(names.size).toBeGreaterThan(4);
    const car = made(7, 2);
    const line = (id: string) => Number(car.read(testOf(id)).value);
    expect(line('line.park.700.cold')).not.toBe(line('line.park.700.hot'));
  });

  test('plain cars have one fault, harder ones none or one, the hardest up to two', () => {
    const counts = (level: Level) => new Set(seeds.map((seed) => made(seed, level).classes.length));
    expect([...counts(1)]).toEqual([1]);
    expect([...counts(2)].sort()).toEqual([0, 1]);
    expect([...counts(3)].sort()).toEqual([0, 1, 2]);
  });

  test('a car with a fault shows something to its customer', () => {
    for (const level of LEVELS)
      for (const seed of seeds) {
        const { classes, noticed } = made(seed, level);
        const { drive, reverse, flares, high, light } = noticed;
        const shows =
          [drive.cold, drive.hot, reverse.cold, reverse.hot].some((one) => one !== 'good') ||
          flares.drive ||
          flares.reverse ||
          high ||
          light;
        if (classes.length > 0) expect([seed, level, shows]).toEqual([seed, level, true]);
        else expect([seed, level, shows]).toEqual([seed, level, false]);
      }
  });

  test('readings lie within their scale', () => {
    for (const seed of seeds.slice(0, PLAYED)) {
      const { read } = made(seed, 3);
      for (const test of TESTS) {
        const { value } = read(test);
        if (isNumeric(test) && value !== null) expect(Number(value)).toBeGreaterThanOrEqual(0);
        if (!isNumeric(test)) expect(value).not.toBeNull();
      }
    }
  });

  // The planner's own promise is 97 in a hundred on cars as different as these (npm run accuracy). Of 8 plain cars that
  // would be none or one missed; two allows for chance, at p < 0.03.
  test(
    'the planner of this transmission finds what is wrong with plain cars',
    {
      timeout: 120_000,
    },
    () => {
      const hypotheses = hypothesesOf(table);
      const missed = seeds.slice(0, PLAYED).filter((seed) => {
        const { classes, read } = made(seed, 1);
        const [top] = [...wayOf(hypotheses, read, drivesIn(true))].at(-1)?.faults ?? [];
        return top?.fault !== classes[0]?.[0].name;
      });
      expect(missed.length).toBeLessThanOrEqual(2);
    },
  );
});
