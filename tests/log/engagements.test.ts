// Detection against engagements of the engine, whose true times are known, sampled in many ways.
import fc from 'fast-check';
import { describe, expect, it, test } from 'vitest';
import { engage, makeCar } from '../../src/car/index.ts';
import { analyse, bandOf, diagnosisReadings, type Series } from '../../src/log/index.ts';
import { logRead } from './read-log.ts';

const RATIOS = { drive: 4, reverse: 3.4 };
const solvedCold = engage(makeCar({}), { tempC: 20, outputStep: 0.001 });
const solvedHot = engage(makeCar({ crackMm: 0.25 }), { tempC: 100, outputStep: 0.001 });

/** When the turbine first turns slower than 30 rpm, after selection at 0.5 s, to a millisecond. */
function trueStop({ trace }: typeof solvedCold): number {
  const row = trace.turbineRpm.findIndex((rpm, i) => (trace.time[i] ?? 0) > 0.5 && rpm < 30);
  return (trace.time[row] ?? Number.NaN) - 0.5;
}

/** The engagement as a tool samples it: every so often, from a phase on, perhaps holding each reading for some rows. */
function sampled(
  { trace }: typeof solvedCold,
  {
    step,
    phase,
    hold = 1,
    range = true,
  }: { step: number; phase: number; hold?: number; range?: boolean },
): Series {
  const rows: number[] = [];
  for (let t = phase; t <= 7; t += step) rows.push(Math.round(t * 1000));
  const held = (column: Float64Array) =>
    Float64Array.from(rows, (_, i) => column[rows[i - (i % hold)] ?? 0] ?? 0);
  return {
    time: Float64Array.from(rows, (row) => row / 1000),
    engine: held(trace.engineRpm),
    turbine: held(trace.turbineRpm),
    output: held(trace.outputRpm),
    temperature: Float64Array.from(rows, () => 20),
    throttle: Float64Array.from(rows, (row) => (trace.throttle[row] ?? 0) * 100),
    brake: Float64Array.from(rows, (row) => (row < 3000 ? 1 : 0)),
    ...(range && { range: Uint8Array.from(rows, (row) => (row < 500 ? 1 : 4)) }),
    untimed: 0,
    doubled: 0,
  };
}

test('the true time to stop lies in the interval, at any rate and phase', () => {
  const truth = trueStop(solvedCold);
  fc.assert(
    fc.property(
      fc.double({ min: 0.01, max: 1, noNaN: true }),
      fc.double({ min: 0, max: 1, noNaN: true }),
      fc.integer({ min: 1, max: 3 }),
      (step, part, hold) => {
        // The range is read with every row; the speeds may be repeated for up to three.
        const series = sampled(solvedCold, { step, phase: part * Math.min(step, 0.49), hold });
        const [read] = analyse(series, RATIOS).engagements;
        if (read?.stop.kind !== 'stopped') {
          // So coarse that the car had driven off before a reading told.
          expect(step * hold).toBeGreaterThan(0.8);
          return;
        }
        const { low, high } = read.stop.after;
        expect(low).toBeLessThanOrEqual(truth + 1e-3);
        // A held reading can be old: the first one under 30 was taken at its own row, so high holds all the same.
        expect(high).toBeGreaterThanOrEqual(truth - 1e-3);
      },
    ),
    { numRuns: 200 },
  );
});

test('a car that does not hold hot is seen not to stop, and to slip', () => {
  const [read] = analyse(sampled(solvedHot, { step: 0.05, phase: 0 }), RATIOS).engagements;
  expect(read?.stop).toMatchObject({ kind: 'notStopped' });
  // The engine's own events, from its own controller every 10 ms.
  const own = solvedHot.events.map(({ event, time }) => [event, time] as const);
  const at = (event: string) => own.find(([name]) => name === event)?.[1] ?? Number.NaN;
  const seen = (event: string) =>
    read?.watched.events.find((one) => one.event === event)?.time ?? Number.NaN;
  // A reading every 50 ms can be late by one step at each of the two timers' ends.
  expect(seen('engagement not finished')).toBeCloseTo(at('engagement not finished'), 0.9);
  expect(Math.abs(seen('pressure raised') - at('pressure raised'))).toBeLessThan(0.15);
  expect(Math.abs(seen('code stored') - at('code stored'))).toBeLessThan(0.25);
});

test('the largest slip of a triangle lies between what is printed', () => {
  fc.assert(
    fc.property(
      fc.double({ min: 0.02, max: 0.3, noNaN: true }),
      fc.double({ min: 0, max: 1, noNaN: true }),
      fc.double({ min: 1.6, max: 3.2, noNaN: true }),
      (step, part, top) => {
        // Slip rises and falls by 500 rpm a second about `top` seconds after the brake; output turns at 300 rpm.
        const rows = Array.from({ length: Math.floor(9 / step) }, (_, i) => (i + part) * step);
        const slip = (t: number) => Math.max(0, 900 - 500 * Math.abs(t - 3 - top));
        const series: Series = {
          time: Float64Array.from(rows),
          turbine: Float64Array.from(rows, (t) => (t < 1 ? 700 : t < 3 ? 0 : 1200 + slip(t))),
          output: Float64Array.from(rows, (t) => (t < 3 ? 0 : 300)),
          range: Uint8Array.from(rows, (t) => (t < 0.5 ? 1 : 4)),
          brake: Float64Array.from(rows, (t) => (t < 3 ? 1 : 0)),
          untimed: 0,
          doubled: 0,
        };
        const [read] = analyse(series, RATIOS).engagements;
        if (read?.slip.kind !== 'measured') throw new Error('not measured');
        expect(read.slip.between.low).toBeLessThanOrEqual(900 + 1e-6);
        expect(read.slip.between.high).toBeGreaterThanOrEqual(900 - 1e-6);
      },
    ),
    { numRuns: 200 },
  );
});

describe('without a range in the log', () => {
  const read = analyse(sampled(solvedCold, { step: 0.05, phase: 0, range: false }), RATIOS);
  it('the turbine’s fall is found', () => {
    expect(read.engagements.length).toBe(1);
    expect(read.engagements[0]?.selection).toMatchObject({ by: 'turbine', range: 'unknown' });
    expect(read.engagements[0]?.stop.kind).toBe('stopped');
  });
  it('its time is shorter than the true one, is no reading, and that is said', () => {
    const stop = read.engagements[0]?.stop;
    expect(stop?.kind === 'stopped' && stop.after.low).toBeLessThan(trueStop(solvedCold));
    expect(diagnosisReadings(read.engagements)).toEqual([]);
    expect(read.blind).toContainEqual({ kind: 'noRange' });
  });
  it('coming to a stop in gear is no engagement', () => {
    const rows = Array.from({ length: 100 }, (_, i) => i / 10);
    const output = Float64Array.from(rows, (t) => Math.max(0, 400 - 80 * t));
    const series: Series = {
      time: Float64Array.from(rows),
      turbine: output.map((rpm) => 4 * rpm),
      output,
      untimed: 0,
      doubled: 0,
    };
    expect(analyse(series, RATIOS).engagements).toEqual([]);
  });
});

const HEAD = 'Time (s),Turbine (rpm),Output (rpm),Range,Fluid temp (°C)';
const row = (t: number, turbine: number | string, output: number, range: string, temp = '95') =>
  [t.toFixed(1), turbine, output, range, temp].join(',');
const standing = (range: (t: number) => string, turbine: (t: number) => number | string, end = 8) =>
  [
    HEAD,
    ...Array.from({ length: end * 10 }, (_, i) => row(i / 10, turbine(i / 10), 0, range(i / 10))),
  ].join('\n');

describe('a lever', () => {
  it('that passes through Reverse on its way is no engagement in Reverse', () => {
    const { engagements } = logRead(
      standing(
        (t) => (t < 2 ? 'P' : t < 2.4 ? 'R' : t < 2.6 ? 'N' : 'D'),
        (t) => (t < 3.2 ? 700 : 0),
      ),
    );
    expect(engagements.map(({ selection }) => selection.range)).toEqual(['drive']);
  });
  it('whose column says nothing for a row keeps its range', () => {
    const { engagements } = logRead(
      standing(
        (t) => (t < 2 ? 'P' : Math.round(t * 10) % 7 === 0 ? '---' : 'D'),
        (t) => (t < 2.7 ? 700 : 0),
      ),
    );
    expect(engagements.length).toBe(1);
    expect(engagements[0]?.stop).toMatchObject({ kind: 'stopped' });
  });
});

it('a stop between 0.8 and 1.0 s is printed as that', () => {
  // Park until 1.9, gear from 2.0; turning at 2.8, standing at 2.9.
  const { engagements } = logRead(
    standing(
      (t) => (t < 1.95 ? 'N' : 'D'),
      (t) => (t < 2.85 ? 700 - t : 0),
    ),
  );
  const stop = engagements[0]?.stop;
  if (stop?.kind !== 'stopped') throw new Error('not stopped');
  expect(stop.after.low).toBeCloseTo(0.8, 9);
  expect(stop.after.high).toBeCloseTo(1.0, 9);
  expect(diagnosisReadings(engagements)).toEqual([
    { test: 'stopTime', range: 'drive', temperature_C: 95, value: 0.9 },
  ]);
});

it('one reading gone is no stop', () => {
  const { engagements, sensors } = logRead(
    standing(
      (t) => (t < 1.95 ? 'P' : 'D'),
      (t) => (Math.abs(t - 2.5) < 0.01 ? 0 : t < 3.25 ? 700 : 0),
    ),
  );
  const stop = engagements[0]?.stop;
  expect(sensors.turbineDropouts).toEqual([2.5]);
  expect(stop?.kind === 'stopped' && stop.after.high).toBeCloseTo(1.4, 9);
});

it('a gap ends an engagement: what comes after is another story', () => {
  const lines = standing(
    (t) => (t < 1.95 ? 'P' : 'D'),
    () => 700,
    3,
  ).split('\n');
  const { engagements, blind } = logRead(
    [...lines, row(30, 0, 0, 'D'), row(30.1, 0, 0, 'D')].join('\n'),
  );
  expect(engagements[0]?.stop).toMatchObject({ kind: 'cutShort' });
  expect(blind.map(({ kind }) => kind)).toContain('gaps');
});

it('one reading a second is said to be too slow, and nothing is made of the ratio check', () => {
  const { engagements, blind } = logRead(
    [
      HEAD,
      ...Array.from({ length: 12 }, (_, t) => row(t, t < 4 ? 700 : 0, 0, t < 3 ? 'P' : 'D')),
    ].join('\n'),
  );
  expect(engagements[0]?.tooSlowForRatio).toBe(true);
  expect(blind.map(({ kind }) => kind)).toEqual(
    expect.arrayContaining(['slow', 'tooSlowForRatio']),
  );
});

describe('a shift up', () => {
  // First gear 4.0 to 4.5 s after the brake lets go at 3 s, then a gear of 2.5: no slip at all.
  const rows = Array.from({ length: 120 }, (_, i) => i / 10);
  const output = (t: number) => (t < 3 ? 0 : 200 * (t - 3));
  const turbine = (t: number) => (t < 0.5 ? 700 : t < 3 ? 0 : (t < 5.5 ? 4 : 2.5) * output(t));
  const series: Series = {
    time: Float64Array.from(rows),
    turbine: Float64Array.from(rows, turbine),
    output: Float64Array.from(rows, output),
    range: Uint8Array.from(rows, (t) => (t < 0.25 ? 1 : 4)),
    brake: Float64Array.from(rows, (t) => (t < 3 ? 1 : 0)),
    untimed: 0,
    doubled: 0,
  };
  it('ends the take-off and is no slip', () => {
    const [read] = analyse(series, RATIOS).engagements;
    expect(read?.slip).toMatchObject({ kind: 'tooShort' });
    expect(read?.watched.events.map(({ event }) => event)).not.toContain('pressure raised');
  });
});

test('temperatures lie in the bands of diagnosis, or between', () => {
  expect([0, 20, 50, 95, 106].map(bandOf)).toEqual(['frost', 'cold', null, 'hot', null]);
});
