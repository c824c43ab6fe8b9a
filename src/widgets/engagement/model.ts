import { COLD_C } from '../../car/cold-and-hot.ts';
import { oneFault } from '../../car/car.ts';
import { computed, signal } from '@preact/signals';
import {
  applyFaults,
  fluidClasses,
  makeFluid,
  solveEngagement,
  trainingStory,
  type DriveRange,
  type Engagement,
  type FaultId,
  type FluidClass,
  type MechanicalFailSafe,
  type RangeSelection,
  training,
} from '../../engine/index.ts';
import { givensFrom } from '../../simulation/givens.ts';
import type { SimModel } from '../../simulation/sim-spec.ts';

/** What the speed chart shows; the turbine is the one the lesson is about. */
export const SHOWN = ['turbine', 'sensor', 'engine', 'output', 'slip'] as const;
export type Shown = (typeof SHOWN)[number];

export type EngagementGivens = {
  /** Fluid temperature of the hot run [°C]; the cold run stays at COLD_C. */
  temp: number;
  fault: FaultId;
  /** [%] of the way from healthy to worst */
  severity: number;
  selection: RangeSelection;
  range: DriveRange;
  failSafe: MechanicalFailSafe;
  fluid: FluidClass;
  show: Shown;
};

/** Where the trace ends [s]. */
export const END = trainingStory.end;
/** 5 ms shows every bend there is; the picture takes every tenth row of the solver's 701. */
const THIN = 5;

const START: EngagementGivens = {
  temp: 100,
  fault: 'transferSeal',
  severity: 75,
  selection: 'electronic',
  range: 'drive',
  failSafe: 'neutral',
  fluid: 'low-viscosity',
  show: 'turbine',
};

/** One run as the charts want it: rpm and kPa, thinned. */
export interface Run {
  readonly solved: Engagement;
  readonly speeds: Readonly<Record<Shown, readonly number[]>>;
  readonly pressure: readonly number[];
  readonly wanted: readonly number[];
  readonly codeStored: boolean;
  readonly parked: boolean;
}

const thin = (column: Float64Array, scale = 1): readonly number[] => {
  const rows: number[] = [];
  for (let i = 0; i < column.length; i += THIN) rows.push((column[i] ?? 0) * scale);
  return rows;
};

function asRun(solved: Engagement): Run {
  const { trace, events } = solved;
  return {
    solved,
    speeds: {
      turbine: thin(trace.turbineRpm),
      sensor: thin(trace.turbineSeenRpm),
      engine: thin(trace.engineRpm),
      output: thin(trace.outputRpm),
      slip: thin(trace.slipRpm),
    },
    pressure: thin(trace.clutchPressure, 1e-3),
    wanted: thin(trace.clutchCommand, 1e-3),
    codeStored: events.some(({ event }) => event === 'code stored'),
    parked: events.some(({ event }) => event === 'park commanded'),
  };
}

export function makeModel() {
  const { givens, apply, reset } = givensFrom(START);
  const plant = computed(() => {
    // A fault of one circuit sits where the driver's range is.
    const circuit = givens.range.value === 'drive' ? 'forward' : 'reverse';
    return applyFaults(training, oneFault(givens.fault.value, givens.severity.value, circuit));
  });
  const fluid = computed(() => makeFluid(fluidClasses[givens.fluid.value]));
  const solveAt = (tempC: number): Engagement =>
    solveEngagement({
      plant: plant.value,
      fluid: fluid.value,
      tempC,
      range: givens.range.value,
      rangeSelection: givens.selection.value,
      mechanicalFailSafe: givens.failSafe.value,
    });
  const cold = computed(() => asRun(solveAt(COLD_C)));
  const hot = computed(() => asRun(solveAt(givens.temp.value)));
  return {
    givens,
    apply,
    reset,
    cold,
    hot,
    /** The moment that both charts and the words show [s]; null while nobody points at one. */
    cursor: signal<number | null>(null),
    times: thin(cold.peek().solved.trace.time),
    /** The turbine's stopping time [s] at another temperature, for "find the edge" tasks. */
    stoppedAt: (tempC: number) => solveAt(tempC).stoppedAfter,
  } satisfies SimModel<EngagementGivens> & Record<string, unknown>;
}
export type EngagementModel = ReturnType<typeof makeModel>;
