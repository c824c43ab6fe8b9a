import { computed } from '@preact/signals';
import type { Car } from '../../car/car.ts';
import { COLD_C, HOT_C } from '../../car/cold-and-hot.ts';
import { readingOf, type Reading } from '../../car/readings.ts';
import {
  applyFaults,
  faultSeverity,
  fluidClasses,
  findRoot,
  makeFluid,
  training,
} from '../../engine/index.ts';
import { needed } from '../../simulation/required/control.ts';
import { TEMP } from '../../simulation/choices/temperatures.ts';
import { givensFrom } from '../../simulation/givens.ts';
import type { SimModel } from '../../simulation/sim-spec.ts';

export type PumpGivens = {
  /** [rpm] */
  rpm: number;
  /** [°C] */
  temp: number;
  /** [%] */
  pump: number;
  /** [mm] */
  bore: number;
  /** [times a clean one] */
  filter: number;
};

export const SPEED = { min: 500, max: 3000, step: 50 } as const;
/** Every stop of the speed control, so that the chart's cursor can read each. */
export const SWEEP_RPM: readonly number[] = Array.from(
  { length: (SPEED.max - SPEED.min) / SPEED.step + 1 },
  (_, i) => SPEED.min + i * SPEED.step,
);
export const IDLE_RPM = training.testPoints.idle.engineRpm;
export const FAST_RPM = SPEED.max;

const START: PumpGivens = { rpm: IDLE_RPM, temp: HOT_C, pump: 20, bore: 0, filter: 1 };
/** The commands of the idle test at every speed [kPa]: the pump is what changes here, not what is asked of it. */
export const COMMANDS = {
  line: training.testPoints.idle.line / 1e3,
  clutch: training.testPoints.idle.clutch / 1e3,
} as const;

/** Line pressure [kPa] and what is left over [L/min] at each speed of the sweep. */
export interface Sweep {
  readonly line: readonly number[];
  readonly leftOver: readonly number[];
}

/** The speed [rpm] from which on the line has its command: 'always' and 'never' within the speeds offered. */
export type FedFrom =
  | { readonly kind: 'always' }
  | { readonly kind: 'never' }
  | { readonly kind: 'at'; readonly rpm: number };

const fluid = makeFluid(fluidClasses['low-viscosity']);

export type Wear = Pick<PumpGivens, 'pump' | 'bore' | 'filter'>;
export const HEALTHY: Wear = { pump: 0, bore: 0, filter: 1 };
export const carWith = ({ pump, bore, filter }: Wear): Car => ({
  plant: applyFaults(training, {
    pumpWear: { severity: pump / 100 },
    regulatorBore: { severity: faultSeverity('regulatorBore', bore) },
    filter: { severity: faultSeverity('filter', filter) },
  }),
  fluid,
});
const healthyCar = carWith(HEALTHY);

/** Drive engaged, on the commands of the idle test. */
export const readingAt = (car: Car, tempC: number, engineRpm: number): Reading =>
  readingOf(car, { tempC, engineRpm });

/** The two readings that tell a leak from a starved pump: hot at idle, cold and fast. */
export const twoReadingsOf = (car: Car) => ({
  hotIdle: readingAt(car, HOT_C, IDLE_RPM),
  coldFast: readingAt(car, COLD_C, FAST_RPM),
});
export const healthyReadings = twoReadingsOf(healthyCar);

/**
 * With the line at its command nothing but the intake depends on speed. So one solve at the highest
 * speed says what is taken, and the speed that draws as much is where the line comes up: exactly,
 * and without a search.
 */
function fedFrom(car: Car, tempC: number): FedFrom {
  const top = readingAt(car, tempC, SPEED.max);
  if (!top.lineAtCommand) return { kind: 'never' };
  const rpm = ((top.intakeLmin - top.leftOverLmin) / top.fullLmin) * SPEED.max;
  return rpm <= SPEED.min ? { kind: 'always' } : { kind: 'at', rpm };
}

function sweepOf(car: Car, tempC: number): Sweep {
  const readings = SWEEP_RPM.map((rpm) => readingAt(car, tempC, rpm));
  return {
    line: readings.map(({ lineKpa }) => lineKpa),
    leftOver: readings.map(({ leftOverLmin }) => leftOverLmin),
  };
}

/** The temperature [°C] from which on nothing is left over at a speed; null where that is never. */
function dryFrom(car: Car, rpm: number): number | null {
  // Above zero while fed, below zero where the line is short: one crossing, at nothing left.
  const spare = (tempC: number): number => {
    const { leftOverLmin, lineKpa } = readingAt(car, tempC, rpm);
    return leftOverLmin > 0 ? leftOverLmin : lineKpa - COMMANDS.line;
  };
  const hot = spare(TEMP.max);
  const cold = spare(COLD_C);
  if (hot > 0 || cold <= 0) return null;
  return findRoot(spare, COLD_C, TEMP.max, cold, hot).root;
}

/** Less than this share of what a healthy transmission leaves at the same speed and temperature counts as short. */
const SHORT_SHARE = 0.5;
/** Drops, which no cooler lives on: less than this counts as nothing [L/min]. */
export const NOTHING = 0.02;

/** Everybody who lives on the pump, in the order in which they lose their share. */
export const CONSUMERS = ['leftOver', 'line', 'clutch'] as const;
export type Consumer = (typeof CONSUMERS)[number];
/** fed: has its share; short: less than that; starved: nothing, or not enough for its work. */
export type Fed = 'fed' | 'short' | 'starved';

export function howFed(now: Reading, healthy: Reading): Readonly<Record<Consumer, Fed>> {
  const { leftOverLmin, lineKpa, lineAtCommand } = now;
  const clutch = now.clutches.forward.kPa;
  return {
    leftOver:
      leftOverLmin < NOTHING
        ? 'starved'
        : leftOverLmin < SHORT_SHARE * healthy.leftOverLmin
          ? 'short'
          : 'fed',
    line: lineAtCommand ? 'fed' : lineKpa < COMMANDS.clutch ? 'starved' : 'short',
    clutch:
      clutch >= needed['take-off'].kPa ? 'fed' : clutch >= needed.idle.kPa ? 'short' : 'starved',
  };
}

/** Whether the filter holds the pump back. */
export const heldBack = ({ intakeLmin, fullLmin }: Reading): boolean =>
  intakeLmin < fullLmin * (1 - 1e-9);

export function makeModel() {
  const { givens, apply, reset } = givensFrom(START);
  const car = computed(() =>
    carWith({ pump: givens.pump.value, bore: givens.bore.value, filter: givens.filter.value }),
  );
  const now = computed(() => readingAt(car.value, givens.temp.value, givens.rpm.value));
  /** The same engine speed and temperature in a good transmission. */
  const healthy = computed(() => readingAt(healthyCar, givens.temp.value, givens.rpm.value));
  return {
    givens,
    apply,
    reset,
    now,
    healthy,
    fed: computed(() => howFed(now.value, healthy.value)),
    cold: computed(() => readingAt(car.value, COLD_C, givens.rpm.value)),
    sweep: computed(() => sweepOf(car.value, givens.temp.value)),
    coldSweep: computed(() => sweepOf(car.value, COLD_C)),
    fedFrom: computed(() => fedFrom(car.value, givens.temp.value)),
    dryFrom: computed(() => dryFrom(car.value, givens.rpm.value)),
    twoReadings: computed(() => twoReadingsOf(car.value)),
  } satisfies SimModel<PumpGivens> & Record<string, unknown>;
}
export type PumpModel = ReturnType<typeof makeModel>;
