import { COLD_C } from '../../car/cold-and-hot.ts';
import { REFERENCE_CRACK_MM } from '../../car/car.ts';
import { engage, faultyCar, gaveUp } from '../../car/engage.ts';
import { computed, signal } from '@preact/signals';
import {
  faultSeverity,
  trainingStory,
  type DriveRange,
  type Engagement,
  type FaultId,
  type FluidClass,
  type MechanicalFailSafe,
  type RangeSelection,
} from '../../engine/index.ts';
import { givensFrom } from '../../simulation/givens.ts';
import type { SimModel } from '../../simulation/sim-spec.ts';
import { thinned } from '../../simulation/traces/thinned.ts';

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

/** The crack that the whole course follows, in percent of the worst. */
export const CRACKED = 100 * faultSeverity('transferSeal', REFERENCE_CRACK_MM);
/** Where the trace ends [s]. */
export const END = trainingStory.end;
const START: EngagementGivens = {
  temp: 100,
  fault: 'transferSeal',
  severity: CRACKED,
  selection: 'electronic',
  range: 'drive',
  failSafe: 'neutral',
  fluid: 'low-viscosity',
  show: 'turbine',
};

/** One run as the charts want it: rpm and kPa, thinned. */
export interface Run {
  readonly solved: Omit<Engagement, 'trace'>;
  readonly speeds: Readonly<Record<Shown, readonly number[]>>;
  readonly pressure: readonly number[];
  readonly wanted: readonly number[];
  readonly codeStored: boolean;
  readonly parked: boolean;
}
/** With the whole of what the solver told. */
export interface SolvedRun extends Run {
  readonly solved: Engagement;
}

/** The cold run that the page opens with, and its moments [s], as they come with the page. */
export interface FirstRun {
  readonly times: readonly number[];
  readonly cold: Run;
}
let first: FirstRun | undefined;
/** Takes it. Solved here instead, it kept a slow phone busy for 200 ms before anything could be pressed. */
export function bringFirstRun(text: string): void {
  first ??= JSON.parse(text) as FirstRun;
}

function asRun(solved: Engagement): SolvedRun {
  const { trace, events } = solved;
  return {
    solved,
    speeds: {
      turbine: thinned(trace.turbineRpm),
      sensor: thinned(trace.turbineSeenRpm),
      engine: thinned(trace.engineRpm),
      output: thinned(trace.outputRpm),
      slip: thinned(trace.slipRpm),
    },
    pressure: thinned(trace.clutchPressure, 1e-3),
    wanted: thinned(trace.clutchCommand, 1e-3),
    codeStored: gaveUp(solved),
    parked: events.some(({ event }) => event === 'park commanded'),
  };
}

export function makeModel() {
  const { givens, apply, reset } = givensFrom(START);
  const asked = computed(() => ({
    car: faultyCar({
      fault: givens.fault.value,
      severity: givens.severity.value,
      range: givens.range.value,
      fluid: givens.fluid.value,
    }),
    range: givens.range.value,
    rangeSelection: givens.selection.value,
    mechanicalFailSafe: givens.failSafe.value,
  }));
  const solveAt = (tempC: number): Engagement => {
    const { car, ...how } = asked.value;
    return engage(car, { tempC, ...how });
  };
  // Stays the same one until something is moved that a run depends on.
  const atFirst = asked.peek();
  const cold = computed((): Run =>
    first && asked.value === atFirst ? first.cold : asRun(solveAt(COLD_C)),
  );
  const hot = computed(() => asRun(solveAt(givens.temp.value)));
  return {
    givens,
    apply,
    reset,
    cold,
    hot,
    warm: () => void hot.peek(),
    /** The moment that both charts and the words show [s]; null while nobody points at one. */
    cursor: signal<number | null>(null),
    times: first?.times ?? thinned(solveAt(COLD_C).trace.time),
    /** The turbine's stopping time [s] at another temperature, for "find the edge" tasks. */
    stoppedAt: (tempC: number) => solveAt(tempC).stoppedAfter,
  } satisfies SimModel<EngagementGivens> & Record<string, unknown>;
}
export type EngagementModel = ReturnType<typeof makeModel>;
