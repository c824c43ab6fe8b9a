import fc from 'fast-check';
import { describe, expect, it, test } from 'vitest';
import {
  fallsIn,
  LIVE_RECORDINGS,
  recordingOf,
  standsAfter,
  STANDS_RPM,
  type LiveCar,
} from '../../src/car/live-cars.ts';
import { engage, makeCar } from '../../src/car/index.ts';
import { recordSome } from '../../src/car/record.ts';
import { bringRecordings, recipes } from '../../src/car/recordings.ts';
import { STOPPED_BELOW_RPM } from '../../src/log/dropouts.ts';
import { findSelections } from '../../src/log/selections.ts';
import { stopTime } from '../../src/log/stop-time.ts';
import { sameRows, selectedAt, taken } from '../../src/log/taken.ts';

bringRecordings(recordSome(LIVE_RECORDINGS));

const STOPPING = LIVE_RECORDINGS.filter((car) => car !== 'crack25');
const log = (car: LiveCar, interval: number, late: number) =>
  taken({ car, interval, late, lasts: 3, range: true });
function stopOf(car: LiveCar, interval: number, late: number) {
  const series = log(car, interval, late);
  const [selection] = findSelections(series, series.turbine);
  if (!selection) throw new Error('There is no selection in this log.');
  const stop = stopTime(series, series.turbine, selection);
  if (stop.kind !== 'stopped') throw new Error(`It ${stop.kind}.`);
  return stop;
}

test('a shaft stands below the same speed here and in the log reader', () => {
  expect(STANDS_RPM).toBe(STOPPED_BELOW_RPM);
});

// The same engagement solved again, with a row every millisecond; the recordings have one every ten.
test.each(STOPPING)('%s stands when the engine says', (car) => {
  const recipe = recipes[recordingOf(car)];
  const { trace } = engage(makeCar(recipe), { tempC: recipe.tempC, outputStep: 0.001 });
  const row = trace.turbineRpm.findIndex((rpm, i) => (trace.time[i] ?? 0) > 0.5 && rpm < 30);
  const solved = (trace.time[row] ?? Number.NaN) - 0.5;
  expect(Math.abs((standsAfter(car) ?? 0) - solved)).toBeLessThan(0.005);
});

// A crack of 0.25 mm never lets the clutch hold, by the same engagement solved with a controller that may act.
test('crack25 never stands, and says so', () => {
  const { tempC, crackMm = 0 } = recipes.crack25;
  expect(engage(makeCar({ crackMm }), { tempC }).stoppedAfter).toBeNull();
  expect(standsAfter('crack25')).toBeNull();
  expect(() => fallsIn('crack25')).toThrow('The turbine of crack25 does not stand.');
});

describe('a stop read off rows', () => {
  it('lies in its interval, which is two steps wide, one for each end', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...STOPPING),
        fc.double({ min: 0.01, max: 0.5, noNaN: true }),
        fc.double({ min: 0, max: 0.99, noNaN: true }),
        (car, interval, late) => {
          const { after } = stopOf(car, interval, late);
          const truth = standsAfter(car) ?? Number.NaN;
          expect(after.low).toBeLessThanOrEqual(truth + 1e-6);
          expect(after.high).toBeGreaterThanOrEqual(truth - 1e-6);
          expect(after.high - after.low).toBeCloseTo(2 * interval, 6);
        },
      ),
    );
  });

  // JCGM 100:2008 (GUM) 4.3.7, from memory: with the moment even over one step the error has the spread step/√12.
  it.each([0.5, 0.1])(
    'has one end spread as a rectangular distribution, a row every %f s',
    (step) => {
      const truth = standsAfter('hot') ?? Number.NaN;
      const tried = 400;
      const errors = Array.from({ length: tried }, (_, i) => {
        const late = (i + 0.5) / tried;
        const shown = stopOf('hot', step, late).at - selectedAt({ interval: step, late });
        return shown - truth;
      });
      const mean = errors.reduce((sum, one) => sum + one, 0) / tried;
      const variance = errors.reduce((sum, one) => sum + (one - mean) ** 2, 0) / tried;
      expect(Math.min(...errors)).toBeGreaterThanOrEqual(-1e-6);
      expect(Math.max(...errors)).toBeLessThanOrEqual(step + 1e-6);
      expect(Math.abs(mean - step / 2)).toBeLessThan(0.01 * step);
      expect(Math.abs(Math.sqrt(variance) - step / Math.sqrt(12))).toBeLessThan(0.01 * step);
    },
  );
});

describe('two cars with one log', () => {
  it('gives the healthy car and the one with worn plates the same rows at two readings a second', () => {
    const healthy = log('hot', 0.5, 0.9);
    const [late = Number.NaN] = sameRows(
      healthy,
      { car: 'hot', interval: 0.5, late: 0.9, lasts: 3, range: true },
      'friction',
    );
    const worn = log('friction', 0.5, late);
    // Value for value, as far as both run free or stand: not by the tolerance of the search.
    expect(worn.turbine).toEqual(healthy.turbine);
    expect(worn.range).toEqual(healthy.range);
    expect(standsAfter('friction') ?? 0).toBeGreaterThan(1.5 * (standsAfter('hot') ?? 9));
  });

  it('tells them apart at ten, wherever the rows fall', () => {
    for (let late = 0; late < 1; late += 0.05) {
      const taking = { car: 'hot', interval: 0.1, late, lasts: 3, range: true } as const;
      expect(sameRows(taken(taking), taking, 'friction')).toEqual([]);
      // By hand: one ends before the other begins.
      expect(stopOf('hot', 0.1, late).after.high).toBeLessThan(1.2);
      expect(stopOf('friction', 0.1, late).after.low).toBeGreaterThanOrEqual(1.2);
    }
  });
});

// What the lesson warns of: a real turbine takes 0.2 to 0.6 s (common practice, no source).
test('the model pulls its turbine down quicker than a controller would', () => {
  expect(fallsIn('hot')).toBeGreaterThan(0.05);
  expect(fallsIn('hot')).toBeLessThan(0.2);
});
