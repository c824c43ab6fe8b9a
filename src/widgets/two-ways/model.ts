import { computed } from '@preact/signals';
import { COLD_C, HOT_C } from '../../car/cold-and-hot.ts';
import { failSafeOf, PARK_BELOW_KMH } from '../../car/range-rules.ts';
import { fedRange, isParked, type Range, type RangeState } from '../../drawings/range/state.ts';
import {
  commandsAt,
  fluidClasses,
  makeFluid,
  revPerSecond,
  solveSteady,
  training,
  type Circuit,
  type MechanicalFailSafe,
  type Plant,
} from '../../engine/index.ts';
import { givensFrom } from '../../simulation/givens.ts';
import type { SimModel } from '../../simulation/sim-spec.ts';

export type WayFault = 'none' | 'slip' | 'misSet' | 'noPower';
export type Rolling = 'standing' | 'rolling';

export type WaysGivens = {
  range: Range;
  fault: WayFault;
  failSafe: MechanicalFailSafe;
  car: Rolling;
  /** How much of the manual valve's port a mis-set cable leaves open [%]. */
  feed: number;
};

export const START: WaysGivens = {
  range: 'D',
  fault: 'none',
  failSafe: 'neutral',
  car: 'standing',
  feed: 50,
};

/** A tenth is the most the fault catalogue closes a feed. */
export const FEED = { min: 10, max: 100, step: 1 } as const;

/** Well above the speed that the pawl may drop in at. */
export const ROLLING_KMH = 4 * PARK_BELOW_KMH;

export const fluid = /* @__PURE__ */ makeFluid(fluidClasses['low-viscosity']);

/** The fault feedRestriction by its own measure, so that this page does not carry the fourteen others. */
export const withPort = (open: number): Plant => ({
  ...training,
  feed: { ...training.feed, area: (training.feed.area * open) / 100 },
});

/** At idle, with so much of the port open [%]. */
function idle(circuit: Circuit, open: number, tempC: number) {
  const { engineRpm, line, clutch } = commandsAt(training, 'idle', circuit);
  return solveSteady({
    plant: withPort(open),
    fluid,
    tempC,
    engineSpeed: revPerSecond(engineRpm),
    lineCommand: line,
    clutchCommand: clutch,
    applied: [circuit],
  });
}

/** Clutch pressure at idle [kPa] with so much of the port open [%]. */
export const pressureAt = (circuit: Circuit, open: number, tempC: number): number =>
  (idle(circuit, open, tempC).circuits[circuit]?.pressure ?? 0) / 1e3;

/** Full scale of the drawings' tints [Pa]. */
const FULL_SCALE = 1e6;

/** What the drawings show of the fluid that is hot: shares of full scale, and what goes into the clutch [L/min]. */
function drawnAt(circuit: Circuit, open: number): NonNullable<RangeState['oil']> {
  const { linePressure, circuits } = idle(circuit, open, HOT_C);
  const { pressure = 0, feed = 0 } = circuits[circuit] ?? {};
  return { line: linePressure / FULL_SCALE, clutch: pressure / FULL_SCALE, feedLmin: feed * 6e4 };
}

export function makeModel() {
  const { givens, apply, reset } = givensFrom(START);
  const slip = computed(() => givens.fault.value === 'slip');
  const speed = computed(() => (givens.car.value === 'rolling' ? ROLLING_KMH / 3.6 : 0));
  const power = computed(() => givens.fault.value !== 'noPower');
  /** Null while no fail-safe is in force. */
  const electronicEnd = computed(() =>
    slip.value ? failSafeOf('electronic', 'neutral', speed.value) : null,
  );
  const mechanicalEnd = computed(() =>
    slip.value ? failSafeOf('mechanical', givens.failSafe.value, speed.value) : null,
  );
  const circuit = computed<Circuit>(() => (givens.range.value === 'R' ? 'reverse' : 'forward'));
  /** The port is as open as the cable leaves it; set right it is open. */
  const open = computed(() => (givens.fault.value === 'misSet' ? givens.feed.value : FEED.max));
  // Solved when they change themselves, and not at every move of speed or selection.
  const oilByWire = computed(() => drawnAt(circuit.value, FEED.max));
  const oilByCable = computed(() => drawnAt(circuit.value, open.value));
  const electronic = computed<RangeState>(() => ({
    range: givens.range.value,
    oil: oilByWire.value,
    failSafe: electronicEnd.value !== null,
    rolling: slip.value ? electronicEnd.value !== 'failSafePark' : speed.value > 0,
    power: power.value,
  }));
  const mechanical = computed<RangeState>(() => ({
    range: givens.range.value,
    misSet: givens.fault.value === 'misSet',
    portOpen: open.value / FEED.max,
    oil: oilByCable.value,
    failSafe: mechanicalEnd.value !== null,
    defaultGear: slip.value
      ? mechanicalEnd.value === 'failSafeDefaultGear'
      : givens.failSafe.value === 'default-gear',
    power: power.value,
  }));
  return {
    givens,
    apply,
    reset,
    electronicEnd,
    mechanicalEnd,
    electronic,
    mechanical,
    parked: computed(() => ({
      electronic: isParked(electronic.value, 'electronic'),
      mechanical: isParked(mechanical.value, 'mechanical'),
    })),
    fed: computed(() => ({
      electronic: fedRange(electronic.value, 'electronic'),
      mechanical: fedRange(mechanical.value, 'mechanical'),
    })),
    circuit,
    open,
    /** Clutch pressure at idle [kPa]. */
    cold: computed(() => pressureAt(circuit.value, open.value, COLD_C)),
    hot: computed(() => pressureAt(circuit.value, open.value, HOT_C)),
  } satisfies SimModel<WaysGivens> & Record<string, unknown>;
}
export type WaysModel = ReturnType<typeof makeModel>;
