import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  FAULT_IDS,
  applyFaults,
  faultAmount,
  faultSeverity,
  faultSpan,
  fluidClasses,
  makeFluid,
  solveSteady,
  training,
} from '../../../src/engine/index.ts';
import { SEED, severity } from '../arbitraries.ts';

const runs = { seed: SEED, numRuns: 1000 };

describe('faults', () => {
  it.each(FAULT_IDS)('%s: amount and severity are each other backward, ends as tabled', (id) => {
    const { healthy, worst } = faultSpan(id);
    expect(faultAmount(id, 0)).toBe(healthy);
    expect(faultAmount(id, 1)).toBeCloseTo(worst, 12);
    // The sensor reads falsely or it does not; all others have every amount between.
    const severities = id === 'turbineSensor' ? fc.constantFrom(0, 1) : severity;
    fc.assert(
      fc.property(severities, (value) => {
        expect(faultSeverity(id, faultAmount(id, value))).toBeCloseTo(value, 9);
      }),
      { ...runs, numRuns: 50 },
    );
  });

  it.each(FAULT_IDS)('%s at 0 is the sound transmission', (id) => {
    const healthy = applyFaults(training, { [id]: { severity: 0 } });
    const ask = (plant: typeof training) =>
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
    const to = ask(training);
    expect(from.linePressure).toBe(to.linePressure);
    expect(from.circuits.forward?.pressure).toBeCloseTo(to.circuits.forward?.pressure ?? -1, 4);
  });

  it('wear a ring from the height that it has, whatever the rings of the other circuits have', () => {
    const { reverse } = training.leaks;
    const wide = { ...reverse, rings: { ...reverse.rings, height: 30e-6 } };
    const plant = { ...training, leaks: { ...training.leaks, reverse: wide } };
    const at = (severity: number) =>
      applyFaults(plant, { sealingRings: { severity, circuit: 'reverse' } }).leaks.reverse.rings
        .height;
    // Half way from 30 um to the worst of 120 um (the model's table of faults).
    expect(at(0.5)).toBeCloseTo(75e-6, 12);
    expect(at(0)).toBeCloseTo(30e-6, 12);
  });

  it('leave the transmission they were given alone', () => {
    const before = structuredClone(training);
    applyFaults(training, Object.fromEntries(FAULT_IDS.map((id) => [id, { severity: 1 }])));
    expect(training).toEqual(before);
  });
});
