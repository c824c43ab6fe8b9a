/** What the planner assumes, written out again from its specification (sections 1, 2, 3 and 5). No published rates exist. */
import { expect, test } from 'vitest';
import {
  ANY_VALUE,
  BROKEN,
  CLASSES,
  hasSeverity,
  inOneCircuit,
  isName,
  NAMES,
  NODES,
  severitiesOf,
  usualWeight,
} from '../../src/diagnosis/hypotheses.ts';
import { GAUGE_GAIN, NUISANCES, sdOf } from '../../src/diagnosis/nuisances.ts';
import {
  discrepancyOf,
  errorOf,
  offScale,
  onScale,
  OUTCOMES,
  REFIT_MINUTES,
  SET_UP_MINUTES,
  testOf,
  TESTS,
  WARMTHS,
} from '../../src/diagnosis/tests.ts';
import { anyDensity } from '../../src/diagnosis/posterior.ts';
import { numeric } from './made.ts';

/** Section 2: minutes, invasive, set-ups; of numbers the group (1.2) and the range of any value (5). */
const WRITTEN: readonly (readonly [
  ids: string,
  minutes: number,
  invasive: number,
  setUps: string,
  group?: string,
  span?: readonly [number, number],
])[] = [
  ['codes', 2, 0, 'scan'],
  ['engineOffTurbine', 1, 0, 'scan', 'turbine', [0, 800]],
  ['fluidLevel', 6, 0, 'lift'],
  ['fluidLook', 2, 0, 'lift'],
  ['cable', 5, 0, 'lift'],
  [
    'solenoidCurrent.line solenoidCurrent.forward solenoidCurrent.reverse solenoidCurrent.high',
    5,
    0,
    'scan',
  ],
  ['fluidCup', 10, 0, 'lift', 'cup', [2.5, 4]],
  ['stopTime.drive.frost', 2, 0, 'scan frost', 'stop.drive', [0, 2.5]],
  ['stopTime.drive.cold', 2, 0, 'scan cold', 'stop.drive', [0, 2.5]],
  ['stopTime.drive.hot', 2, 0, 'scan hot', 'stop.drive', [0, 2.5]],
  ['stopTime.reverse.frost', 2, 0, 'scan frost', 'stop.reverse', [0, 2.5]],
  ['stopTime.reverse.cold', 2, 0, 'scan cold', 'stop.reverse', [0, 2.5]],
  ['stopTime.reverse.hot', 2, 0, 'scan hot', 'stop.reverse', [0, 2.5]],
  ['takeoffSlip.drive.hot', 3, 0, 'scan hot', 'slip.drive', [3.4, 8.9]],
  ['takeoffSlip.reverse.hot', 3, 0, 'scan hot', 'slip.reverse', [3.4, 8.9]],
  [
    'line.park.700.cold line.drive.1500.cold line.drive.3000.cold',
    2,
    1,
    'gaugeLine cold',
    'line',
    [0, 1400],
  ],
  [
    'line.park.700.hot line.drive.700.hot line.reverse.700.hot line.drive.1500.hot',
    2,
    1,
    'gaugeLine hot',
    'line',
    [0, 1400],
  ],
  ['gaugeFlutter.park.3000.cold', 2, 1, 'gaugeLine cold'],
  [
    'clutch.forward.700.cold clutch.forward.1500.cold',
    2,
    1,
    'gaugeForward cold',
    'clutch.forward',
    [0, 1200],
  ],
  [
    'clutch.forward.700.hot clutch.forward.1500.hot',
    2,
    1,
    'gaugeForward hot',
    'clutch.forward',
    [0, 1200],
  ],
  [
    'clutch.reverse.700.cold clutch.reverse.1500.cold',
    2,
    1,
    'gaugeReverse cold',
    'clutch.reverse',
    [0, 1200],
  ],
  [
    'clutch.reverse.700.hot clutch.reverse.1500.hot',
    2,
    1,
    'gaugeReverse hot',
    'clutch.reverse',
    [0, 1200],
  ],
  ['clutch.high.700.cold clutch.high.1500.cold', 2, 1, 'gaugeHigh cold', 'clutch.high', [0, 1200]],
  ['clutch.high.700.hot clutch.high.1500.hot', 2, 1, 'gaugeHigh hot', 'clutch.high', [0, 1200]],
  ['coolerFlow.park.700.hot coolerFlow.park.1500.hot', 4, 1, 'coolerHose hot', 'cooler', [0, 9]],
  ['panFilter', 5, 2, 'panOff'],
  ['airTest.forward', 4, 3, 'panOff valveBodyOff', 'air.forward', [0, 100]],
  ['airTest.reverse', 4, 3, 'panOff valveBodyOff', 'air.reverse', [0, 100]],
  ['airTest.high', 4, 3, 'panOff valveBodyOff', 'air.high', [0, 100]],
  ['airTest.transferSeal', 4, 3, 'panOff valveBodyOff sealFixture', 'air.transferSeal', [0, 100]],
  ['airWhere.forward airWhere.reverse airWhere.high', 3, 3, 'panOff valveBodyOff'],
  ['boreVacuum', 8, 3, 'panOff valveBodyOff'],
];
const rows = WRITTEN.flatMap(([ids, minutes, invasive, setUps, group, span]) =>
  ids.split(' ').map((id) => [id, minutes, invasive, setUps, group, span] as const),
);

test('there are 49 readings and no others', () => {
  expect(rows.map(([id]) => id).toSorted()).toEqual(TESTS.map(({ id }) => id).toSorted());
  expect(() => testOf('stopTime.drive.warm')).toThrow('There is no test "stopTime.drive.warm".');
});

test.each(rows)(
  '%s takes %i minutes of its own, goes %i deep and needs %s',
  (id, minutes, invasive, setUps, group, span) => {
    const one = testOf(id);
    expect([one.minutes, one.invasive, one.setUps.join(' ')]).toEqual([minutes, invasive, setUps]);
    expect([Reflect.get(one, 'group'), Reflect.get(one, 'span')]).toEqual([group, span]);
    // The id says the kind and under which conditions, in the order of the specification.
    const said = [one.kind, one.at.range, one.at.circuit, one.at.rpm, one.at.warmth];
    const short = { linePressure: 'line', clutchPressure: 'clutch' } as Readonly<
      Record<string, string>
    >;
    expect(
      said.flatMap((part) => (part === undefined ? [] : (short[part] ?? String(part)))).join('.'),
    ).toBe(id);
  },
);

test('minutes of set-ups, and of putting together what is apart', () => {
  expect(SET_UP_MINUTES).toEqual({
    ...{ hot: 20, cold: 90, frost: 120, scan: 3, lift: 4 },
    ...{ gaugeLine: 12, gaugeForward: 12, gaugeReverse: 12, gaugeHigh: 12 },
    ...{ coolerHose: 8, panOff: 30, valveBodyOff: 45, sealFixture: 15 },
  });
  expect(REFIT_MINUTES).toEqual({ panOff: 20, valveBodyOff: 60 });
});

test('bands of temperature', () => {
  expect(WARMTHS).toEqual({
    frost: { at: 0, from: -5, to: 5 },
    cold: { at: 20, from: 10, to: 30 },
    hot: { at: 95, from: 85, to: 105 },
  });
});

test('what may be seen', () => {
  expect(OUTCOMES).toEqual({
    fluidLevel: ['full', 'low', 'veryLow'],
    fluidLook: ['normal', 'dark', 'metal', 'foam'],
    cable: ['inAdjustment', 'out'],
    solenoidCurrent: ['inRange', 'off'],
    gaugeFlutter: ['steady', 'flutters'],
    panFilter: ['clean', 'dust', 'metal', 'clogged'],
    airWhere: ['quiet', 'rings', 'drum', 'passage'],
    boreVacuum: ['holds', 'leaks'],
  });
});

// Errors of section 2, at a reading on the solver's scale; by hand.
test.each([
  ['engineOffTurbine', 0, 15],
  ['engineOffTurbine', 600, 15],
  ['fluidCup', 3.5, 0.06],
  ['stopTime.drive.hot', 0, 0.08],
  // 0.05 times 1.2 is 0.06: 8, 6, 10.
  ['stopTime.drive.hot', 1.2, 0.1],
  // From 3 s on it is 0.15 for good: 8, 15, 17.
  ['stopTime.reverse.cold', 3, 0.17],
  ['stopTime.reverse.cold', 5, 0.17],
  ['takeoffSlip.drive.hot', 5, 0.25],
  ['line.park.700.hot', 300, 10],
  ['line.park.700.hot', 900, 18],
  ['clutch.high.700.hot', 499, 10],
  ['clutch.high.700.hot', 600, 12],
  ['coolerFlow.park.700.hot', 0, 0.2],
  // 0.08 times 6 is 0.48: 0.2, 0.48, 0.52.
  ['coolerFlow.park.700.hot', 6, 0.52],
  ['airTest.forward', 0, 4],
  // 0.05 times 60 is 3: 3, 4, 5.
  ['airTest.forward', 60, 5],
])('%s at %d is read to %d', (id, reading, sd) => {
  expect(errorOf(numeric(id), reading)).toBeCloseTo(sd, 12);
});

// Section 3: how far one car lies from the model besides.
test.each([
  ['engineOffTurbine', 600, 0],
  ['fluidCup', 3.5, 0],
  ['stopTime.drive.hot', 2, 0.1],
  ['coolerFlow.park.1500.hot', 4, 0.2],
  ['takeoffSlip.reverse.hot', 6, 0.15],
  ['line.drive.700.hot', 600, 9],
  ['clutch.forward.700.hot', 400, 8],
  ['airTest.high', 80, 3],
])('%s at %d lies %d off from car to car', (id, reading, sd) => {
  expect(discrepancyOf(numeric(id), reading)).toBeCloseTo(sd, 12);
});

test('the solver’s scale: slip in ln(slip + 30), the cup in ln, the rest as read; back, nothing is below zero', () => {
  expect(onScale(numeric('takeoffSlip.drive.hot'), 70)).toBeCloseTo(Math.log(100), 12);
  expect(onScale(numeric('fluidCup'), 20)).toBeCloseTo(Math.log(20), 12);
  expect(onScale(numeric('line.park.700.hot'), 600)).toBe(600);
  expect(offScale(numeric('takeoffSlip.drive.hot'), Math.log(100))).toBeCloseTo(70, 9);
  expect(offScale(numeric('takeoffSlip.drive.hot'), Math.log(20))).toBe(0);
  expect(offScale(numeric('fluidCup'), Math.log(20))).toBeCloseTo(20, 9);
  expect(offScale(numeric('stopTime.drive.hot'), -0.1)).toBe(0);
  expect(offScale(numeric('line.park.700.hot'), 600)).toBe(600);
});

test('any value: one over the width; of a time 0.7 of it, 0.5 where the cause is not listed', () => {
  expect(anyDensity(numeric('line.park.700.hot'), false)).toBeCloseTo(1 / 1400, 15);
  expect(anyDensity(numeric('takeoffSlip.drive.hot'), true)).toBeCloseTo(1 / 5.5, 15);
  expect(anyDensity(numeric('stopTime.drive.hot'), false)).toBeCloseTo(0.7 / 2.5, 15);
  expect(anyDensity(numeric('stopTime.drive.hot'), true)).toBeCloseTo(0.5 / 2.5, 15);
});

/** Section 1: from which severity a fault shows. */
const FROM: Readonly<Record<string, number>> = {
  ...{
    transferSeal: 0.3,
    sealingRings: 0.1,
    pistonSeal: 0.35,
    pumpWear: 0.25,
    regulatorBore: 0.45,
  },
  ...{ pressureControl: 0.2, filter: 0.55, lowFluid: 0.6, thinFluid: 0.6, feedRestriction: 0.25 },
  ...{ openPort: 0.35, frictionWear: 0.3, hardLip: 0.7, clutchControl: 0.25 },
};
test.each(Object.entries(FROM))('%s is weighed from %d to 1 in steps of 0.025', (name, from) => {
  if (!isName(name)) throw new Error(name);
  const all = severitiesOf(name);
  expect(hasSeverity(name)).toBe(true);
  expect([all[0], all.at(-1)]).toEqual([from, 1]);
  expect(all).toHaveLength(Math.round((1 - from) / 0.025) + 1);
  for (const [i, one] of all.entries()) expect(one).toBeCloseTo(from + 0.025 * i, 9);
});

test('names, classes and what is believed beforehand', () => {
  expect([...NAMES].toSorted()).toEqual(
    [...Object.keys(FROM), 'turbineSensor', 'healthy', 'unlisted'].toSorted(),
  );
  for (const name of ['turbineSensor', 'healthy', 'unlisted'] as const) {
    expect(severitiesOf(name)).toEqual([1]);
    expect(hasSeverity(name)).toBe(false);
  }
  const five = ['clutchControl', 'hardLip', 'openPort', 'pistonSeal', 'sealingRings'];
  expect(NAMES.filter(inOneCircuit).toSorted()).toEqual(five);
  for (const name of five)
    expect(CLASSES.filter((of) => of.name === name).map(({ circuit }) => circuit)).toEqual([
      'forward',
      'reverse',
      'high',
    ]);
  expect(NAMES.map(usualWeight).reduce((sum, one) => sum + one, 0)).toBe(18);
  expect(usualWeight('unlisted')).toBe(2);
  expect([isName('filter'), isName('Filter'), isName('toString')]).toEqual([true, false, false]);
  expect(NODES).toEqual(
    [5, 10, 15, 20, 25, 30, 35, 40, 45, 50, 55, 60, 65, 70, 75, 80, 85, 90, 95, 100].map(
      (one) => one / 100,
    ),
  );
  expect([BROKEN, ANY_VALUE]).toEqual([[0.15, 0.35], 0.7]);
});

test('what cars share: half-widths of section 3', () => {
  expect(Object.fromEntries(NUISANCES.map(({ id, half }) => [id, half]))).toEqual({
    ...{ clearances: 0.1, 'rings.forward': 0.1, 'rings.reverse': 0.1, 'rings.high': 0.1 },
    ...{ pump: 0.2, feed: 0.1, kv40: 0.1, kv100: 0.1, crackWidth: 0.2 },
    ...{ 'temperature.hot': 3, 'temperature.cold': 3, 'temperature.frost': 3 },
  });
  expect(GAUGE_GAIN).toBe(0.015);
  // The spread of a uniform law of half-width a is a over the root of 3 (JCGM 100:2008, 4.3.7).
  expect(sdOf(3)).toBeCloseTo(1.7320508, 7);
});
