import { describe, expect, test } from 'vitest';
import {
  chanceFrom,
  contradictions,
  decodeTable,
  drawClass,
  errorOf,
  hypothesesOf,
  isFault,
  NAMES,
  nominalReader,
  NUMERIC,
  offScale,
  onScale,
  plainClash,
  testOf,
  withFault,
  withPlain,
  type NumericTest,
  type TakenReading,
} from '../../src/diagnosis/index.ts';
import { keptTable } from '../../src/diagnosis/kept-table.ts';
import { training } from '../../src/engine/index.ts';

const read = (id: string, value: TakenReading['value'], temperatureC?: number): TakenReading => ({
  test: testOf(id),
  value,
  ...(temperatureC !== undefined && { temperatureC }),
});
const STOP = 'stopTime.drive.hot';
const LINE = 'line.drive.700.hot';
const TAP = 'clutch.forward.700.hot';

describe('the same test twice', () => {
  test.each([
    ['half a second and five', 0.5, 5],
    ['half a second and no stop at all', 0.5, null],
    ['no stop at all and half a second', null, 0.5],
  ])('a stop time of %s', (_what, one, other) => {
    expect(plainClash(read(STOP, one), read(STOP, other))).toBe('twice');
  });

  test.each([
    ['as close as two tries are', 0.7, 0.9],
    ['slow, and stopped by the clock', 2.2, null],
    ['twice no stop, one of them timed', null, 5],
  ])('is left in peace: %s', (_what, one, other) => {
    expect(plainClash(read(STOP, one), read(STOP, other))).toBeNull();
  });

  test('fluid that was warmer is a reason, if both were written down', () => {
    expect(plainClash(read(STOP, 0.5, 86), read(STOP, 5, 104))).toBeNull();
    expect(plainClash(read(STOP, 0.5, 95), read(STOP, 5, 98))).toBe('twice');
    expect(plainClash(read(STOP, 0.5, 86), read(STOP, 5))).toBe('twice');
  });

  test('it goes by the error of each test', () => {
    const twice = (id: string, one: number, other: number) =>
      plainClash(read(id, one), read(id, other));
    expect(twice('line.park.700.hot', 600, 480)).toBe('twice');
    expect(twice('line.park.700.hot', 600, 540)).toBeNull();
    expect(twice('takeoffSlip.drive.hot', 40, 700)).toBe('twice');
    expect(twice('takeoffSlip.drive.hot', 40, 300)).toBeNull();
    expect(twice('airTest.forward', 88, 30)).toBe('twice');
    expect(twice('fluidCup', 28, 14)).toBe('twice');
  });

  test('another test, or one in words, is not the same', () => {
    expect(plainClash(read(STOP, 0.5), read('stopTime.reverse.hot', 5))).toBeNull();
    expect(plainClash(read('fluidLevel', 'full'), read('fluidLevel', 'low'))).toBeNull();
  });
});

describe('a clutch and the line that feeds it', () => {
  test('more in the clutch, in whatever order', () => {
    expect(plainClash(read(LINE, 400), read(TAP, 1200))).toBe('aboveLine');
    expect(plainClash(read(TAP, 1200), read(LINE, 400))).toBe('aboveLine');
    expect(
      plainClash(read('line.reverse.700.hot', 400), read('clutch.reverse.700.hot', 1200)),
    ).toBe('aboveLine');
  });

  test('less in the clutch, and a little more by a gauge that errs, are left in peace', () => {
    expect(plainClash(read(LINE, 1200), read(TAP, 400))).toBeNull();
    expect(plainClash(read(TAP, 430), read(LINE, 400))).toBeNull();
  });

  test('another gear, speed or warmth is no such pair', () => {
    expect(plainClash(read('line.park.700.hot', 400), read(TAP, 1200))).toBeNull();
    expect(plainClash(read(LINE, 400), read('clutch.reverse.700.hot', 1200))).toBeNull();
    expect(plainClash(read(LINE, 400), read('clutch.forward.1500.hot', 1200))).toBeNull();
    expect(plainClash(read(LINE, 400), read('clutch.forward.700.cold', 1200))).toBeNull();
    expect(plainClash(read(LINE, 400, 86), read(TAP, 1200, 104))).toBeNull();
  });
});

test('what the table is silent on is added to what it finds, once', () => {
  const hypotheses = hypothesesOf(decodeTable(keptTable));
  const readings = [read(STOP, 0.5), read(TAP, 400), read(STOP, 5), read(TAP, 138)];
  const found = contradictions(hypotheses, readings);
  expect(found.map(({ first, second }) => [first, second])).toEqual([[1, 3]]);
  const all = withPlain(found, readings);
  expect(all.map(({ first, second }) => [first, second])).toEqual([
    [1, 3],
    [0, 2],
  ]);
  expect(all[0]).toEqual(found[0]);
});

test('no car that is read honestly, every test twice with its errors, is accused', () => {
  const chance = chanceFrom(5);
  const names = [...NAMES.filter(isFault), 'healthy' as const];
  const normal = () => Math.sqrt(-2 * Math.log(1 - chance())) * Math.cos(2 * Math.PI * chance());
  for (let n = 0; n < 12; n += 1) {
    const { of, severity } = drawClass(chance, names);
    const exact = nominalReader(withFault(training, of, severity));
    const once = (test: NumericTest): TakenReading => {
      const scaled = exact(test.id);
      const value = offScale(test, scaled + errorOf(test, scaled) * normal());
      return { test, value: test.kind === 'stopTime' && onScale(test, value) > 2.5 ? null : value };
    };
    const sheet = [...NUMERIC.map(once), ...NUMERIC.map(once)];
    expect(withPlain([], sheet), `${of.name} ${severity}`).toEqual([]);
  }
});
