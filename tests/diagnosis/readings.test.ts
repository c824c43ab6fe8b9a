/** What each test in numbers reads on a car: the command line's own answer at the conditions of the specification (section 2). */
import { describe, expect, test } from 'vitest';
import { nominalWarmth } from '../../src/diagnosis/table.ts';
import {
  HELD_S,
  heldTrace,
  readSubject,
  SELECT_S,
  stoppedIn,
  stopTime,
} from '../../src/diagnosis/read-subject.ts';
import { LONGEST_STOP } from '../../src/diagnosis/tests.ts';
import {
  airHeld,
  applyFaults,
  training,
  type EngagementTrace,
  type FaultSet,
} from '../../src/engine/index.ts';
import { answer } from '../../src/solve/answer.ts';
import { steady as steadyOf } from '../solve/steady.ts';
import { numeric } from './made.ts';

const worn: FaultSet = {
  transferSeal: { severity: 0.3 },
  pumpWear: { severity: 0.1 },
  openPort: { severity: 0.2, circuit: 'high' },
};
const plant = applyFaults(training, worn);
const subject = { plant, fluid: plant.fluid, warmth: nominalWarmth };
const read = (id: string, of: object = {}) => readSubject({ ...subject, ...of }, numeric(id));
const faults = { transferSeal: 0.3, pumpWear: 0.1, openPort: { severity: 0.2, circuit: 'high' } };
const steady = (request: object) => steadyOf({ faults, ...request });

/** Commands of line and clutch [kPa]: 600/400 and 1000/800, Reverse 1.3 times as much; in Park on the commands of idle. */
const LINES = [
  ['line.park.700.cold', 700, 20, 600, 400, []],
  ['line.park.700.hot', 700, 95, 600, 400, []],
  ['line.drive.700.hot', 700, 95, 600, 400, ['forward']],
  ['line.reverse.700.hot', 700, 95, 780, 520, ['reverse']],
  ['line.drive.1500.cold', 1500, 20, 1000, 800, ['forward']],
  ['line.drive.1500.hot', 1500, 95, 1000, 800, ['forward']],
  ['line.drive.3000.cold', 3000, 20, 1000, 800, ['forward']],
] as const;
test.each(LINES)('%s', (id, engine_rpm, temperature_C, line_kPa, clutch_kPa, applied) => {
  const said = steady({ engine_rpm, temperature_C, line_kPa, clutch_kPa, applied });
  expect(read(id)).toBeCloseTo(said.line_kPa, 6);
});

const TAPS = (['forward', 'reverse', 'high'] as const).flatMap((circuit) =>
  (
    [
      [700, 600, 400],
      [1500, 1000, 800],
    ] as const
  ).flatMap(([rpm, line, clutch]) =>
    (
      [
        ['cold', 20],
        ['hot', 95],
      ] as const
    ).map(([warmth, tempC]) => {
      const boost = circuit === 'reverse' ? 1.3 : 1;
      return [
        `clutch.${circuit}.${rpm}.${warmth}`,
        circuit,
        rpm,
        tempC,
        line * boost,
        clutch * boost,
      ] as const;
    }),
  ),
);
test.each(TAPS)('%s', (id, circuit, engine_rpm, temperature_C, line_kPa, clutch_kPa) => {
  const said = steady({ engine_rpm, temperature_C, line_kPa, clutch_kPa, applied: [circuit] });
  expect(read(id)).toBeCloseTo(said.circuits[circuit]?.pressure_kPa ?? Number.NaN, 6);
});

test.each([700, 1500])('the cooler at %d rpm, in Park at 600 kPa', (engine_rpm) => {
  const said = steady({
    engine_rpm,
    temperature_C: 95,
    line_kPa: 600,
    clutch_kPa: 400,
    applied: [],
  });
  expect(read(`coolerFlow.park.${engine_rpm}.hot`)).toBeCloseTo(said.cooler_Lmin, 6);
  expect(said.cooler_Lmin).toBeGreaterThan(0);
});

test('air: what is held of the supply [%]', () => {
  for (const target of ['forward', 'reverse', 'high', 'transferSeal'] as const)
    expect(read(`airTest.${target}`)).toBeCloseTo(100 * airHeld(plant, target), 9);
});

test('the cup in ln cSt, thinned by what thins the fluid; the sensor at rest in rpm', () => {
  expect(read('fluidCup')).toBeCloseTo(Math.log(training.fluid.kv40CSt), 9);
  const thin = applyFaults(training, { thinFluid: { severity: 1 } });
  expect(readSubject({ ...subject, plant: thin }, numeric('fluidCup'))).toBeCloseTo(
    Math.log(training.fluid.kv40CSt * thin.viscosityFactor),
    9,
  );
  expect(read('engineOffTurbine')).toBe(0);
  const lies = applyFaults(training, { turbineSensor: { severity: 1 } });
  expect(readSubject({ ...subject, plant: lies }, numeric('engineOffTurbine'))).toBe(
    lies.turbineSensorRestRpm,
  );
  expect(stopTime({ ...subject, plant: lies }, numeric('stopTime.drive.hot'))).toBe(HELD_S);
});

describe('how warm it truly is, and how fast the engine turns', () => {
  test('moves what is read at that warmth, and nothing else', () => {
    const warmer = { warmth: { ...nominalWarmth, hot: 98 } };
    expect(read('clutch.forward.700.hot', warmer)).toBeLessThan(read('clutch.forward.700.hot'));
    expect(read('clutch.forward.700.cold', warmer)).toBe(read('clutch.forward.700.cold'));
    const said = steady({
      engine_rpm: 700,
      temperature_C: 98,
      line_kPa: 600,
      clutch_kPa: 400,
      applied: ['forward'],
    });
    expect(read('clutch.forward.700.hot', warmer)).toBeCloseTo(
      said.circuits['forward']?.pressure_kPa ?? NaN,
      6,
    );
  });
  test('a faster engine moves more', () => {
    const said = steady({
      engine_rpm: 721,
      temperature_C: 95,
      line_kPa: 600,
      clutch_kPa: 400,
      applied: [],
    });
    expect(read('coolerFlow.park.700.hot', { engineFactor: 1.03 })).toBeCloseTo(
      said.cooler_Lmin,
      6,
    );
  });
});

describe('until the turbine stands', () => {
  const log = (...rows: readonly (readonly [time: number, rpm: number])[]): EngagementTrace =>
    ({
      time: Float64Array.from(rows, ([time]) => time),
      turbineRpm: Float64Array.from(rows, ([, rpm]) => rpm),
    }) as never;
  test('under 30 rpm, between two rows, from the selection at half a second', () => {
    expect([SELECT_S, HELD_S, LONGEST_STOP]).toEqual([0.5, 5, 2.5]);
    // From 40 to 20 it goes through 30 half way: at 1.25 s, 0.75 after selection.
    expect(stoppedIn(log([0, 700], [0.5, 700], [1.2, 40], [1.3, 20], [1.4, 0]))).toBeCloseTo(
      0.75,
      12,
    );
    // Exactly 30 is not under it.
    expect(stoppedIn(log([0, 700], [1, 30], [2, 30], [3, 0]))).toBeCloseTo(1.5, 12);
    expect(stoppedIn(log([0, 700], [1, 300], [6, 200]))).toBe(5);
  });
  test('what stands before selection does not count', () => {
    expect(stoppedIn(log([0, 0], [0.4, 10], [0.6, 700], [1.5, 50], [1.6, 10]))).toBeCloseTo(
      1.05,
      12,
    );
  });
  test('with the brake held to the end nothing pulls away', () => {
    const trace = heldTrace(subject, numeric('stopTime.drive.hot'));
    expect(trace.time.at(-1)).toBeCloseTo(5.5, 9);
    expect(Math.max(...trace.vehicleSpeed)).toBe(0);
    expect(read('stopTime.drive.hot')).toBe(stoppedIn(trace));
    // Reverse has a clutch of its own.
    expect(read('stopTime.reverse.hot')).not.toBe(read('stopTime.drive.hot'));
  });
});

describe('the slip of a take-off', () => {
  test('is the most from a second after the brake is off, in ln(slip + 30)', () => {
    for (const range of ['drive', 'reverse'] as const) {
      const said = answer({
        ...{ kind: 'engagement', temperature_C: 95, range, faults },
        rangeSelection: 'electronic',
      }) as unknown as Readonly<Record<'time_s' | 'turbine_rpm' | 'output_rpm', readonly number[]>>;
      // Ratios of the training transmission: 4 in first, 3.4 in Reverse.
      const ratio = range === 'drive' ? 4 : 3.4;
      const slip = said.turbine_rpm
        .map((turbine, i) => turbine - ratio * Math.abs(said.output_rpm[i] ?? 0))
        .filter((_, i) => (said.time_s[i] ?? 0) >= 4 - 1e-9);
      expect(slip.length).toBeGreaterThan(100);
      const most = Math.max(...slip.map(Math.abs));
      expect(read(`takeoffSlip.${range}.hot`)).toBeCloseTo(Math.log(most + 30), 2);
    }
  });
});
