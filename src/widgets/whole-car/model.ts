import { computed, signal } from '@preact/signals';
import { makeCar, oneFault, REFERENCE_CRACK_MM } from '../../car/car.ts';
import { COLD_C, HOT_C } from '../../car/cold-and-hot.ts';
import { engage, faultyCar, gaveUp } from '../../car/engage.ts';
import { inMotion, type Motion } from '../../car/in-motion.ts';
import {
  circuitOf,
  faultSeverity,
  trainingStory,
  type DriveRange,
  type Engagement,
  type FaultId,
  type FluidClass,
  type Plant,
  type RangeSelection,
} from '../../engine/index.ts';
import { givensFrom } from '../../simulation/givens.ts';
import type { SimModel } from '../../simulation/sim-spec.ts';
import { thinned } from '../../simulation/traces/thinned.ts';

export type WholeCarGivens = {
  /** The moment that the picture shows [s]. */
  time: number;
  fault: FaultId;
  /** Fluid of the hot car [°C]; the cold one stays at COLD_C. */
  temp: number;
  /** [%] of the way from healthy to worst */
  severity: number;
  selection: RangeSelection;
  range: DriveRange;
  fluid: FluidClass;
};

export const END = trainingStory.end;
/** The trace has a row every 10 ms. */
const ROW = 0.01;

export interface Run {
  readonly solved: Engagement;
  readonly motion: Motion;
  readonly turbine: readonly number[];
  /** [kPa] */
  readonly clutch: readonly number[];
  readonly wanted: readonly number[];
  readonly line: readonly number[];
  readonly gaveUp: boolean;
}

export const START: WholeCarGivens = {
  time: 2.4,
  fault: 'transferSeal',
  temp: HOT_C,
  severity: 100 * faultSeverity('transferSeal', REFERENCE_CRACK_MM),
  selection: 'electronic',
  range: 'drive',
  fluid: 'low-viscosity',
};

/** Before anything has happened: where the prediction starts. */
export const OPENING: WholeCarGivens = { ...START, time: 0 };

/** Both cars at the moment that the page opens with, one row of each, and the moments of the trace [s]. */
export interface Opening {
  readonly times: readonly number[];
  readonly cold: Run;
  readonly hot: Run;
}
let opening: Opening | undefined;
/** Takes it as it came with the page. Two engagements solved for one row of each kept a slow phone busy for 300 ms. */
export function bringOpening(text: string): void {
  opening ??= JSON.parse(text) as Opening;
}

/** A sheet of one's own in the place of the training transmission, and what is said of it. */
export interface OwnTransmission {
  readonly plant: Plant;
  readonly said: string;
}

export function makeModel() {
  const { givens, apply, reset } = givensFrom(START);
  const own = signal<OwnTransmission | null>(null);
  const car = computed(() => {
    const [fault, severity, range] = [
      givens.fault.value,
      givens.severity.value,
      givens.range.value,
    ];
    // A transmission of one's own comes with its own fluid.
    return own.value
      ? makeCar({
          transmission: own.value.plant,
          faults: oneFault(fault, severity, circuitOf[range]),
        })
      : faultyCar({ fault, severity, range, fluid: givens.fluid.value });
  });
  const runAt = (tempC: number): Run => {
    const { value: range } = givens.range;
    const solved = engage(car.value, { tempC, range, rangeSelection: givens.selection.value });
    const motion = inMotion(car.value, solved, { tempC, circuit: circuitOf[range] });
    const { trace } = solved;
    return {
      solved,
      motion,
      turbine: thinned(trace.turbineRpm),
      clutch: thinned(trace.clutchPressure, 1e-3),
      wanted: thinned(trace.clutchCommand, 1e-3),
      line: thinned(trace.linePressure, 1e-3),
      gaveUp: gaveUp(solved),
    };
  };
  const cold = computed(() => runAt(COLD_C));
  const hot = computed(() => runAt(givens.temp.value));
  return {
    givens,
    own,
    apply,
    reset,
    cold,
    hot,
    warm: () => {
      cold.peek();
      hot.peek();
    },
    /** What came with the page: holds before anything has been moved. */
    opening,
    times: opening?.times ?? thinned(cold.peek().solved.trace.time),
  } satisfies SimModel<WholeCarGivens> & Record<string, unknown>;
}
export type WholeCarModel = ReturnType<typeof makeModel>;

/** The row of the trace at a time. */
export const rowAt = (run: Run, time: number): number =>
  Math.max(0, Math.min(run.solved.trace.time.length - 1, Math.round(time / ROW)));

type Column = Exclude<keyof Engagement['trace'], 'time'>;

/** When a column of the hot run leaves that of the cold one by more than a tenth of it [s after selection]. */
function parting(cold: Run, hot: Run, column: Column, least: number): number | null {
  const one = cold.solved.trace[column];
  const other = hot.solved.trace[column];
  const row = one.findIndex(
    (value, i) => Math.abs(value - (other[i] ?? 0)) > Math.max(least, value / 10),
  );
  return row < 0 ? null : row * ROW - trainingStory.select;
}

/** Below these nobody can tell two gauges apart [Pa], or two speeds [rpm]. */
const LEAST = { pressure: 5e3, speed: 100 };

/** When each reading of the hot car leaves that of the cold one [s after selection]; null if never. */
export function partings({ cold: { value: cold }, hot: { value: hot } }: WholeCarModel) {
  const seen = new Set(cold.solved.events.map(({ event }) => event));
  const news = hot.solved.events.find(
    ({ event }) => !seen.has(event) && event !== 'clutch filled' && event !== 'turbine stopped',
  );
  return {
    line: parting(cold, hot, 'linePressure', LEAST.pressure),
    clutch: parting(cold, hot, 'clutchPressure', LEAST.pressure),
    turbine: parting(cold, hot, 'turbineRpm', LEAST.speed),
    controller: news === undefined ? null : news.time - trainingStory.select,
  };
}
