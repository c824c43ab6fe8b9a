import { computed, signal } from '@preact/signals';
import {
  applyFaults,
  faultSeverity,
  findRoot,
  fluidClasses,
  litresPerMinute,
  makeFluid,
  revPerSecond,
  solveSteady,
  type Plant,
  training,
} from '../../engine/index.ts';
import { needed } from '../clutch-pressure/needed.ts';
import type { SimModel } from '../../simulation/sim-spec.ts';
import { COLD_C, FAST_RPM, HOT_C, IDLE_RPM, SPEED, SWEEP_RPM, TEMP } from './ranges.ts';

export type HungryGivens = {
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

const START: HungryGivens = { rpm: IDLE_RPM, temp: HOT_C, pump: 20, bore: 0, filter: 1 };
/** The commands of the idle test point at every speed: the pump is what changes here, not what is asked of it. */
const { line: LINE_COMMAND, clutch: CLUTCH_COMMAND } = training.testPoints.idle;
export const COMMANDS = { line: LINE_COMMAND / 1e3, clutch: CLUTCH_COMMAND / 1e3 } as const;
const FLUID = makeFluid(fluidClasses['low-viscosity']);

/** One state as the pictures want it: kPa, L/min. */
export interface Reading {
  readonly line: number;
  readonly lineAtCommand: boolean;
  readonly clutch: number;
  readonly flows: {
    /** What the pump would draw if nothing held it back. */
    readonly full: number;
    readonly intake: number;
    readonly slip: number;
    readonly delivered: number;
    readonly clearances: number;
    /** Solenoid bleeds and the lubrication that hangs on the line. */
    readonly bleed: number;
    readonly bore: number;
    /** What goes into the applied clutch, all of which its rings let out again. */
    readonly clutch: number;
    readonly leftOver: number;
  };
}

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

type Wear = Pick<HungryGivens, 'pump' | 'bore' | 'filter'>;
export const plantWith = ({ pump, bore, filter }: Wear): Plant =>
  applyFaults(training, {
    pumpWear: { severity: pump / 100 },
    regulatorBore: { severity: faultSeverity('regulatorBore', bore) },
    filter: { severity: faultSeverity('filter', filter) },
  });
const SOUND = plantWith({ pump: 0, bore: 0, filter: 1 });

function solve(plant: Plant, tempC: number, rpm: number) {
  return solveSteady({
    plant,
    fluid: FLUID,
    tempC,
    engineSpeed: revPerSecond(rpm),
    lineCommand: LINE_COMMAND,
    clutchCommand: CLUTCH_COMMAND,
    applied: ['forward'],
  });
}

export function readingOf(plant: Plant, tempC: number, rpm: number): Reading {
  const state = solve(plant, tempC, rpm);
  const { forward } = state.circuits;
  if (forward === undefined) throw new Error('The forward circuit was applied and is missing.');
  const lmin = litresPerMinute;
  return {
    line: state.linePressure / 1e3,
    lineAtCommand: state.lineAtCommand,
    clutch: forward.pressure / 1e3,
    flows: {
      full: lmin(plant.pump.displacement * revPerSecond(rpm) * (1 - state.air)),
      intake: lmin(state.pumpIntake),
      slip: lmin(state.pumpSlip),
      delivered: lmin(state.pumpFlow),
      clearances: lmin(state.clearances),
      bleed: lmin(state.bleed),
      bore: lmin(state.regulatorLoss),
      clutch: lmin(forward.feed),
      leftOver: lmin(state.leftOver),
    },
  };
}

/**
 * With the line at its command nothing but the intake depends on speed. So one solve at the highest
 * speed says what is taken, and the speed that draws as much is where the line comes up: exactly,
 * and without a search.
 */
function fedFrom(plant: Plant, tempC: number): FedFrom {
  const top = solve(plant, tempC, SPEED.max);
  if (!top.lineAtCommand) return { kind: 'never' };
  const taken = top.pumpIntake - top.leftOver;
  const rpm = (taken / (plant.pump.displacement * (1 - top.air))) * 60;
  return rpm <= SPEED.min ? { kind: 'always' } : { kind: 'at', rpm };
}

function sweepOf(plant: Plant, tempC: number): Sweep {
  const states = SWEEP_RPM.map((rpm) => solve(plant, tempC, rpm));
  return {
    line: states.map(({ linePressure }) => linePressure / 1e3),
    leftOver: states.map(({ leftOver }) => litresPerMinute(leftOver)),
  };
}

export function makeWhoGoesHungry() {
  const givens = {
    rpm: signal(START.rpm),
    temp: signal(START.temp),
    pump: signal(START.pump),
    bore: signal(START.bore),
    filter: signal(START.filter),
  };
  const apply = (partial: Partial<HungryGivens>) => {
    for (const [key, value] of Object.entries(partial)) {
      givens[key as keyof HungryGivens].value = value;
    }
  };
  const plant = computed(() =>
    plantWith({
      pump: givens.pump.value,
      bore: givens.bore.value,
      filter: givens.filter.value,
    }),
  );
  const now = computed(() => readingOf(plant.value, givens.temp.value, givens.rpm.value));
  /** The same engine speed and temperature in a good transmission. */
  const sound = computed(() => readingOf(SOUND, givens.temp.value, givens.rpm.value));
  return {
    givens,
    apply,
    reset: () => apply(START),
    now,
    sound,
    cold: computed(() => readingOf(plant.value, COLD_C, givens.rpm.value)),
    sweep: computed(() => sweepOf(plant.value, givens.temp.value)),
    coldSweep: computed(() => sweepOf(plant.value, COLD_C)),
    fedFrom: computed(() => fedFrom(plant.value, givens.temp.value)),
    /** The temperature [°C] from which on nothing is left over, at this speed; null where that is never. */
    dryFrom: computed((): number | null => {
      // Above zero while fed, below zero where the line is short: one crossing, at nothing left.
      const spare = (tempC: number): number => {
        const { flows, line } = readingOf(plant.value, tempC, givens.rpm.value);
        return flows.leftOver > 0 ? flows.leftOver : line - COMMANDS.line;
      };
      const hot = spare(TEMP.max);
      const cold = spare(COLD_C);
      if (hot > 0 || cold <= 0) return null;
      return findRoot(spare, COLD_C, TEMP.max, cold, hot).root;
    }),
    /** The two readings that tell a leak from a starved pump: hot at idle, cold and fast. */
    twoReadings: computed(() => ({
      hotIdle: readingOf(plant.value, HOT_C, IDLE_RPM),
      coldFast: readingOf(plant.value, COLD_C, FAST_RPM),
    })),
    clutchIs: computed(() => clutchWord(now.value.clutch)),
  } satisfies SimModel<HungryGivens> & Record<string, unknown>;
}
export type HungryModel = ReturnType<typeof makeWhoGoesHungry>;

/** What the clutch is still good for. */
export type ClutchWord = 'takes off' | 'stands' | 'slips';
export function clutchWord(kpa: number): ClutchWord {
  if (kpa >= needed['take-off'].pressure) return 'takes off';
  return kpa >= needed.idle.pressure ? 'stands' : 'slips';
}

export const soundReadings = {
  hotIdle: readingOf(SOUND, HOT_C, IDLE_RPM),
  coldFast: readingOf(SOUND, COLD_C, FAST_RPM),
} as const;
