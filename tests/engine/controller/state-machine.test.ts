/** The rules of the model page, one limit at a time, with speeds written by hand. */
import { describe, expect, it, test } from 'vitest';
import {
  controllerCycle,
  illustrativeSettings,
  rangeSelected,
  type ControllerContext,
  type ControllerInput,
  type ControllerMemory,
} from '../../../src/engine/index.ts';

const KMH = 1 / 3.6;
const electronic: ControllerContext = {
  settings: illustrativeSettings,
  rangeSelection: 'electronic',
  mechanicalFailSafe: 'neutral',
  ratio: 4,
  ratioCode: 'P0731',
};
const standing: ControllerInput = {
  time: 0,
  turbineRpm: 0,
  outputRpm: 0,
  vehicleSpeed: 0,
  throttle: 0,
};
/** Cycles of 10 ms from selection at 0 s: what happened, and when. */
function run(
  until: number,
  input: (time: number) => Partial<ControllerInput>,
  context = electronic,
): { readonly memory: ControllerMemory; readonly told: readonly string[] } {
  let memory = rangeSelected(0);
  const told: string[] = [];
  for (let cycle = 1; cycle * 0.01 <= until + 1e-9; cycle += 1) {
    const time = cycle * 0.01;
    const { memory: next, events } = controllerCycle(
      memory,
      { ...standing, time, ...input(time) },
      context,
    );
    memory = next;
    told.push(...events.map(({ event }) => `${event} ${time.toFixed(2)}`));
  }
  return { memory, told };
}

describe('the engagement check, 1.5 s after selection', () => {
  it('takes 100 rpm of slip and not 101', () => {
    expect(run(1.6, () => ({ turbineRpm: 100 })).told).toEqual(['engagement finished 1.50']);
    expect(run(1.6, () => ({ turbineRpm: 101 })).told).toEqual(['engagement not finished 1.50']);
  });
  it('takes no notice of what was before', () => {
    const late = run(1.6, (time) => ({ turbineRpm: time < 1.495 ? 700 : 0 }));
    expect(late.told).toEqual(['engagement finished 1.50']);
  });
});

describe('what the controller does after the engagement check', () => {
  it('watches slip, and not before', () => {
    expect(run(1.4, () => ({})).memory.state).toBe('engaging');
    expect(run(1.6, () => ({})).memory.state).toBe('watching');
    expect(run(1.6, () => ({ turbineRpm: 700 })).memory.state).toBe('watching');
  });
  it('keeps the pressure raised that slip on the throttle had raised before', () => {
    const early = (time: number) => (time < 0.4 ? { turbineRpm: 700, throttle: 0.1 } : {});
    expect(run(1.6, early).memory.state).toBe('pressureRaised');
  });
});

describe('the ratio check', () => {
  const onThrottle = (turbineRpm: number) => () => ({ turbineRpm, throttle: 0.1 });
  it('runs with the throttle open or the output turning over 20 rpm, and not before', () => {
    expect(run(1, () => ({ turbineRpm: 700 })).told).toEqual([]);
    expect(run(1, () => ({ turbineRpm: 700, throttle: 0.019 })).told).toEqual([]);
    expect(run(0.4, () => ({ turbineRpm: 700, throttle: 0.02 })).told).toHaveLength(1);
    expect(run(1, () => ({ turbineRpm: 700, outputRpm: 20 })).told).toEqual([]);
    expect(run(0.4, () => ({ turbineRpm: 700, outputRpm: 21 })).told).toHaveLength(1);
    expect(run(0.4, () => ({ turbineRpm: 700, outputRpm: -21 })).told).toHaveLength(1);
  });
  it('fails after 0.3 s over 80 rpm, and for good after 0.3 s more', () => {
    expect(run(1, onThrottle(80)).told).toEqual([]);
    const { told, memory } = run(1, onThrottle(81));
    expect(told).toEqual([
      'pressure raised 0.31',
      'code stored 0.61',
      'clutch vented 0.61',
      'park commanded 0.61',
    ]);
    expect(memory.state).toBe('failSafePark');
  });
  it('allows 3 percent where that is more: 120 rpm at 4000', () => {
    const at = (slip: number) => () => ({ turbineRpm: 4000, outputRpm: (4000 - slip) / 4 });
    expect(run(0.5, at(119)).told).toEqual([]);
    expect(run(0.5, at(121)).told).toEqual(['pressure raised 0.31']);
  });
  it('begins anew after a moment without slip', () => {
    const broken = run(0.59, (time) => ({
      throttle: 0.1,
      turbineRpm: Math.abs(time - 0.3) < 1e-6 ? 0 : 300,
    }));
    expect(broken.told).toEqual([]);
  });
});

describe('fail-safe', () => {
  const endsIn = (vehicleSpeed: number, context: ControllerContext) =>
    run(1, () => ({ turbineRpm: 700, throttle: 0.5, vehicleSpeed }), context);
  test('electronic: Park slower than 5 km/h, else Neutral, and Park once it is slower', () => {
    expect(endsIn(4.9 * KMH, electronic).memory.state).toBe('failSafePark');
    const rolling = endsIn(5 * KMH, electronic);
    expect(rolling.memory.state).toBe('failSafeNeutral');
    expect(rolling.told.at(-1)).toBe('neutral commanded 0.61');
    const step = (vehicleSpeed: number) =>
      controllerCycle(rolling.memory, { ...standing, time: 2, vehicleSpeed }, electronic);
    expect(step(5 * KMH)).toEqual({ memory: rolling.memory, events: [] });
    expect(step(4.9 * KMH).memory.state).toBe('failSafePark');
    expect(step(4.9 * KMH).events).toEqual([{ time: 2, event: 'park commanded' }]);
  });
  test('mechanical: Neutral however slow, or the default gear, and it stays there', () => {
    const mechanical: ControllerContext = { ...electronic, rangeSelection: 'mechanical' };
    const vented = endsIn(0, mechanical);
    expect(vented.memory.state).toBe('failSafeNeutral');
    expect(controllerCycle(vented.memory, { ...standing, time: 2 }, mechanical).events).toEqual([]);
    const geared = endsIn(0, { ...mechanical, mechanicalFailSafe: 'default-gear' });
    expect(geared.told.at(-1)).toBe('default gear held 0.61');
    expect(geared.memory.state).toBe('failSafeDefaultGear');
    expect(endsIn(0, { ...electronic, mechanicalFailSafe: 'default-gear' }).memory.state).toBe(
      'failSafePark',
    );
  });
});
