/**
 * The tests of a shop, as far as the planner knows them: 49 readings of 19 kinds (specification of the planner, section 2).
 * Minutes and errors are assumptions of this site (common practice, no source).
 */
import { CIRCUITS, type Circuit } from '../engine/index.ts';

/** What has to be in place before a test. */
export const SET_UPS = [
  'hot',
  'cold',
  'frost',
  'scan',
  'lift',
  'gaugeLine',
  'gaugeForward',
  'gaugeReverse',
  'gaugeHigh',
  'coolerHose',
  'panOff',
  'valveBodyOff',
  'sealFixture',
] as const;
export type SetUp = (typeof SET_UPS)[number];
/** First-time minutes of each; one that is there costs nothing. */
export const SET_UP_MINUTES: Readonly<Record<SetUp, number>> = {
  hot: 20,
  cold: 90,
  frost: 120,
  scan: 3,
  lift: 4,
  gaugeLine: 12,
  gaugeForward: 12,
  gaugeReverse: 12,
  gaugeHigh: 12,
  coolerHose: 8,
  panOff: 30,
  valveBodyOff: 45,
  sealFixture: 15,
};
/** Putting it together again before the engine runs [min]. */
export const REFIT_MINUTES = { panOff: 20, valveBodyOff: 60 } as const;

/** How warm the fluid is in a test. */
export type Warmth = 'frost' | 'cold' | 'hot';
/** Nominal temperature and the band a reading may come from [°C]. */
export const WARMTHS: Readonly<
  Record<Warmth, { readonly at: number; readonly from: number; readonly to: number }>
> = {
  frost: { at: 0, from: -5, to: 5 },
  cold: { at: 20, from: 10, to: 30 },
  hot: { at: 95, from: 85, to: 105 },
};

/** What a shop may see, in place of a number. */
export const OUTCOMES = {
  fluidLevel: ['full', 'low', 'veryLow'],
  fluidLook: ['normal', 'dark', 'metal', 'foam'],
  cable: ['inAdjustment', 'out'],
  solenoidCurrent: ['inRange', 'off'],
  gaugeFlutter: ['steady', 'flutters'],
  panFilter: ['clean', 'dust', 'metal', 'clogged'],
  airWhere: ['quiet', 'rings', 'drum', 'passage'],
  boreVacuum: ['holds', 'leaks'],
} as const;
/** The codes that count, one for each gear. */
export const CODES = ['P0731', 'P0736', 'P0733'] as const;

export type OutcomeKind = keyof typeof OUTCOMES;
export type NumericKind =
  | 'engineOffTurbine'
  | 'fluidCup'
  | 'stopTime'
  | 'takeoffSlip'
  | 'linePressure'
  | 'clutchPressure'
  | 'coolerFlow'
  | 'airTest';

/** What a request names a test by, beside its kind. */
export interface Conditions {
  readonly range?: 'park' | 'drive' | 'reverse';
  readonly circuit?: Circuit | 'line' | 'transferSeal';
  readonly rpm?: number;
  readonly warmth?: Warmth;
}

interface Common {
  readonly id: string;
  readonly at: Conditions;
  /** Its own minutes, without set-ups. */
  readonly minutes: number;
  /** 0 reads only, 1 gauge or hose, 2 pan off, 3 valve body off. */
  readonly invasive: 0 | 1 | 2 | 3;
  readonly setUps: readonly SetUp[];
}
/** A reading in numbers. */
export interface NumericTest extends Common {
  readonly kind: NumericKind;
  /** What breaks with it when the cause is not in the list. */
  readonly group: string;
  /** Any value, as a range on the solver's scale. */
  readonly span: readonly [number, number];
}
/** A reading in words. */
export interface OutcomeTest extends Common {
  readonly kind: OutcomeKind | 'codes';
}
export type Test = NumericTest | OutcomeTest;

const gaugeOf: Readonly<Record<Circuit, SetUp>> = {
  forward: 'gaugeForward',
  reverse: 'gaugeReverse',
  high: 'gaugeHigh',
};
const bench: readonly SetUp[] = ['panOff', 'valveBodyOff'];

const line = (range: 'park' | 'drive' | 'reverse', rpm: number, warmth: Warmth): NumericTest => ({
  id: `line.${range}.${rpm}.${warmth}`,
  kind: 'linePressure',
  at: { range, rpm, warmth },
  minutes: 2,
  invasive: 1,
  setUps: ['gaugeLine', warmth],
  group: 'line',
  span: [0, 1400],
});
const tap = (circuit: Circuit, rpm: number, warmth: Warmth): NumericTest => ({
  id: `clutch.${circuit}.${rpm}.${warmth}`,
  kind: 'clutchPressure',
  at: { circuit, rpm, warmth },
  minutes: 2,
  invasive: 1,
  setUps: [gaugeOf[circuit], warmth],
  group: `clutch.${circuit}`,
  span: [0, 1200],
});
const air = (circuit: Circuit | 'transferSeal'): NumericTest => ({
  id: `airTest.${circuit}`,
  kind: 'airTest',
  at: { circuit },
  minutes: 4,
  invasive: 3,
  setUps: circuit === 'transferSeal' ? [...bench, 'sealFixture'] : bench,
  group: `air.${circuit}`,
  span: [0, 100],
});
const words = (
  kind: OutcomeTest['kind'],
  minutes: number,
  invasive: 0 | 1 | 2 | 3,
  setUps: readonly SetUp[],
  at: Conditions = {},
): OutcomeTest => ({
  id: [kind, at.circuit].filter((one) => one !== undefined).join('.'),
  kind,
  at,
  minutes,
  invasive,
  setUps,
});

/** Every reading that the planner knows, in the order of the specification. */
export const TESTS: readonly Test[] = [
  words('codes', 2, 0, ['scan']),
  {
    id: 'engineOffTurbine',
    kind: 'engineOffTurbine',
    at: {},
    minutes: 1,
    invasive: 0,
    setUps: ['scan'],
    group: 'turbine',
    span: [0, 800],
  },
  words('fluidLevel', 6, 0, ['lift']),
  words('fluidLook', 2, 0, ['lift']),
  words('cable', 5, 0, ['lift']),
  ...(['line', ...CIRCUITS] as const).map((circuit) =>
    words('solenoidCurrent', 5, 0, ['scan'], { circuit }),
  ),
  {
    id: 'fluidCup',
    kind: 'fluidCup',
    at: {},
    minutes: 10,
    invasive: 0,
    setUps: ['lift'],
    group: 'cup',
    span: [2.5, 4],
  },
  ...(['drive', 'reverse'] as const).flatMap((range) =>
    (['frost', 'cold', 'hot'] as const).map((warmth): NumericTest => ({
      id: `stopTime.${range}.${warmth}`,
      kind: 'stopTime',
      at: { range, warmth },
      minutes: 2,
      invasive: 0,
      setUps: ['scan', warmth],
      group: `stop.${range}`,
      span: [0, 2.5],
    })),
  ),
  ...(['drive', 'reverse'] as const).map((range): NumericTest => ({
    id: `takeoffSlip.${range}.hot`,
    kind: 'takeoffSlip',
    at: { range, warmth: 'hot' },
    minutes: 3,
    invasive: 0,
    setUps: ['scan', 'hot'],
    group: `slip.${range}`,
    span: [3.4, 8.9],
  })),
  line('park', 700, 'cold'),
  line('park', 700, 'hot'),
  line('drive', 700, 'hot'),
  line('reverse', 700, 'hot'),
  line('drive', 1500, 'cold'),
  line('drive', 1500, 'hot'),
  line('drive', 3000, 'cold'),
  {
    ...words('gaugeFlutter', 2, 1, ['gaugeLine', 'cold'], {
      range: 'park',
      rpm: 3000,
      warmth: 'cold',
    }),
    id: 'gaugeFlutter.park.3000.cold',
  },
  ...CIRCUITS.flatMap((circuit) =>
    [700, 1500].flatMap((rpm) => [tap(circuit, rpm, 'cold'), tap(circuit, rpm, 'hot')]),
  ),
  ...[700, 1500].map((rpm): NumericTest => ({
    id: `coolerFlow.park.${rpm}.hot`,
    kind: 'coolerFlow',
    at: { range: 'park', rpm, warmth: 'hot' },
    minutes: 4,
    invasive: 1,
    setUps: ['coolerHose', 'hot'],
    group: 'cooler',
    span: [0, 9],
  })),
  words('panFilter', 5, 2, ['panOff']),
  ...CIRCUITS.map(air),
  air('transferSeal'),
  ...CIRCUITS.map((circuit) => words('airWhere', 3, 3, bench, { circuit })),
  words('boreVacuum', 8, 3, bench),
];

export const isNumeric = (test: Test): test is NumericTest => 'span' in test;
/** Those in numbers, in the order of TESTS: the columns of the table. */
export const NUMERIC: readonly NumericTest[] = TESTS.filter(isNumeric);
const byId = new Map(TESTS.map((test) => [test.id, test]));
/** The test of an id; throws on one that there is not. */
export function testOf(id: string): Test {
  const test = byId.get(id);
  if (test === undefined) throw new Error(`There is no test "${id}".`);
  return test;
}
const columns: ReadonlyMap<string, number> = new Map(NUMERIC.map(({ id }, i) => [id, i]));
/** Place of a numeric test among the columns of the table; throws on one that has none. */
export function columnOf(id: string): number {
  const column = columns.get(id);
  if (column === undefined) throw new Error(`The table has no column ${id}.`);
  return column;
}

/** Whether a gauge reads it, whose gain moves all of its readings alike. */
export const isPressure = ({ kind }: NumericTest): boolean =>
  kind === 'linePressure' || kind === 'clutchPressure';

/** Longer than this the clock is stopped and the turbine "did not stop" [s]. */
export const LONGEST_STOP = 2.5;

/** What a shop writes down of a number: null for a stop that takes longer than anybody waits. */
export const written = ({ kind }: NumericTest, value: number): number | null =>
  kind === 'stopTime' && value > LONGEST_STOP ? null : value;

/**
 * Error of one reading, sd on the solver's scale, at what it reads there (specification, section 2).
 * kPa, s, L/min, percent, rpm; take-off slip in ln(slip + 30), the cup in ln cSt.
 */
export function errorOf({ kind }: NumericTest, reading: number): number {
  switch (kind) {
    case 'engineOffTurbine':
      return 15;
    case 'fluidCup':
      return 0.06;
    case 'stopTime':
      return Math.hypot(0.08, 0.05 * Math.min(reading, 3));
    case 'takeoffSlip':
      return 0.25;
    case 'linePressure':
    case 'clutchPressure':
      return Math.max(0.02 * reading, 10);
    case 'coolerFlow':
      return Math.hypot(0.2, 0.08 * reading);
    case 'airTest':
      return Math.hypot(4, 0.05 * reading);
  }
}

/** How far one car's reading lies from the model's besides, sd on the solver's scale (specification, section 3). */
export function discrepancyOf({ kind }: NumericTest, reading: number): number {
  switch (kind) {
    case 'engineOffTurbine':
    case 'fluidCup':
      return 0;
    case 'stopTime':
    case 'coolerFlow':
      return 0.05 * reading;
    case 'takeoffSlip':
      return 0.15;
    case 'linePressure':
      return 0.015 * reading;
    case 'clutchPressure':
      return 0.02 * reading;
    case 'airTest':
      return 3;
  }
}

/** What a shop reads, on the solver's scale: slip and cup in logarithms. */
export function onScale({ kind }: NumericTest, value: number): number {
  if (kind === 'takeoffSlip') return Math.log(value + 30);
  return kind === 'fluidCup' ? Math.log(value) : value;
}

/** Back from the solver's scale to what a shop reads; nothing reads below zero. */
export function offScale({ kind }: NumericTest, value: number): number {
  if (kind === 'takeoffSlip') return Math.max(0, Math.exp(value) - 30);
  return kind === 'fluidCup' ? Math.exp(value) : Math.max(0, value);
}
