import { computed, effect, signal, type ReadonlySignal } from '@preact/signals';
import {
  ARRIVES,
  minutesFor,
  stateAfter,
  type Advice,
  type CarState,
  type Question,
  type Ranked,
  type TakenReading,
} from '../diagnosis/index.ts';
import type { Plant } from '../engine/index.ts';
import { makeForm } from './form-model.ts';

export type Planner = (question: Question) => Advice;

/** Which transmission the planner reasons about. */
export interface Basis {
  readonly plant: Plant;
  readonly kind: 'training' | 'second' | 'own';
  /** Of a sheet of one's own: what it is called, and how many of its numbers were typed. */
  readonly own?: { readonly name: string; readonly yours: number; readonly of: number };
}

/** How the car stands after readings, and what they took [min]. */
function after(readings: readonly TakenReading[], coldMorning: boolean) {
  let state: CarState = { ...ARRIVES, coldMorning };
  let minutes = 0;
  for (const { test } of readings) {
    minutes += minutesFor(test, state);
    state = stateAfter(test, state);
  }
  return { state, minutes };
}

/** Ranks tests and tells when it has; returns the way to stop it. */
type Rank = (advice: Advice, told: (next: readonly Ranked[]) => void) => () => void;

/**
 * What the planner says to readings, which may be kept anywhere, and the form for the next one. `rank`: how the tests are ranked
 * where that must not hold up the page.
 */
export function makePlanner(readings: ReadonlySignal<readonly TakenReading[]>, rank?: Rank) {
  const planner = signal<Planner | null>(null);
  /** Null: the training transmission. */
  const basis = signal<Basis | null>(null);
  const coldMorning = signal(false);
  const stands = computed(() => after(readings.value, coldMorning.value));
  const weighed = computed(() =>
    planner.value === null
      ? null
      : planner.value({ readings: readings.value, state: stands.value.state, priors: {} }),
  );
  const ranked = signal<{ readonly of: Advice; readonly next: readonly Ranked[] } | null>(null);
  const ranking = computed(
    () => rank !== undefined && weighed.value !== null && ranked.value?.of !== weighed.value,
  );
  const stop =
    rank &&
    effect(() => {
      const of = weighed.value;
      return of === null
        ? undefined
        : rank(of, (next) => {
            ranked.value = { of, next };
          });
    });
  return {
    planner,
    basis,
    readings,
    coldMorning,
    form: makeForm(),
    stands,
    /** True while it is worked out which test tells most; `next` of the advice is empty meanwhile. */
    ranking,
    stopRanking: () => stop?.(),
    advice: computed((): Advice | null => {
      const advice = weighed.value;
      if (advice === null || rank === undefined) return advice;
      const { faults, fit, posterior, ranking: steps } = advice;
      const next = ranked.value?.of === advice ? ranked.value.next : [];
      return { faults, fit, posterior, next, ranking: steps };
    }),
  };
}
export type PlannerModel = ReturnType<typeof makePlanner>;
