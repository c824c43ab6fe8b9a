import { describe, expect, it } from 'vitest';
import { Stepper } from '../../../src/engine/numerics/rosenbrock.ts';
import type { TimeSlope } from '../../../src/engine/numerics/rosenbrock.ts';

const LAMBDA = 1e4;

/** Prothero and Robinson's problem (Mathematics of Computation 28, 1974): stiff, driven by time, and its solution is cos t. */
function march(relative: number, timeSlope: TimeSlope) {
  const work = { steps: 0, rejected: 0, evaluations: 0 };
  const stepper = new Stepper(
    {
      rhs: (time, y, out) => {
        out[0] = -LAMBDA * ((y[0] ?? Number.NaN) - Math.cos(time)) - Math.sin(time);
      },
      timeSlope,
    },
    { time: 0, state: Float64Array.of(1) },
    { relative, absolute: Float64Array.of(1e-12), maxStep: 1 },
    work,
  );
  let worst = 0;
  while (stepper.time < 10) {
    const step = stepper.advance(10);
    if (step === 'failed') throw new Error('it failed');
    worst = Math.max(worst, Math.abs((step.y1[0] ?? Number.NaN) - Math.cos(step.t1)));
  }
  return { worst, ...work };
}

// d/dt of the right-hand side at a held state.
const exact: TimeSlope = (time, _y, out) => {
  out[0] = -LAMBDA * Math.sin(time) - Math.cos(time);
};
const forgotten: TimeSlope = (_time, _y, out) => {
  out[0] = 0;
};

describe('a stiff law that time drives', () => {
  it.each([1e-3, 1e-5, 1e-7])('is followed within ten times the tolerance %d', (relative) => {
    expect(march(relative, exact).worst).toBeLessThan(10 * relative);
  });
  it('takes few steps, although its own time constant is a tenth of a millisecond', () => {
    // An explicit method needs its step below 2 / lambda: 50,000 of them.
    expect(march(1e-5, exact).steps).toBeLessThan(500);
  });
  it('and costs many times as many where the slope with time is left out, so that this test would notice', () => {
    expect(march(1e-5, forgotten).evaluations).toBeGreaterThan(3 * march(1e-5, exact).evaluations);
  });
});
