import { COLD_C, HOT_C } from '../../car/cold-and-hot.ts';
import { computed, signal } from '@preact/signals';
import {
  commandsAt,
  fluidClasses,
  illustrativeSettings,
  makeFluid,
  revPerSecond,
  solveEngagement,
  solveSteady,
  type MechanicalFailSafe,
  training,
} from '../../engine/index.ts';
import { failSafeOf } from '../../car/range-rules.ts';
import { fedRange, isParked, type Range, type RangeState } from '../../drawings/range-state.ts';
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

const START: WaysGivens = {
  range: 'D',
  fault: 'none',
  failSafe: 'neutral',
  car: 'standing',
  feed: 50,
};

/** A tenth is the most the fault catalogue closes a feed. */
export const FEED = { min: 10, max: 100, step: 1 } as const;

/** A speed well above and at the one that the pawl may drop in at [m/s]. */
const SPEEDS: Readonly<Record<Rolling, number>> = {
  standing: 0,
  rolling: 4 * illustrativeSettings.parkSpeed,
};

/** Clutch pressure at idle and the time the turbine takes to stop, at one temperature. */
export interface Consequence {
  /** [kPa] */
  readonly clutch: number;
  /** After selection [s]; null if it never stops. */
  readonly stopped: number | null;
}

export function makeTwoWays() {
  const givens = {
    range: signal<Range>(START.range),
    fault: signal<WayFault>(START.fault),
    failSafe: signal<MechanicalFailSafe>(START.failSafe),
    car: signal<Rolling>(START.car),
    feed: signal(START.feed),
  };
  const apply = (partial: Partial<WaysGivens>) => {
    for (const [key, value] of Object.entries(partial)) {
      (givens[key as keyof WaysGivens] as { value: unknown }).value = value;
    }
  };
  const slip = computed(() => givens.fault.value === 'slip');
  const speed = computed(() => SPEEDS[givens.car.value]);
  const power = computed(() => givens.fault.value !== 'noPower');
  /** Null while no fail-safe is in force. */
  const electronicEnd = computed(() =>
    slip.value ? failSafeOf('electronic', 'neutral', speed.value) : null,
  );
  const mechanicalEnd = computed(() =>
    slip.value ? failSafeOf('mechanical', givens.failSafe.value, speed.value) : null,
  );
  const electronic = computed<RangeState>(() => ({
    range: givens.range.value,
    failSafe: electronicEnd.value !== null,
    rolling: slip.value ? electronicEnd.value !== 'failSafePark' : speed.value > 0,
    power: power.value,
  }));
  const mechanical = computed<RangeState>(() => ({
    range: givens.range.value,
    misSet: givens.fault.value === 'misSet',
    failSafe: mechanicalEnd.value !== null,
    defaultGear: slip.value
      ? mechanicalEnd.value === 'failSafeDefaultGear'
      : givens.failSafe.value === 'default-gear',
    power: power.value,
  }));

  const fluid = makeFluid(fluidClasses['low-viscosity']);
  const circuit = computed(() => (givens.range.value === 'R' ? 'reverse' : 'forward'));
  const at = (open: number, tempC: number): Consequence => {
    // The fault feedRestriction by its own measure, so that this page does not carry the fourteen others.
    const plant = {
      ...training,
      feed: { ...training.feed, area: (training.feed.area * open) / 100 },
    };
    const name = circuit.value;
    const { engineRpm, line, clutch } = commandsAt(training, 'idle', name);
    const steady = solveSteady({
      plant,
      fluid,
      tempC,
      engineSpeed: revPerSecond(engineRpm),
      lineCommand: line,
      clutchCommand: clutch,
      applied: [name],
    });
    const { stoppedAfter } = solveEngagement({
      plant,
      fluid,
      tempC,
      range: name === 'reverse' ? 'reverse' : 'drive',
      rangeSelection: 'mechanical',
    });
    return { clutch: (steady.circuits[name]?.pressure ?? 0) / 1e3, stopped: stoppedAfter };
  };
  /** The port is as open as the cable leaves it; set right it is open. */
  const open = computed(() => (givens.fault.value === 'misSet' ? givens.feed.value : FEED.max));
  return {
    givens,
    apply,
    reset: () => apply(START),
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
    open,
    cold: computed(() => at(open.value, COLD_C)),
    hot: computed(() => at(open.value, HOT_C)),
    whole: computed(() => ({ cold: at(FEED.max, COLD_C), hot: at(FEED.max, HOT_C) })),
    /** The same for another setting, for "find the edge". */
    consequence: at,
  } satisfies SimModel<WaysGivens> & Record<string, unknown>;
}
export type WaysModel = ReturnType<typeof makeTwoWays>;
