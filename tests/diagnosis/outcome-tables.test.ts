/** How likely each thing seen is: section 2.2 of the planner's specification, written out again. */
import { describe, expect, test } from 'vitest';
import { CIRCUITS } from '../../src/engine/index.ts';
import { CLASSES, type FaultClass } from '../../src/diagnosis/hypotheses.ts';
import {
  bothChances,
  CODE_SETS,
  codeChances,
  codesOf,
  outcomeChances,
  outcomeChancesOf,
  outcomesOf,
  signsFrom,
} from '../../src/diagnosis/outcome-tables.ts';
import { isNumeric, testOf, TESTS, type OutcomeTest } from '../../src/diagnosis/tests.ts';
import { made } from './made.ts';

const words = (id: string): OutcomeTest => {
  const one = testOf(id);
  if (isNumeric(one)) throw new Error(`${id} reads a number.`);
  return one;
};
const { signs } = made({ name: 'healthy' });
const seen = (id: string, of: FaultClass, s = 1) => outcomeChances(words(id), of, s, signs);
const close = (all: readonly number[]) => all.map((one) => expect.closeTo(one, 9) as number);

const LEAKS = [
  'transferSeal',
  'sealingRings',
  'pistonSeal',
  'openPort',
  'regulatorBore',
  'pressureControl',
  'feedRestriction',
] as const;
const on = (name: FaultClass['name']): FaultClass =>
  CLASSES.find((of) => of.name === name) ?? { name };

describe('what a severity of a half gives, by hand', () => {
  test.each([
    // v = 0.6 - 0.1.
    ['fluidLevel', 'lowFluid', [0.05, 0.45, 0.5]],
    ['fluidLevel', 'pumpWear', [0.88, 0.1, 0.02]],
    // d = 0.15 + 0.325; m = 0.1 + 0.225; f = 0.1 + 0.325.
    ['fluidLook', 'frictionWear', [0.475, 0.475, 0.03, 0.02]],
    ['fluidLook', 'pumpWear', [0.495, 0.12, 0.325, 0.06]],
    ['fluidLook', 'lowFluid', [0.375, 0.15, 0.05, 0.425]],
    ...LEAKS.map((name) => ['fluidLook', name, [0.69, 0.25, 0.04, 0.02]] as const),
    ['fluidLook', 'filter', [0.68, 0.2, 0.1, 0.02]],
    ...(['healthy', 'hardLip', 'thinFluid', 'clutchControl', 'turbineSensor'] as const).map(
      (name) => ['fluidLook', name, [0.86, 0.08, 0.03, 0.03]] as const,
    ),
    ['cable', 'feedRestriction', [0.35, 0.65]],
    ['cable', 'healthy', [0.95, 0.05]],
    ['solenoidCurrent.line', 'pressureControl', [0.35, 0.65]],
    ['solenoidCurrent.forward', 'pressureControl', [0.96, 0.04]],
    ['solenoidCurrent.forward', 'clutchControl', [0.45, 0.55]],
    ['solenoidCurrent.reverse', 'clutchControl', [0.96, 0.04]],
    ['solenoidCurrent.line', 'clutchControl', [0.96, 0.04]],
    // Air of 0.45: (0.45 - 0.15) / 0.08 = 3.75 sd, of which 0.99991 lies below (from memory).
    ['gaugeFlutter.park.3000.cold', 'filter', [0.75, 0.25]],
    ['gaugeFlutter.park.3000.cold', 'healthy', [0.95, 0.05]],
    // c = 0.65; d = 0.55; m = 0.475.
    ['panFilter', 'filter', [0.32, 0.02, 0.01, 0.65]],
    ['panFilter', 'frictionWear', [0.38, 0.55, 0.04, 0.03]],
    ['panFilter', 'pumpWear', [0.395, 0.09, 0.475, 0.04]],
    ...LEAKS.map((name) => ['panFilter', name, [0.67, 0.25, 0.05, 0.03]] as const),
    ['panFilter', 'healthy', [0.84, 0.09, 0.04, 0.03]],
    ['panFilter', 'lowFluid', [0.84, 0.09, 0.04, 0.03]],
    // d = 0.6; d = 0.65.
    ['boreVacuum', 'regulatorBore', [0.4, 0.6]],
    ['boreVacuum', 'pumpWear', [0.94, 0.06]],
    ['airWhere.forward', 'sealingRings', [0.35, 0.5525, 0.065, 0.0325]],
    ['airWhere.forward', 'pistonSeal', [0.35, 0.065, 0.5525, 0.0325]],
    ['airWhere.forward', 'hardLip', [0.35, 0.065, 0.5525, 0.0325]],
    ['airWhere.forward', 'openPort', [0.35, 0.039, 0.039, 0.572]],
    ['airWhere.reverse', 'openPort', [0.91, 0.05, 0.02, 0.02]],
    ['airWhere.forward', 'transferSeal', [0.91, 0.05, 0.02, 0.02]],
  ] as const)('%s on %s: %j', (id, name, chances) => {
    expect(seen(id, on(name), 0.5)).toEqual(close(chances));
  });
});

test('nothing is ever certain: what grows with severity stops short of it', () => {
  expect(seen('fluidLevel', { name: 'lowFluid' }, 0)).toEqual(close([0.05, 0.9, 0.05]));
  expect(seen('fluidLevel', { name: 'lowFluid' }, 1)).toEqual(close([0.05, 0.05, 0.9]));
  expect(seen('panFilter', { name: 'filter' }, 1)).toEqual(close([0.04, 0.02, 0.01, 0.93]));
  expect(seen('boreVacuum', { name: 'regulatorBore' }, 1)).toEqual(close([0.07, 0.93]));
  expect(seen('airWhere.high', { name: 'sealingRings', circuit: 'high' }, 1)[0]).toBeCloseTo(
    0.07,
    9,
  );
  // Air of 0.9, 9 sd over; and of none, 1.875 sd under, of which 0.0304 lies below (from memory).
  expect(seen('gaugeFlutter.park.3000.cold', { name: 'lowFluid' }, 1)[1]).toBeCloseTo(0.94, 6);
  expect(seen('gaugeFlutter.park.3000.cold', { name: 'lowFluid' }, 0)[1]).toBeCloseTo(
    0.04 + 0.9 * 0.0304,
    4,
  );
});

test('whatever is wrong and however badly, the chances of a test sum to 1 and none is below 0', () => {
  for (const one of TESTS)
    for (const of of CLASSES)
      for (const severity of [0.1, 0.5, 1]) {
        if (isNumeric(one)) continue;
        const chances = outcomeChances(one, of, severity, signs);
        expect(chances).toHaveLength(outcomesOf(one));
        expect(Math.min(...chances), one.id).toBeGreaterThanOrEqual(0);
        expect(
          chances.reduce((sum, p) => sum + p, 0),
          `${one.id} ${of.name}`,
        ).toBeCloseTo(1, 9);
        expect(outcomeChancesOf(one, of, severity)).toEqual(one.kind === 'codes' ? [] : chances);
      }
});

describe('codes', () => {
  const at = (stop: number, slip: number, highTap: number) =>
    codeChances(
      { name: 'healthy' },
      { stop: { drive: stop, reverse: 0.8 }, slip: { drive: slip, reverse: 3.4 }, highTap },
    );
  // g(y, a, b) = 0.04 + 0.86 Phi((y - a) / b); Phi(1) = 0.8413447, Phi(-1) = 0.1586553 (Abramowitz and Stegun, table 26.1).
  test.each([
    ['a stop at 1.5 s', at(1.5, 0, 800)[0], 0.04 + 0.43],
    ['a stop at 1.75 s', at(1.75, 0, 800)[0], 0.04 + 0.86 * 0.8413447],
    ['a stop at 1.25 s', at(1.25, 0, 800)[0], 0.04 + 0.86 * 0.1586553],
    ['slip of 150 rpm', at(0, Math.log(180), 800)[0], 0.04 + 0.43],
    ['ln(slip + 30) one width over', at(0, Math.log(180) + 0.4, 800)[0], 0.04 + 0.86 * 0.8413447],
    ['a high tap of 300 kPa', at(0, 0, 300)[2], 0.04 + 0.43],
    ['a high tap of 240 kPa', at(0, 0, 240)[2], 0.04 + 0.86 * 0.8413447],
    ['reverse, where nothing shows', at(1.5, 6, 300)[1], 0.04 + 0.86 * 0.00256],
  ])('%s', (_what, found, chance) => {
    expect(found).toBeCloseTo(chance, 4);
  });
  test('the larger of stop and slip counts', () => {
    expect(at(1.75, Math.log(180), 800)[0]).toBe(at(1.75, 0, 800)[0]);
    expect(at(1.5, Math.log(180) + 0.4, 800)[0]).toBe(at(0, Math.log(180) + 0.4, 800)[0]);
  });
  test('a sensor that never reads zero stores the two ranges that stand, and not third', () => {
    expect(codeChances({ name: 'turbineSensor' }, { ...signs, highTap: 0 })).toEqual(
      close([0.9, 0.9, 0.04]),
    );
  });
  test('sets are told by which codes are in them, and their chances are products', () => {
    expect(CODE_SETS.map((set) => set.map(Number).join(''))).toEqual([
      '000',
      '100',
      '010',
      '110',
      '001',
      '101',
      '011',
      '111',
    ]);
    const [a = 0, b = 0, c = 0] = codeChances({ name: 'healthy' }, signs);
    const chances = outcomeChances(words('codes'), { name: 'healthy' }, 1, signs);
    expect(chances).toEqual(
      close([
        (1 - a) * (1 - b) * (1 - c),
        a * (1 - b) * (1 - c),
        (1 - a) * b * (1 - c),
        a * b * (1 - c),
        (1 - a) * (1 - b) * c,
        a * (1 - b) * c,
        (1 - a) * b * c,
        a * b * c,
      ]),
    );
  });
  test('signs are the later of the hot and the cold stop, the hot slip and the hot tap of high', () => {
    const values: Readonly<Record<string, number>> = {
      'stopTime.drive.hot': 1,
      'stopTime.drive.cold': 2,
      'stopTime.reverse.hot': 4,
      'stopTime.reverse.cold': 3,
      'takeoffSlip.drive.hot': 5,
      'takeoffSlip.reverse.hot': 6,
      'clutch.high.1500.hot': 700,
    };
    expect(signsFrom((id) => values[id] ?? Number.NaN)).toEqual({
      stop: { drive: 2, reverse: 4 },
      slip: { drive: 5, reverse: 6 },
      highTap: 700,
    });
  });
  test('a car stores what is as likely as not', () => {
    const car = (stop: number) => (id: string) =>
      id.startsWith('stopTime.drive')
        ? stop
        : id === 'clutch.high.1500.hot'
          ? 800
          : id.startsWith('stop')
            ? 0.8
            : 3.4;
    const healthy = [[{ name: 'healthy' }, 1]] as const;
    // 0.04 + 0.86 Phi is a half at Phi = 0.53488, 0.0876 widths over 1.5 s (from memory: 1.5219 s).
    expect(codesOf(healthy, car(1.52))).toEqual([]);
    expect(codesOf(healthy, car(1.525))).toEqual(['P0731']);
    expect(
      codesOf(
        [
          [{ name: 'pumpWear' }, 1],
          [{ name: 'turbineSensor' }, 1],
        ],
        car(0.8),
      ),
    ).toEqual(['P0731', 'P0736']);
  });
});

test('of two faults the first says what it has to say, and where that is nothing, the second', () => {
  expect(bothChances([0.4, 0.6], [0.9, 0.1])).toEqual(close([0.36, 0.64]));
  expect(bothChances([0.5, 0.3, 0.2], [0.6, 0.1, 0.3])).toEqual(close([0.3, 0.35, 0.35]));
});

test('each circuit has its own air and its own solenoid', () => {
  for (const circuit of CIRCUITS)
    for (const other of CIRCUITS) {
      const same = circuit === other;
      expect(seen(`airWhere.${other}`, { name: 'openPort', circuit })[0]).toBeCloseTo(
        same ? 0.07 : 0.91,
        9,
      );
      expect(seen(`solenoidCurrent.${other}`, { name: 'clutchControl', circuit })[1]).toBeCloseTo(
        same ? 0.55 : 0.04,
        9,
      );
    }
});
