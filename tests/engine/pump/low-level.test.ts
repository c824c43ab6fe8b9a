import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  airDrawn,
  applyFaults,
  densityRatio,
  fluidClasses,
  makeFluid,
  solveSteady,
  training,
} from '../../../src/engine/index.ts';
import { SEED, even } from '../arbitraries.ts';

const sump = { fill: 8e-3, spare: 0.5e-3, pullDown: 0.25e-6 };
const fluid = makeFluid(fluidClasses['low-viscosity']);

describe('air from a low level', () => {
  // By hand after the paper's section 3: air = clamp(300 (missing - margin), 0, 0.9), margin 0.5 L + 8 L (swell - 1) -
  // 0.25 L a 1000 rpm, in litres here.
  it.each([
    ['nothing missing', 0, 4000, 1, 0],
    ['half a litre, standing', 0.5, 0, 1, 0],
    ['one litre, standing', 1, 0, 1, 0.15],
    ['one litre at 1000 rpm', 1, 1000, 1, 0.225],
    ['one litre at 1000 rpm, swollen by a sixteenth', 1, 1000, 1.0625, 0.075],
    ['the margin cannot be less than none', 1, 8000, 1, 0.3],
    ['and air is 0.9 at the most', 6, 4000, 1, 0.9],
  ])('%s', (_what, litres, engineRpm, swell, air) => {
    expect(airDrawn(sump, litres / 1e3, { engineRpm, swell })).toBeCloseTo(air, 12);
  });

  it('is more with more missing, more speed, and colder', () => {
    const litres = even(0, 3e-3);
    const rpms = even(0, 6000);
    const swells = even(0.97, 1.1);
    fc.assert(
      fc.property(litres, litres, rpms, rpms, swells, swells, (m1, m2, n1, n2, s1, s2) => {
        const [low, high] = [Math.min, Math.max];
        const little = airDrawn(sump, low(m1, m2), { engineRpm: low(n1, n2), swell: high(s1, s2) });
        const much = airDrawn(sump, high(m1, m2), { engineRpm: high(n1, n2), swell: low(s1, s2) });
        return little >= 0 && much <= 0.9 && much >= little;
      }),
      { seed: SEED, numRuns: 1000 },
    );
  });

  it('eight litres swell half a litre from 20 to 100 C', () => {
    expect(8 * (densityRatio(fluid, 20, 100) - 1)).toBeGreaterThan(0.45);
    expect(8 * (densityRatio(fluid, 20, 100) - 1)).toBeLessThan(0.55);
  });
});

describe('a low level in the transmission', () => {
  const at = (litres: number, tempC: number, rpm: number, line = 600e3) =>
    solveSteady({
      plant: applyFaults(training, { lowFluid: { severity: litres / 3 } }),
      fluid,
      tempC,
      engineSpeed: rpm / 60,
      lineCommand: line,
      clutchCommand: line - 200e3,
      applied: ['forward'],
    });
  it('draws air cold before it does hot, and with speed before it does at idle', () => {
    expect(at(0.8, 0, 700).air).toBeGreaterThan(at(0.8, 60, 700).air);
    expect(at(0.8, 60, 2500).air).toBeGreaterThan(at(0.8, 60, 700).air);
    expect(at(0.8, 60, 700).air).toBeGreaterThan(0);
    expect(at(0.8, 100, 700).air).toBe(0);
  });
  it('shows first in what returns from the cooler, then in Reverse at hot idle, then everywhere', () => {
    const drive = (litres: number) => at(litres, 90, 700);
    const reverse = (litres: number) => at(litres, 90, 700, 780e3);
    expect(drive(1.2).coolerFlow).toBeLessThan(0.7 * drive(0).coolerFlow);
    expect([drive(1.2).lineAtCommand, reverse(1.2).lineAtCommand]).toEqual([true, true]);
    expect([drive(1.8).lineAtCommand, reverse(1.8).lineAtCommand]).toEqual([true, false]);
    expect([drive(2.4).lineAtCommand, reverse(2.4).lineAtCommand]).toEqual([false, false]);
  });
});
