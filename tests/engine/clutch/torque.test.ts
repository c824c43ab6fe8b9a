import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { clutchPressureFor, clutchTorque, training } from '../../../src/engine/index.ts';
import { SEED, even } from '../arbitraries.ts';

const runs = { seed: SEED, numRuns: 1000 };

describe('clutch', () => {
  it('torque and pressure are each other backward', () => {
    fc.assert(
      fc.property(even(0, 1e4), even(0.3, 1), (torque, friction) => {
        const clutch = {
          ...training.clutches.forward,
          friction: training.clutches.forward.friction * friction,
        };
        const back = clutchTorque(clutch, clutchPressureFor(clutch, torque));
        // The spring force is subtracted again: rounding of some hundred newtons.
        expect(Math.abs(back - torque)).toBeLessThanOrEqual(1e-9 + 1e-12 * torque);
      }),
      runs,
    );
  });
  it('holds nothing until its spring is overcome', () => {
    const release = training.clutches.forward.springForce / training.clutches.forward.area;
    expect(clutchTorque(training.clutches.forward, 0.999 * release)).toBe(0);
    expect(clutchTorque(training.clutches.forward, 1.001 * release)).toBeGreaterThan(0);
    expect(clutchPressureFor(training.clutches.forward, 0)).toBeCloseTo(release, 6);
  });
});
