import { computed } from '@preact/signals';
import {
  billsOver,
  comebackHours,
  comebacksAmong,
  extraHours,
  worthHours,
  type OpenPart,
} from '../../shop/comeback.ts';
import { CARS, FILTER as filter, SOLENOIDS as solenoids } from '../../shop/examples.ts';
import { givensFrom } from '../../simulation/givens.ts';
import type { SimModel } from '../../simulation/sim-spec.ts';

export type OpenGivens = {
  /** Labor to get in and out [h]. */
  access: number;
  /** Labor on top while it is open [h]. */
  extra: number;
  /** Of the part [money]. */
  price: number;
  /** What an hour is sold for [money/h]. */
  rate: number;
  /** What a comeback costs beside the hours [money]. */
  beside: number;
  /** Of a hundred cars, how many come back with the part left, and with it renewed. */
  left: number;
  renewed: number;
};

/** The filter of the prediction, and what the solenoids beside it cost. */
export const FILTER: OpenGivens = {
  access: filter.accessH,
  extra: filter.extraH,
  price: filter.price,
  rate: filter.hourRate,
  beside: filter.beside,
  left: 100 * filter.left,
  renewed: 100 * filter.renewed,
};
export const SOLENOIDS = { price: solenoids.price };

const partOf = (state: OpenGivens): OpenPart => ({
  accessH: state.access,
  extraH: state.extra,
  price: state.price,
  hourRate: state.rate,
  beside: state.beside,
  left: state.left / 100,
  renewed: state.renewed / 100,
});

function sumsOf(state: OpenGivens) {
  const part = partOf(state);
  const { left, work, comebacks } = billsOver(part, CARS);
  const [costs, worth] = [extraHours(part), worthHours(part)];
  return {
    costs,
    worth,
    comeback: comebackHours(part),
    pays: costs < worth,
    left,
    work,
    comebacks,
    renewed: work + comebacks,
    /** Chance of none, one, two ... among the cars. */
    noneLeft: comebacksAmong(CARS, part.left, 0),
    chances: (back: number) => ({
      left: comebacksAmong(CARS, part.left, back),
      renewed: comebacksAmong(CARS, part.renewed, back),
    }),
  };
}
export const sumsAt = (state: Partial<OpenGivens>) => sumsOf({ ...FILTER, ...state });

export function makeModel() {
  const { givens, apply, reset } = givensFrom(FILTER);
  const state = computed<OpenGivens>(() => ({
    access: givens.access.value,
    extra: givens.extra.value,
    price: givens.price.value,
    rate: givens.rate.value,
    beside: givens.beside.value,
    left: givens.left.value,
    renewed: givens.renewed.value,
  }));
  return {
    givens,
    apply,
    reset,
    state,
    sums: computed(() => sumsOf(state.value)),
  } satisfies SimModel<OpenGivens> & Record<string, unknown>;
}
export type OpenModel = ReturnType<typeof makeModel>;
