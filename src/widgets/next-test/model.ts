import { computed, signal } from '@preact/signals';
import {
  ARRIVES,
  minutesFor,
  stateAfter,
  testOf,
  type Advice,
  type CarState,
  type Question,
  type TakenReading,
} from '../../diagnosis/index.ts';

export type Planner = (question: Question) => Advice;

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

/** The readings of one car, and what the planner says to them. */
export function makeModel() {
  const planner = signal<Planner | null>(null);
  const readings = signal<readonly TakenReading[]>([]);
  const coldMorning = signal(false);
  /** Id of the test that the form is set to. */
  const chosen = signal('codes');
  const stands = computed(() => after(readings.value, coldMorning.value));
  return {
    planner,
    readings,
    coldMorning,
    chosen,
    test: computed(() => testOf(chosen.value)),
    stands,
    advice: computed(() =>
      planner.value === null
        ? null
        : planner.value({ readings: readings.value, state: stands.value.state, priors: {} }),
    ),
    add: (reading: TakenReading) => {
      readings.value = [...readings.value, reading];
    },
    remove: (place: number) => {
      readings.value = readings.value.filter((_one, i) => i !== place);
    },
    clear: () => {
      readings.value = [];
    },
  };
}
export type NextTestModel = ReturnType<typeof makeModel>;
