import {
  airHeld,
  CIRCUITS,
  fluidClasses,
  commandsAt,
  litresPerMinute,
  makeFluid,
  revPerSecond,
  solveSteady,
  training,
  type AirTestTarget,
  type Circuit,
  type Plant,
  type SteadyState,
} from '../../engine/index.ts';
import { needed, type Need } from '../clutch-pressure/needed.ts';

/** The two temperatures of the shop test [°C]. */
export const COLD_C = 20;
export const HOT_C = 100;

/**
 * The four columns of the pattern: each range engaged with the car held, at idle and at 1500 rpm
 * under load, cold and hot. Needed is what the converter asks of the clutch there (see `needed`).
 */
export const TESTS = ['cold-idle', 'cold-load', 'hot-idle', 'hot-load'] as const;
export type Test = (typeof TESTS)[number];
export const testOf: Readonly<
  Record<
    Test,
    { readonly tempC: number; readonly point: keyof Plant['testPoints']; readonly need: Need }
  >
> = {
  'cold-idle': { tempC: COLD_C, point: 'idle', need: needed.idle },
  'cold-load': { tempC: COLD_C, point: 'load', need: needed['take-off'] },
  'hot-idle': { tempC: HOT_C, point: 'idle', need: needed.idle },
  'hot-load': { tempC: HOT_C, point: 'load', need: needed['take-off'] },
};

/** What a gauge or a meter shows in each test: taps [kPa], torque [N m], what is left over [L/min]. */
export const TAPS = ['line', ...CIRCUITS] as const;
export type Tap = (typeof TAPS)[number];

export interface Column {
  readonly taps: Readonly<Record<Tap, number>>;
  /** Torque that each range's clutch can hold. */
  readonly torque: Readonly<Record<Circuit, number>>;
  /** Left for converter, cooler and lubrication, in the range that leaves least. */
  readonly leftOver: number;
  readonly states: Readonly<Record<Circuit, SteadyState>>;
}
export type Readings = Readonly<Record<Test, Column>>;

const FLUID = makeFluid(fluidClasses['low-viscosity']);

function engage(plant: Plant, test: Test, circuit: Circuit): SteadyState {
  const { tempC, point } = testOf[test];
  // Reverse is boosted.
  const { engineRpm, line, clutch } = commandsAt(plant, point, circuit);
  return solveSteady({
    plant,
    fluid: FLUID,
    tempC,
    engineSpeed: revPerSecond(engineRpm),
    lineCommand: line,
    clutchCommand: clutch,
    applied: [circuit],
  });
}

const forEach = <K extends string, V>(keys: readonly K[], make: (key: K) => V): Record<K, V> =>
  Object.fromEntries(keys.map((key) => [key, make(key)])) as Record<K, V>;

function columnOf(plant: Plant, test: Test): Column {
  const states = forEach(CIRCUITS, (circuit) => engage(plant, test, circuit));
  const clutch = (circuit: Circuit) => {
    const state = states[circuit].circuits[circuit];
    if (state === undefined) throw new Error(`The ${circuit} circuit was applied and is missing.`);
    return state;
  };
  const all = Object.values(states);
  return {
    taps: {
      // One gauge on the line, whichever range is engaged: the lowest it shows.
      line: Math.min(...all.map(({ linePressure }) => linePressure)) / 1e3,
      ...forEach(CIRCUITS, (circuit) => clutch(circuit).pressure / 1e3),
    },
    torque: forEach(CIRCUITS, (circuit) => clutch(circuit).holds),
    leftOver: litresPerMinute(Math.min(...all.map(({ leftOver }) => leftOver))),
    states,
  };
}

export const readingsOf = (plant: Plant): Readings =>
  forEach(TESTS, (test) => columnOf(plant, test));

export const AIR_TARGETS: readonly AirTestTarget[] = [...CIRCUITS, 'transferSeal'];
export type Bench = Readonly<Record<AirTestTarget, number>>;
/** What the tester holds at each place [% of its supply]. */
export const benchOf = (plant: Plant): Bench =>
  forEach(AIR_TARGETS, (target) => 100 * airHeld(plant, target));

export const soundPlant = training;
export const soundReadings = readingsOf(soundPlant);
export const soundBench = benchOf(soundPlant);
