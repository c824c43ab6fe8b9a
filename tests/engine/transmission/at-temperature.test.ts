import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  applyFaults,
  atTemperature,
  fluidClasses,
  hardLipGap,
  makeFluid,
  solveSteady,
  training,
} from '../../../src/engine/index.ts';
import { SEED, severity, soundPlants, tempsC } from '../arbitraries.ts';

const runs = { seed: SEED, numRuns: 500 };

/** Expected figures: section 10 of the paper, read by hand off its two straight lines. */
describe('a hardened lip', () => {
  it.each([
    [-30, 0.25],
    [0, 0.25],
    [15, 0.195],
    [30, 0.14],
    [45, 0.085],
    [60, 0.03],
    [140, 0.03],
  ])('at %d C leaves %d mm when hardened through, and half of it at half', (tempC, mm) => {
    expect(hardLipGap(1, tempC)).toBeCloseTo(mm / 1e3, 12);
    expect(hardLipGap(0.5, tempC)).toBeCloseTo(mm / 2e3, 12);
    expect(hardLipGap(0, tempC)).toBe(0);
  });
  it('never leaves less when colder or harder', () => {
    fc.assert(
      fc.property(severity, severity, tempsC, tempsC, (h1, h2, t1, t2) => {
        const most = hardLipGap(Math.max(h1, h2), Math.min(t1, t2));
        return most >= hardLipGap(Math.min(h1, h2), Math.max(t1, t2));
      }),
      runs,
    );
  });
  it('hurts its own circuit, cold more than warm, and no other', () => {
    const plant = applyFaults(training, { hardLip: { severity: 1, circuit: 'high' } });
    const at = (which: typeof training, circuit: 'forward' | 'high', tempC: number) =>
      solveSteady({
        plant: which,
        fluid: makeFluid(fluidClasses['low-viscosity']),
        tempC,
        engineSpeed: 700 / 60,
        lineCommand: 600e3,
        clutchCommand: 400e3,
        applied: [circuit],
      }).circuits[circuit]?.pressure ?? Number.NaN;
    const short = (tempC: number) => at(training, 'high', tempC) - at(plant, 'high', tempC);
    expect(short(0)).toBeGreaterThan(30 * short(80));
    expect(short(80)).toBeGreaterThan(0);
    expect(at(plant, 'forward', 0)).toBe(at(training, 'forward', 0));
  });
});

describe('a fading valve', () => {
  it.each([
    [-30, 1],
    [40, 1],
    [55, 0.85],
    [70, 0.7],
    [100, 0.4],
    [140, 0.4],
  ])('at %d C holds %d of its command at the worst', (tempC, share) => {
    const worst = applyFaults(training, { clutchControl: { severity: 1, circuit: 'reverse' } });
    expect(atTemperature(worst, tempC).valveHolds.reverse).toBeCloseTo(share, 12);
    expect(atTemperature(worst, tempC).valveHolds.forward).toBe(1);
  });
  it('is a clutch that was commanded less: to the last bit', () => {
    const worst = applyFaults(training, { clutchControl: { severity: 0.5 } });
    const asked = {
      fluid: makeFluid(fluidClasses['low-viscosity']),
      engineSpeed: 12,
      lineCommand: 600e3,
      applied: ['forward'] as const,
      tempC: 100,
    };
    const faded = solveSteady({ ...asked, plant: worst, clutchCommand: 400e3 });
    const asLittle = solveSteady({ ...asked, plant: training, clutchCommand: 280e3 });
    expect(faded.circuits).toEqual(asLittle.circuits);
    expect(faded.linePressure).toBe(asLittle.linePressure);
  });
});

it('a plant with neither fault is itself, at any temperature', () => {
  fc.assert(
    fc.property(soundPlants, tempsC, (plant, tempC) => atTemperature(plant, tempC) === plant),
    { ...runs, numRuns: 100 },
  );
});
