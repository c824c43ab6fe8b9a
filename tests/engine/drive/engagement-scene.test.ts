import { describe, expect, it } from 'vitest';
import {
  RAD_S_PER_RPM,
  densityRatio,
  fluidAt,
  fluidClasses,
  makeFluid,
  throttleAt,
  throttleRateAt,
  training,
  trainingStory,
} from '../../../src/engine/index.ts';
import { EngagementScene } from '../../../src/engine/drive/engagement-scene.ts';

const fluid = makeFluid(fluidClasses['low-viscosity']);
const scene = new EngagementScene({
  plant: training,
  fluid: fluidAt(fluid, 80),
  swell: densityRatio(fluid, 20, 80),
  story: trainingStory,
  circuit: 'forward',
});
scene.selected = true;
scene.held = false;

/** A derivative by its definition: the law a thousandth of a second either side. */
function differenced(time: number, state: Float64Array): number[] {
  const [before, after] = [new Float64Array(4), new Float64Array(4)];
  const h = 1e-3;
  scene.rhs(time - h, state, before);
  scene.rhs(time + h, state, after);
  return Array.from(after, (value, i) => (value - (before[i] ?? Number.NaN)) / (2 * h));
}

describe('what time alone changes', () => {
  it.each([0.2, 1, 2.9, 3.1, 4.5, 5.9, 6.1, 6.9])(
    'at %d s is the derivative of the law',
    (time) => {
      for (const rpm of [720, 1500, 3000, 5600, 6400]) {
        const state = Float64Array.of(rpm * RAD_S_PER_RPM, 0.6 * rpm * RAD_S_PER_RPM, 3.01e-5, 2);
        const out = new Float64Array(4).fill(Number.NaN);
        scene.timeSlope(time, state, out);
        differenced(time, state).forEach((slope, i) => {
          expect(Math.abs((out[i] ?? Number.NaN) - slope)).toBeLessThan(
            1e-6 * Math.max(1, Math.abs(slope)),
          );
        });
      }
    },
  );
  it('at a corner is what holds after it', () => {
    expect(throttleRateAt(trainingStory, 3)).toBe(0.2);
    expect(throttleRateAt(trainingStory, 6)).toBe(0);
    expect(throttleAt(trainingStory, 6)).toBeCloseTo(0.6, 12);
  });
});
