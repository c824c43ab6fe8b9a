import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  FAULT_IDS,
  applyFaults,
  clutchPressureFor,
  clutchTorque,
  faultAmount,
  faultSpan,
  faultSeverity,
  findRoot,
  fluidAt,
  fluidClasses,
  gapFlow,
  gearbox,
  holeFlow,
  makeFluid,
  solveSteady,
} from '../../src/engine/index.ts';
import { SEED, fluids, severity, tempsC } from './arbitraries.ts';

const runs = { seed: SEED, numRuns: 1000 };
const even = (min: number, max: number) =>
  fc.integer({ min: 0, max: 1e9 }).map((step) => min + ((max - min) * step) / 1e9);
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

describe('clutch', () => {
  it('torque and pressure are each other backward', () => {
    fc.assert(
      fc.property(even(0, 1e4), even(0.3, 1), (torque, friction) => {
        const clutch = {
          ...gearbox.clutches.forward,
          friction: gearbox.clutches.forward.friction * friction,
        };
        const back = clutchTorque(clutch, clutchPressureFor(clutch, torque));
        // The spring force is subtracted again: rounding of some hundred newtons.
        expect(Math.abs(back - torque)).toBeLessThanOrEqual(1e-9 + 1e-12 * torque);
      }),
      runs,
    );
  });
  it('holds nothing until its spring is overcome', () => {
    const release = gearbox.clutches.forward.springForce / gearbox.clutches.forward.area;
    expect(clutchTorque(gearbox.clutches.forward, 0.999 * release)).toBe(0);
    expect(clutchTorque(gearbox.clutches.forward, 1.001 * release)).toBeGreaterThan(0);
    expect(clutchPressureFor(gearbox.clutches.forward, 0)).toBeCloseTo(release, 6);
  });
});

describe('faults', () => {
  it.each(FAULT_IDS)('%s: amount and severity are each other backward, ends as tabled', (id) => {
    const { healthy, worst } = faultSpan(id);
    expect(faultAmount(id, 0)).toBe(healthy);
    expect(faultAmount(id, 1)).toBeCloseTo(worst, 12);
    if (id === 'turbineSensor') return;
    fc.assert(
      fc.property(severity, (value) => {
        expect(faultSeverity(id, faultAmount(id, value))).toBeCloseTo(value, 9);
      }),
      { ...runs, numRuns: 50 },
    );
  });

  it.each(FAULT_IDS)('%s at 0 is the healthy gearbox', (id) => {
    const healthy = applyFaults(gearbox, { [id]: { severity: 0 } });
    const ask = (plant: typeof gearbox) =>
      solveSteady({
        plant,
        fluid: makeFluid(fluidClasses.standard),
        tempC: 90,
        engineSpeed: 12,
        lineCommand: 6e5,
        clutchCommand: 4e5,
        applied: ['forward', 'high'],
      });
    const from = ask(healthy);
    const to = ask(gearbox);
    expect(from.linePressure).toBe(to.linePressure);
    expect(from.circuits.forward?.pressure).toBeCloseTo(to.circuits.forward?.pressure ?? -1, 4);
  });

  it('leave the gearbox they were given alone', () => {
    const before = structuredClone(gearbox);
    applyFaults(gearbox, Object.fromEntries(FAULT_IDS.map((id) => [id, { severity: 1 }])));
    expect(gearbox).toEqual(before);
  });
});

describe('root finder', () => {
  it('lands on the root of any cubic it brackets, within its bound', () => {
    fc.assert(
      fc.property(even(-1, 1), even(0, 3), (root, slope) => {
        const f = (x: number) => (x - root) * (1 + slope * (x - root) * (x - root));
        const found = findRoot(f, -2, 2.5);
        expect(found.converged).toBe(true);
        expect(Math.abs(found.root - root)).toBeLessThanOrEqual(1e-15);
        expect(found.iterations).toBeLessThanOrEqual(60);
      }),
      runs,
    );
  });
  it('says so when there is nothing between its ends', () => {
    expect(findRoot((x) => x * x + 1, -1, 2).converged).toBe(false);
  });
});
