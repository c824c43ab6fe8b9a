import { computed } from '@preact/signals';
import { givensFrom } from '../../simulation/givens.ts';
import type { SimModel } from '../../simulation/sim-spec.ts';
import { curveOf, TEMPS, timeAt, type Crack, type Lip, type SealName } from './seals.ts';

export type SealGivens = {
  /** Fluid, and the seals in it [°C]. */
  temp: number;
  crack: Crack;
  lip: Lip;
};
export const START: SealGivens = { temp: 0, crack: '0.25', lip: '100' };

/** What each seal takes to engage [s]; null where the controller gives the clutch up. */
export interface Times {
  readonly sound: number | null;
  readonly split: number | null;
  readonly hard: number | null;
}
const later = (one: number | null, other: number | null): number =>
  (one ?? Infinity) - (other ?? Infinity);

export function makeModel() {
  const { givens, apply, reset } = givensFrom(START);
  const split = computed((): SealName => `split-${givens.crack.value}`);
  const hard = computed((): SealName => `hard-${givens.lip.value}`);
  const at = (tempC: number): Times => ({
    sound: timeAt('sound', tempC),
    split: timeAt(split.value, tempC),
    hard: timeAt(hard.value, tempC),
  });
  const now = computed(() => at(givens.temp.value));
  return {
    givens,
    apply,
    reset,
    at,
    now,
    sound: computed(() => curveOf('sound')),
    split: computed(() => curveOf(split.value)),
    hard: computed(() => curveOf(hard.value)),
    /** How much later than a sound one [s]; more than any number where the clutch is given up. */
    late: computed(() => ({
      split: later(now.value.split, now.value.sound),
      hard: later(now.value.hard, now.value.sound),
    })),
    /** Where the two take as long as each other [°C]: from there on the split is the later one. Null if it always is. */
    alike: computed((): number | null => {
      const ahead = TEMPS.map((tempC) => later(at(tempC).split, at(tempC).hard));
      const i = ahead.findIndex((by) => by >= 0);
      const [before, after, from, to] = [ahead[i - 1], ahead[i], TEMPS[i - 1], TEMPS[i]];
      if (before === undefined || after === undefined || from === undefined || to === undefined)
        return null;
      return Number.isFinite(after) ? from + ((to - from) * -before) / (after - before) : to;
    }),
    /** The warmest fluid in which the split one still engages [°C]. */
    splitUpTo: computed(() => TEMPS.findLast((tempC) => at(tempC).split !== null) ?? null),
  } satisfies SimModel<SealGivens> & Record<string, unknown>;
}
export type SealModel = ReturnType<typeof makeModel>;
