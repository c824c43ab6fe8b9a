import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  AIR_GAS_CONSTANT,
  ATMOSPHERE_PA,
  BENCH_AIR,
  airGapFlow,
  airHeld,
  airHoleFlow,
  airTest,
  applyFaults,
  fluidAt,
  fluidClasses,
  gapFlow,
  makeFluid,
  solveSteady,
  training,
} from '../../../src/engine/index.ts';
import { SEED, severity, soundPlants } from '../arbitraries.ts';

const runs = { seed: SEED, numRuns: 400 };

it('nothing flows where there is no opening, or no pressure behind it', () => {
  const supply = 2 * ATMOSPHERE_PA;
  const blown = { supply, ambient: ATMOSPHERE_PA, tempK: BENCH_AIR.tempK };
  expect(airHoleFlow(0, blown)).toBe(0);
  expect(airHoleFlow(-1e-6, blown)).toBe(0);
  expect(airHoleFlow(1e-6, { ...blown, supply: ATMOSPHERE_PA })).toBe(0);
  expect(airHoleFlow(1e-6, blown)).toBeGreaterThan(0);
});

describe('air finds cold what fluid hides', () => {
  const cold = fluidAt(makeFluid(fluidClasses['low-viscosity']), 20);
  it.each([10, 15, 20, 25])(
    'a crack of %d um: over a thousand times the flow of 20 C fluid',
    (um) => {
      const gap = { width: 0.014, height: um / 1e6, length: 3e-3 };
      // Air counted as it leaves, in free litres, as the ear and a meter on the bench have it. Thinner by 3000 times, and
      // it expands 3.7 times on the way; near the choked limit less.
      const freeDensity = ATMOSPHERE_PA / (AIR_GAS_CONSTANT * BENCH_AIR.tempK);
      const air = airGapFlow(gap, BENCH_AIR) / freeDensity;
      expect(air / gapFlow(gap, 275e3, cold).flow).toBeGreaterThan(1000);
    },
  );

  it('a split seal that costs under 5 % of pressure cold passes grams of air a second', () => {
    const plant = applyFaults(training, { transferSeal: { severity: 0.5 } });
    const request = {
      fluid: makeFluid(fluidClasses['low-viscosity']),
      tempC: 0,
      engineSpeed: 700 / 60,
      lineCommand: 600e3,
      clutchCommand: 400e3,
      applied: ['forward'] as const,
    };
    const at = (which: typeof training) =>
      solveSteady({ ...request, plant: which }).circuits.forward?.pressure ?? Number.NaN;
    expect(at(plant)).toBeGreaterThan(0.95 * at(training));
    expect(airTest(training, 'transferSeal')).toBe(0);
    expect(airTest(plant, 'transferSeal')).toBeGreaterThan(1e-3);
    // The circuit's own test does not see it: it is blown on its own.
    expect(airTest(plant, 'forward')).toBe(airTest(training, 'forward'));
  });

  it.each(['sealingRings', 'pistonSeal', 'openPort'] as const)(
    '%s shows in its own circuit and in no other',
    (id) => {
      const plant = applyFaults(training, { [id]: { severity: 0.5, circuit: 'reverse' } });
      // By hand: a sound circuit loses 0.68 g/s (10 um of rings in air). Half a fault adds 1.02 g/s through a port of 1.77 mm2,
      // 1.7 through a piston seal of 3 mm2, both choked at 0.577 g/s a mm2, and far more through the rings.
      expect(airTest(plant, 'reverse') - airTest(training, 'reverse')).toBeGreaterThan(1.01e-3);
      for (const target of ['forward', 'high', 'transferSeal'] as const) {
        expect(airTest(plant, target)).toBe(airTest(training, target));
      }
    },
  );
});

describe('more gap, more air and less held', () => {
  const touching = ['sealingRings', 'pistonSeal', 'hardLip', 'openPort', 'transferSeal'] as const;
  it.each(touching)('%s', (id) => {
    const target = id === 'transferSeal' ? 'transferSeal' : 'forward';
    fc.assert(
      fc.property(soundPlants, severity, severity, (sound, s1, s2) => {
        const at = (value: number) => applyFaults(sound, { [id]: { severity: value } });
        const [less, more] = [at(Math.min(s1, s2)), at(Math.max(s1, s2))];
        expect(airTest(more, target)).toBeGreaterThanOrEqual(airTest(less, target));
        // What is held is found to the last bits of a double.
        expect(airHeld(more, target)).toBeLessThanOrEqual(airHeld(less, target) + 1e-12);
        expect(airHeld(more, target)).toBeGreaterThanOrEqual(0);
      }),
      runs,
    );
  });

  it('what passes the tester’s hole passes the leaks: written out here once more', () => {
    // Isentropic nozzle, Cd 0.65, heat ratio 1.4, and the isothermal slot law, both as printed on the model page.
    const nozzle = (area: number, from: number, to: number) => {
      const r = Math.max(to / from, 0.5282817877);
      return (
        0.65 * area * from * Math.sqrt((7 / (287.0528 * 293.15)) * (r ** (10 / 7) - r ** (12 / 7)))
      );
    };
    const slot = (w: number, h: number, l: number, p: number) => {
      const mu = (1.458e-6 * 293.15 ** 1.5) / (293.15 + 110.4);
      const laminar = (w * h ** 3 * (p ** 2 - 101325 ** 2)) / (24 * mu * l * 287.0528 * 293.15);
      return Math.min(laminar, nozzle(w * h, p, 101325));
    };
    const holds = (leak: (p: number) => number) => {
      let [low, high] = [101325, 376325];
      for (let halving = 0; halving < 100; halving += 1) {
        const p = (low + high) / 2;
        if (nozzle((Math.PI * 1.5e-3 ** 2) / 4, 376325, p) > leak(p)) low = p;
        else high = p;
      }
      return (low - 101325) / 275e3;
    };
    const worn = (um: number) =>
      applyFaults(training, { sealingRings: { severity: (um - 25) / 95 } });
    const split = applyFaults(training, { transferSeal: { severity: 0.625 } });
    expect(airHeld(training, 'forward')).toBeCloseTo(
      holds((p) => slot(0.377, 10e-6, 2e-3, p)),
      9,
    );
    expect(airHeld(worn(44), 'forward')).toBeCloseTo(
      holds((p) => slot(0.377, 29e-6, 2e-3, p)),
      9,
    );
    expect(airHeld(split, 'transferSeal')).toBeCloseTo(
      holds((p) => slot(0.014, 0.25e-3, 3e-3, p)),
      9,
    );
    // And as the paper states them: 89, 12 and 32 %, to its whole percent.
    expect(Math.round(airHeld(training, 'forward') * 100)).toBe(89);
    expect(Math.round(airHeld(worn(44), 'forward') * 100)).toBe(12);
    expect(Math.round(airHeld(split, 'transferSeal') * 100)).toBe(32);
  });

  it('a hard lip is tested as it is at 20 C, and a fading valve is not in the test at all', () => {
    const lip = (severity: number) => applyFaults(training, { hardLip: { severity } });
    // 0.25 mm at 0 C, 0.03 at 60 C: 0.1767 mm at 20 C, as a piston seal worn by that much.
    const same = applyFaults(training, { pistonSeal: { severity: 0.1766666666666667 / 2 / 0.15 } });
    expect(airTest(lip(0.5), 'forward')).toBeCloseTo(airTest(same, 'forward'), 9);
    const fading = applyFaults(training, { clutchControl: { severity: 1 } });
    expect(airTest(fading, 'forward')).toBe(airTest(training, 'forward'));
  });
});
