import { computed, signal, type ReadonlySignal } from '@preact/signals';
import {
  ARRIVES,
  minutesFor,
  stateAfter,
  type Advice,
  type CarState,
  type Question,
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

/** What the planner says to readings, which may be kept anywhere, and the form for the next one. */
export function makePlanner(readings: ReadonlySignal<readonly TakenReading[]>) {
  const planner = signal<Planner | null>(null);
  /** Null: the training transmission. */
  const basis = signal<Basis | null>(null);
  const coldMorning = signal(false);
  const stands = computed(() => after(readings.value, coldMorning.value));
  return {
    planner,
    basis,
    readings,
    coldMorning,
    form: makeForm(),
    stands,
    advice: computed(() =>
      planner.value === null
        ? null
        : planner.value({ readings: readings.value, state: stands.value.state, priors: {} }),
    ),
  };
}
export type PlannerModel = ReturnType<typeof makePlanner>;
