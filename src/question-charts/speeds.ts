import { engage, makeCar, oneFault, REFERENCE_CRACK_MM, type Car } from '../car/index.ts';
import { heldTrace, SELECT_S } from '../diagnosis/read-subject.ts';
import { nominalWarmth } from '../diagnosis/table.ts';
import { testOf, type NumericTest } from '../diagnosis/tests.ts';
import { trainingStory } from '../engine/index.ts';
import { steps, type AxisAsked, type Recipe } from './recipe.ts';
import { words } from './words.en.ts';

const LONGEST_S = 2.5;
const time: AxisAsked = {
  label: words.afterSelection,
  quantity: 'seconds',
  min: 0,
  max: LONGEST_S,
};
const speed: AxisAsked = { label: words.turbine, quantity: 'speed', min: 0, max: 800 };
const common = { x: time, y: speed, tableAt: [0, 0.5, 1, 1.5, 2, LONGEST_S] } as const;
const stopTest = testOf('stopTime.drive.hot') as NumericTest;

/** Every so many points of a trace, from an instant on. */
function thinned(
  times: Float64Array,
  values: Float64Array,
  { from, to, count }: { from: number; to: number; count: number },
): readonly (readonly [number, number])[] {
  return steps(0, to - from, count).map((after) => {
    const at = times.findIndex((one) => one >= from + after - 1e-9);
    return [after, values[at < 0 ? times.length - 1 : at] ?? 0] as const;
  });
}

/** After selection with the brake held to the end. */
function stop({ plant }: Car, hotC: number = nominalWarmth.hot) {
  const warmth = { ...nominalWarmth, hot: hotC };
  const { time: times, turbineSeenRpm } = heldTrace(
    { plant, fluid: plant.fluid, warmth },
    stopTest,
  );
  return thinned(times, turbineSeenRpm, { from: SELECT_S, to: SELECT_S + LONGEST_S, count: 50 });
}

const TAKE_OFF_S = 4;
const TAKE_OFF_C = 95;
const takeOff = (car: Car) => {
  const { trace } = engage(car, { tempC: TAKE_OFF_C });
  return thinned(trace.time, trace.slipRpm.map(Math.abs), {
    from: trainingStory.brakeOff,
    to: trainingStory.brakeOff + TAKE_OFF_S,
    count: 45,
  });
};

/** Turbine speed after selection, slip in a take-off. */
export const speeds = {
  'stop-healthy-hot': (): Recipe => ({
    ...common,
    about: words.oneStop,
    lines: [stop(makeCar({}))],
  }),
  'stop-never-hot': (): Recipe => ({
    ...common,
    about: words.oneStop,
    lines: [stop(makeCar({ faults: oneFault('transferSeal', 65) }))],
  }),
  'two-stops-hot': (): Recipe => ({
    ...common,
    about: words.twoStops,
    lines: [stop(makeCar({ crackMm: REFERENCE_CRACK_MM })), stop(makeCar({}))],
  }),
  'stop-healthy-frost': (): Recipe => ({
    ...common,
    about: words.frostStop,
    lines: [stop(makeCar({}), -15), stop(makeCar({}), 60)],
  }),
  'slip-in-take-off': (): Recipe => ({
    x: { ...time, label: words.afterBrake, max: TAKE_OFF_S },
    y: { ...speed, label: words.slip, max: 100 },
    about: words.takeOff,
    tableAt: [0, 1, 2, 3, TAKE_OFF_S],
    lines: [takeOff(makeCar({})), takeOff(makeCar({ crackMm: 0.2 }))],
  }),
} satisfies Record<string, () => Recipe>;
