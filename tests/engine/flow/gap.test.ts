import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { fluidAt, gapFlow, holeFlow } from '../../../src/engine/index.ts';
import { SEED, even, fluids, tempsC } from '../arbitraries.ts';

const runs = { seed: SEED, numRuns: 1000 };
const gaps = fc.record({ width: even(1e-3, 1), height: even(1e-6, 1e-3), length: even(1e-4, 0.1) });

describe('gap and hole', () => {
  it('flow back as they flow forth', () => {
    fc.assert(
      fc.property(gaps, fluids, tempsC, even(0, 3e6), (gap, fluid, tempC, dp) => {
        const state = fluidAt(fluid, tempC);
        const forth = gapFlow(gap, dp, state);
        const back = gapFlow(gap, -dp, state);
        expect(back.flow).toBeCloseTo(-forth.flow, 30);
        expect(back.reynolds).toBe(forth.reynolds);
        expect(back.viscousShare).toBe(forth.viscousShare);
        const hole = (by: number) => holeFlow(1e-6, by, state.density, state.kinematic);
        expect(hole(-dp) + hole(dp)).toBe(0);
      }),
      runs,
    );
  });

  it('pass nothing without pressure, without height, without width', () => {
    const state = { density: 850, dynamic: 0.01 };
    expect(gapFlow({ width: 1, height: 1e-4, length: 0.01 }, 0, state).flow).toBe(0);
    expect(gapFlow({ width: 1, height: 0, length: 0.01 }, 1e6, state).flow).toBe(0);
    expect(gapFlow({ width: 0, height: 1e-4, length: 0.01 }, 1e6, state).flow).toBe(0);
    expect(holeFlow(1e-6, 0, 850, 1e-5)).toBe(0);
    expect(holeFlow(0, 1e6, 850, 1e-5)).toBe(0);
  });

  it('a gap obeys its own equation: slot drop and end drop add up to the pressure', () => {
    fc.assert(
      fc.property(gaps, fluids, tempsC, even(1, 3e6), (gap, fluid, tempC, dp) => {
        const state = fluidAt(fluid, tempC);
        const { flow, viscousShare, reynolds } = gapFlow(gap, dp, state);
        const { width: w, height: h, length } = gap;
        const slot = (12 * state.dynamic * length * flow) / (w * h * h * h);
        const ends = ((1.5 * state.density) / 2) * (flow / (w * h)) ** 2;
        // A quadratic solved in doubles: a dozen roundings.
        expect(Math.abs(slot + ends - dp)).toBeLessThanOrEqual(1e-12 * dp);
        expect(Math.abs(viscousShare - slot / dp)).toBeLessThanOrEqual(1e-12);
        expect(reynolds).toBeCloseTo((2 * flow) / (w * (state.dynamic / state.density)), 6);
      }),
      runs,
    );
  });
});

describe('the viscous share', () => {
  // From a gap that sets like glue to one that is hardly there: where R overflows, a share of it must not.
  const extreme = fc.record({
    width: fc.double({ min: 0, max: 10, noNaN: true }),
    height: fc.double({ min: 0, max: 0.01, noNaN: true }),
    length: fc.double({ min: 1e-5, max: 10, noNaN: true }),
  });
  const dps = fc.double({ min: -1e8, max: 1e8, noNaN: true });
  it('is a share: a number from 0 to 1 for any gap that may be typed, and so are flow and Reynolds number', () => {
    fc.assert(
      fc.property(extreme, fluids, tempsC, dps, (gap, fluid, tempC, dp) => {
        const { flow, reynolds, viscousShare } = gapFlow(gap, dp, fluidAt(fluid, tempC));
        expect(viscousShare).toBeGreaterThanOrEqual(0);
        expect(viscousShare).toBeLessThanOrEqual(1);
        expect(Number.isFinite(flow) && Number.isFinite(reynolds)).toBe(true);
      }),
      { ...runs, numRuns: 5000 },
    );
  });
  it.each([1e-5, 1e-60, 1e-110, 1e-200, 5e-324])('tends to 1 as the gap closes: %d m', (height) => {
    const gap = { width: 0.014, height, length: 0.003 };
    const { viscousShare, flow } = gapFlow(gap, 4e5, { density: 850, dynamic: 0.07 });
    expect(viscousShare).toBeGreaterThan(0.999);
    expect(viscousShare).toBeLessThanOrEqual(1);
    expect(Number.isFinite(flow)).toBe(true);
  });
});
