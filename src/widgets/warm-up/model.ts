import { computed } from '@preact/signals';
import {
  driveHeat,
  timeToReach,
  trainingLump,
  warmedTo,
  type DriveKind,
} from '../../engine/index.ts';
import { makeCar, REFERENCE_CRACK_MM } from '../../car/car.ts';
import { letsGo, type LetsGo } from '../../car/lets-go.ts';
import { givensFrom } from '../../simulation/givens.ts';
import { DEMAND_OF, type Required } from '../../simulation/required/control.ts';
import type { SimModel } from '../../simulation/sim-spec.ts';

export const KINDS = Object.keys(driveHeat) as readonly DriveKind[];

export type WarmUpGivens = {
  /** Air outside [°C] */
  outside: number;
  /** Crack in the transfer seal [mm] */
  crack: number;
  /** The drive: three stretches, each with its kind and its minutes. */
  kind1: DriveKind;
  minutes1: number;
  kind2: DriveKind;
  minutes2: number;
  kind3: DriveKind;
  minutes3: number;
  /** Fluid above the air at the start [°C]; 0 after a night outside. */
  above: number;
  required: Required;
};

export const START: WarmUpGivens = {
  outside: 20,
  crack: REFERENCE_CRACK_MM,
  kind1: 'gentle',
  minutes1: 20,
  kind2: 'gentle',
  minutes2: 20,
  kind3: 'gentle',
  minutes3: 20,
  above: 0,
  required: 'gentle',
};

export const OUTSIDE = { min: -30, max: 45, step: 1 } as const;
export const ABOVE = { min: 0, max: 80, step: 5 } as const;
export const MINUTES = { min: 0, max: 20, step: 1 } as const;
/** The longest drive that can be planned [min]: the time axis. */
export const LONGEST = 3 * MINUTES.max;
/** Points of the line [min]. */
const EVERY = 0.5;
export const TIMES: readonly number[] = Array.from(
  { length: LONGEST / EVERY + 1 },
  (_, i) => i * EVERY,
);

/** One stretch as driven. Times in minutes from the start. */
export interface Stretch {
  readonly kind: DriveKind;
  readonly from: number;
  readonly to: number;
  /** Fluid at its start and end, and the engine's coolant at its start [°C]. */
  readonly startC: number;
  readonly coolantC: number;
  readonly endC: number;
}

/** When this drive shows the fault. */
export type Shows =
  | { readonly when: 'at-once' }
  | { readonly when: 'at'; readonly minute: number; readonly kind: DriveKind }
  | { readonly when: 'not-on-this-drive' }
  /** It holds at any temperature offered, or not at any. */
  | { readonly when: 'never' };

export interface Plan {
  readonly outside: number;
  readonly above: number;
  readonly parts: readonly { readonly kind: DriveKind; readonly minutes: number }[];
}

export function drive({ outside, above, parts }: Plan): readonly Stretch[] {
  let from = 0;
  let startC = outside + above;
  // The engine has stood as long as the transmission, and warmed with it where that starts warm.
  let coolantC = outside + above;
  return parts
    .filter(({ minutes }) => minutes > 0)
    .map(({ kind, minutes }) => {
      const begins = { fluidC: startC, coolantC, ambientC: outside, heat: driveHeat[kind] };
      const ends = warmedTo(trainingLump, { ...begins, time: minutes * 60 });
      const stretch = { kind, from, to: from + minutes, startC, coolantC, endC: ends.fluidC };
      from += minutes;
      startC = ends.fluidC;
      coolantC = ends.coolantC;
      return stretch;
    });
}

/** Fluid at a minute of the drive [°C]; null after its end. */
export function fluidAtMinute(plan: Plan, all: readonly Stretch[], minute: number): number | null {
  const found = all.find(({ to }) => minute <= to + 1e-9);
  if (!found) return minute === 0 ? plan.outside + plan.above : null;
  return warmedTo(trainingLump, {
    fluidC: found.startC,
    coolantC: found.coolantC,
    ambientC: plan.outside,
    heat: driveHeat[found.kind],
    time: (minute - found.from) * 60,
  }).fluidC;
}

export function shows(plan: Plan, lets: LetsGo): Shows {
  if (lets.kind === 'always') return { when: 'never' };
  const { outside, above } = plan;
  if (lets.kind === 'never' || outside + above >= lets.tempC) return { when: 'at-once' };
  for (const { kind, from, to, startC, coolantC } of drive(plan)) {
    const begins = { fluidC: startC, coolantC, ambientC: outside, heat: driveHeat[kind] };
    const time = timeToReach(trainingLump, begins, lets.tempC);
    if (time !== null && from + time / 60 <= to) {
      return { when: 'at', minute: from + time / 60, kind };
    }
  }
  return { when: 'not-on-this-drive' };
}

export function makeModel() {
  const { givens, apply, reset } = givensFrom(START);
  const lets = computed(() =>
    letsGo(makeCar({ crackMm: givens.crack.value }), DEMAND_OF[givens.required.value]),
  );
  const plan = computed<Plan>(() => ({
    outside: givens.outside.value,
    above: givens.above.value,
    parts: [
      { kind: givens.kind1.value, minutes: givens.minutes1.value },
      { kind: givens.kind2.value, minutes: givens.minutes2.value },
      { kind: givens.kind3.value, minutes: givens.minutes3.value },
    ],
  }));
  const stretches = computed(() => drive(plan.value));
  return {
    givens,
    apply,
    reset,
    plan,
    letsGo: lets,
    stretches,
    temps: computed(() => TIMES.map((t) => fluidAtMinute(plan.value, stretches.value, t))),
    shows: computed(() => shows(plan.value, lets.value)),
    /** How long the drive is [min], and how warm the fluid is at its end [°C]. */
    end: computed(() => {
      const last = stretches.value.at(-1);
      const { outside, above } = plan.value;
      return { minute: last?.to ?? 0, tempC: last?.endC ?? outside + above };
    }),
    /** The same drive in other weather, for "find the edge". */
    showsAt: (outside: number) => shows({ ...plan.peek(), outside }, lets.peek()),
  } satisfies SimModel<WarmUpGivens> & Record<string, unknown>;
}
export type WarmUpModel = ReturnType<typeof makeModel>;
