import { computed } from '@preact/signals';
import { levelOf, pickUpOf, type Place } from '../../car/pan.ts';
import { COLD_C } from '../../car/cold-and-hot.ts';
import { training } from '../../engine/index.ts';
import { givensFrom } from '../../simulation/givens.ts';
import type { SimModel } from '../../simulation/sim-spec.ts';

export type LevelGivens = {
  /** More or less than the right fill [L]. */
  off: number;
  /** [°C] */
  temp: number;
  rpm: number;
  place: Place;
};

export const IDLE_RPM = training.testPoints.idle.engineRpm;
const START: LevelGivens = { off: 0, temp: COLD_C, rpm: IDLE_RPM, place: 'flat' };

const fillOf = ({ off, temp, rpm, place }: LevelGivens) => ({
  offL: off,
  tempC: temp,
  engineRpm: rpm,
  place,
});
export const levelAt = (state: Partial<LevelGivens>) => levelOf(fillOf({ ...START, ...state }));
export const pickUpAt = (state: Partial<LevelGivens>) => pickUpOf(fillOf({ ...START, ...state }));

export function makeModel() {
  const { givens, apply, reset } = givensFrom(START);
  const state = computed(() =>
    fillOf({
      off: givens.off.value,
      temp: givens.temp.value,
      rpm: givens.rpm.value,
      place: givens.place.value,
    }),
  );
  return {
    givens,
    apply,
    reset,
    level: computed(() => levelOf(state.value)),
    pickUp: computed(() => pickUpOf(state.value)),
  } satisfies SimModel<LevelGivens> & Record<string, unknown>;
}
export type LevelModel = ReturnType<typeof makeModel>;
