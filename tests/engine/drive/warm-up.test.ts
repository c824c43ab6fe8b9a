import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  EngineError,
  driveHeat,
  timeToReach,
  trainingLump,
  warmedTo,
} from '../../../src/engine/index.ts';
import type { Stretch } from '../../../src/engine/index.ts';
import { SEED, even } from '../arbitraries.ts';

/** The classical Runge-Kutta method on the two equations of the paper's section 9, in steps of a second. */
function marched(drive: Stretch): { fluidC: number; coolantC: number } {
  const slope = ([fluid, water]: readonly [number, number]): [number, number] => [
    (drive.heat - 26 * (fluid - drive.ambientC) + 80 * (water - fluid)) / 46e3,
    (88 - water) / 300,
  ];
  let y: [number, number] = [drive.fluidC, drive.coolantC];
  const steps = Math.max(1, Math.ceil(drive.time));
  const h = drive.time / steps;
  const moved = (by: readonly [number, number], share: number): [number, number] => [
    y[0] + share * h * by[0],
    y[1] + share * h * by[1],
  ];
  for (let step = 0; step < steps; step += 1) {
    const k1 = slope(y);
    const k2 = slope(moved(k1, 0.5));
    const k3 = slope(moved(k2, 0.5));
    const k4 = slope(moved(k3, 1));
    const mean = [0, 1].map((i) => {
      const at = (k: readonly number[]) => k[i] ?? Number.NaN;
      return (at(k1) + 2 * at(k2) + 2 * at(k3) + at(k4)) / 6;
    }) as [number, number];
    y = moved(mean, 1);
  }
  return { fluidC: y[0], coolantC: y[1] };
}

const cold = (ambientC: number, heat: number) => ({
  fluidC: ambientC,
  coolantC: ambientC,
  ambientC,
  heat,
});

describe('warm-up', () => {
  it('is what Runge and Kutta march to, for any start, heat and time', () => {
    const drives = fc.record({
      fluidC: even(-30, 130),
      coolantC: even(-30, 95),
      ambientC: even(-30, 45),
      heat: even(0, 6000),
      time: even(0, 5000),
    });
    fc.assert(
      fc.property(drives, (drive) => {
        const got = warmedTo(trainingLump, drive);
        const truth = marched(drive);
        // Steps of 1 s against time constants of 300 s and more: the method's error is below 1e-10 K.
        expect(Math.abs(got.fluidC - truth.fluidC)).toBeLessThan(1e-6);
        expect(Math.abs(got.coolantC - truth.coolantC)).toBeLessThan(1e-6);
      }),
      { seed: SEED, numRuns: 200 },
    );
  });

  it('two stretches are one: what one ends at the next begins with', () => {
    const whole = warmedTo(trainingLump, { ...cold(20, 2200), time: 1000 });
    const half = warmedTo(trainingLump, { ...cold(20, 2200), time: 500 });
    const again = warmedTo(trainingLump, { ambientC: 20, heat: 2200, time: 500, ...half });
    expect(again.fluidC).toBeCloseTo(whole.fluidC, 9);
    expect(again.coolantC).toBeCloseTo(whole.coolantC, 9);
  });

  it('idling in the yard ends near 81 C and pulling near 128 C, as the paper says', () => {
    const end = (heat: number) => warmedTo(trainingLump, { ...cold(20, heat), time: 1e6 }).fluidC;
    // By hand: (P + 26 x 20 + 80 x 88) / 106.
    expect(end(driveHeat.idling)).toBeCloseTo(8560 / 106, 9);
    expect(end(driveHeat.pulling)).toBeCloseTo(13560 / 106, 9);
    expect(Math.round(end(driveHeat.idling))).toBe(81);
    expect(Math.round(end(driveHeat.pulling))).toBe(128);
  });

  it('driving gently from 20 C reaches 74 C after a quarter of an hour, and 83 C after twenty minutes and a half', () => {
    expect(marched({ ...cold(20, 2200), time: 900 }).fluidC).toBeCloseTo(74, 0);
    const at83 = timeToReach(trainingLump, cold(20, 2200), 83) ?? Number.NaN;
    expect(marched({ ...cold(20, 2200), time: at83 }).fluidC).toBeCloseTo(83, 6);
    expect(at83 / 60).toBeCloseTo(20.5, 1);
  });

  it('a target already met takes no time, and one beyond the end is never met', () => {
    expect(timeToReach(trainingLump, cold(20, 1000), 20)).toBe(0);
    // Warmer already, and cooling: it has been there.
    expect(timeToReach(trainingLump, { ...cold(20, 0), fluidC: 90 }, 60)).toBe(0);
    expect(timeToReach(trainingLump, { ...cold(20, 0), fluidC: 90 }, 90)).toBe(0);
    expect(timeToReach(trainingLump, cold(20, 1000), 82)).toBeNull();
  });

  it('refuses the one lump its sum has no answer for', () => {
    const lump = { capacity: 106 * 300, loss: 26, exchange: 80 };
    expect(() => warmedTo(lump, { ...cold(20, 1000), time: 60 })).toThrow(EngineError);
    expect(() => warmedTo(lump, { ...cold(20, 1000), time: 60 })).toThrow(/300 s/);
  });
});
