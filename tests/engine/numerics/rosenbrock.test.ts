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

describe('what it cannot go through', () => {
  const marched = (slope: (time: number, y: number) => number) => {
    const work = { steps: 0, rejected: 0, evaluations: 0 };
    const stepper = new Stepper(
      {
        rhs: (time, y, out) => {
          out[0] = slope(time, y[0] ?? Number.NaN);
        },
        timeSlope: forgotten,
      },
      { time: 0, state: Float64Array.of(1) },
      { relative: 1e-6, absolute: Float64Array.of(1e-12), maxStep: 1 },
      work,
    );
    for (let count = 0; count < 2000; count += 1) {
      if (stepper.time >= 1) return { ended: 'there', at: stepper.time };
      const step = stepper.advance(1);
      if (step === 'failed') return { ended: step, at: stepper.time };
    }
    return { ended: 'endless', at: stepper.time };
  };
  it('a law without a value from half on: it says so there, after a bounded number of steps', () => {
    const { ended, at } = marched((time) => (time > 0.5 ? Number.NaN : 1));
    expect(ended).toBe('failed');
    expect(at).toBeGreaterThan(0.49);
    expect(at).toBeLessThanOrEqual(0.5);
  });
  it('a solution that has no end: y squared from 1 on reaches past any bound at 1', () => {
    // y = 1 / (1 - t).
    expect(marched((_time, y) => y * y)).toMatchObject({ ended: 'failed' });
  });
  it('one that has', () => {
    expect(marched((_time, y) => -y)).toEqual({ ended: 'there', at: 1 });
  });
});

describe('states that drive each other harder than themselves', () => {
  /** A turn a second, of which the matrix has nothing on its diagonal. */
  const turned = (relative: number, radius = 1) => {
    const work = { steps: 0, rejected: 0, evaluations: 0 };
    const turn = 2 * Math.PI;
    const stepper = new Stepper(
      {
        rhs: (_time, y, out) => {
          out[0] = turn * (y[1] ?? Number.NaN);
          out[1] = -turn * (y[0] ?? Number.NaN);
        },
        timeSlope: (_time, _y, out) => out.fill(0),
      },
      { time: 0, state: Float64Array.of(0, radius) },
      { relative, absolute: Float64Array.of(1e-12, 1e-12), maxStep: 1 },
      work,
    );
    let worst = 0;
    while (stepper.time < 1) {
      const step = stepper.advance(1);
      if (step === 'failed') throw new Error('it failed');
      const [sine = Number.NaN, cosine = Number.NaN] = step.y1;
      worst = Math.max(
        worst,
        Math.abs(sine / radius - Math.sin(turn * step.t1)),
        Math.abs(cosine / radius - Math.cos(turn * step.t1)),
      );
    }
    return { worst, ...work };
  };
  it.each([1e-4, 1e-6, 1e-8])('stay on their circle to fifty times %d', (relative) => {
    expect(turned(relative).worst).toBeLessThan(50 * relative);
  });
  it('take as many steps on a circle a thousand times as large: the tolerance is a share', () => {
    const [small, large] = [turned(1e-6), turned(1e-6, 1000)];
    expect(Math.abs(large.steps / small.steps - 1)).toBeLessThan(0.02);
    expect(large.worst).toBeLessThan(5e-5);
  });
  it('take ten times the steps for a thousandth of the tolerance: the error goes with the third power of the step', () => {
    const ratio = turned(1e-8).steps / turned(1e-5).steps;
    expect(ratio).toBeGreaterThan(7);
    expect(ratio).toBeLessThan(13);
  });
});
