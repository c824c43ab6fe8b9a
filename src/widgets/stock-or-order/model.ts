import { computed } from '@preact/signals';
import {
  foundOnShelf,
  keepFor,
  lyingOnShelf,
  usedExactly,
  usedMeanwhile,
} from '../../shop/shelf.ts';
import { SEAL as seal } from '../../shop/examples.ts';
import { givensFrom } from '../../simulation/givens.ts';
import type { SimModel } from '../../simulation/sim-spec.ts';

export type ShelfGivens = {
  /** How many are kept, on the shelf and on order together. */
  keep: number;
  /** How many are used in a year. */
  aYear: number;
  /** From the order to the shelf [d]. */
  days: number;
  /** Of one [money]. */
  price: number;
};

/** The seal of the course: one is used in the time that an order takes. */
export const SEAL: ShelfGivens = { keep: 1, ...seal };
/** Who finds the part there, of a hundred: what the tasks ask for. */
export const WANTED = 0.9;

function shelfOf({ keep: moved, aYear, days, price }: ShelfGivens) {
  // A run moves it by way of the fractions.
  const keep = Math.round(moved);
  const mean = usedMeanwhile(aYear, days);
  const found = foundOnShelf(keep, mean);
  const lying = lyingOnShelf(keep, mean);
  return {
    keep,
    mean,
    found,
    waitAYear: aYear * (1 - found),
    lying,
    money: lying * price,
    enough: keepFor(WANTED, mean),
    chanceOf: (used: number) => usedExactly(mean, used),
  };
}
export const shelfAt = (state: Partial<ShelfGivens>) => shelfOf({ ...SEAL, ...state });

export function makeModel() {
  const { givens, apply, reset } = givensFrom(SEAL);
  const state = computed<ShelfGivens>(() => ({
    keep: givens.keep.value,
    aYear: givens.aYear.value,
    days: givens.days.value,
    price: givens.price.value,
  }));
  return {
    givens,
    apply,
    reset,
    state,
    shelf: computed(() => shelfOf(state.value)),
  } satisfies SimModel<ShelfGivens> & Record<string, unknown>;
}
export type ShelfModel = ReturnType<typeof makeModel>;
