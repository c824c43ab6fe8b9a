import { describe, expect, test } from 'vitest';
import {
  chanceFrom,
  contradictions,
  decodeTable,
  drawClass,
  groundsOf,
  hypothesesOf,
  isFault,
  illnessOf,
  makeGenerated,
  NAMES,
  ratherInOther,
  signsNear,
  testOf,
  TESTS,
  type NumericTest,
  type TakenReading,
} from '../../src/diagnosis/index.ts';
import { keptTable } from '../../src/diagnosis/kept-table.ts';
import { training } from '../../src/engine/index.ts';

const table = decodeTable(keptTable);
const hypotheses = hypothesesOf(table);
const grounds = groundsOf(hypotheses);
const read = (id: string, value: TakenReading['value']): TakenReading => ({
  test: testOf(id),
  value,
});
const named = (readings: readonly TakenReading[]) =>
  contradictions(hypotheses, readings).map(({ first, second }) => [first, second]);

describe('two readings that cannot both be right', () => {
  test('the same gauge at the same place, 58 psi and 20 psi', () => {
    const tap = 'clutch.forward.700.hot';
    expect(named([read(tap, 400), read('fluidLevel', 'full'), read(tap, 138)])).toEqual([[0, 2]]);
  });

  test('no line pressure in Park, and all of it in Drive at the same idle', () => {
    expect(named([read('line.park.700.hot', 60), read('line.drive.700.hot', 600)])).toEqual([
      [0, 1],
    ]);
  });

  test('in whatever order, and beside others that fit', () => {
    const readings = [
      read('line.drive.700.hot', 600),
      read('clutch.reverse.700.hot', 391),
      read('line.park.700.hot', 60),
    ];
    expect(named(readings)).toContainEqual([0, 2]);
    expect(named([...readings].reverse())).toContainEqual([0, 2]);
  });
});

describe('readings that fit are left in peace', () => {
  test('a split seal: two taps low, one right', () => {
    expect(
      named([
        read('clutch.forward.700.hot', 232),
        read('clutch.reverse.700.hot', 232),
        read('clutch.high.700.hot', 391),
        read('stopTime.drive.hot', 1.11),
        read('line.park.700.hot', 600),
      ]),
    ).toEqual([]);
  });

  test('two faults on one car: low line, and one tap much lower than the rest', () => {
    // Case 26 of the practice cases: worn pump and worn rings.
    expect(
      named([
        read('line.drive.700.hot', 499),
        read('clutch.forward.700.hot', 257),
        read('clutch.reverse.700.hot', 391),
        read('clutch.high.700.hot', 391),
      ]),
    ).toEqual([]);
  });

  test('a handful of generated cars, a dozen readings each; the bench tries thousands', () => {
    const chance = chanceFrom(11);
    const names = [...NAMES.filter(isFault), 'healthy' as const];
    const tests = TESTS.filter(({ at }) => at.warmth !== 'frost').filter((_test, i) => i % 4 === 1);
    const accused = Array.from({ length: 12 }, () => {
      const { of, severity } = drawClass(chance, names);
      const illness = illnessOf(of, severity, signsNear(table, of, severity));
      return named(tests.map(makeGenerated(training, illness, chance))).length;
    });
    expect(accused.filter((count) => count > 0)).toEqual([]);
  });
});

describe('the other unit is asked about', () => {
  const rather = (id: string, asRead: number | undefined, inOther: number) =>
    ratherInOther(grounds, testOf(id) as NumericTest, asRead, inOther);
  const PSI = 6.894757;
  test('87 where kPa is chosen, for a line pressure', () => {
    expect(rather('line.park.700.hot', 87, 87 * PSI)).toBe(true);
  });
  test('600 where psi is chosen, which is more than any gauge here shows', () => {
    expect(rather('line.park.700.hot', undefined, 600)).toBe(true);
  });
  test('not about 87 psi, nor about 600 kPa', () => {
    expect(rather('line.park.700.hot', 87 * PSI, 87)).toBe(false);
    expect(rather('line.park.700.hot', 600, 600 * PSI)).toBe(false);
  });
  test('not about a low tap that a bad leak gives', () => {
    expect(rather('clutch.reverse.700.hot', 167, 167 * PSI)).toBe(false);
  });
});
