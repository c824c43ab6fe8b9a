import { batch, signal, type Signal } from '@preact/signals';
import type { Givens } from './sim-spec.ts';

/** A `SimModel` whose two functions may be taken out of it. */
interface Settable<G extends Givens> {
  readonly givens: { readonly [K in keyof G]: Signal<G[K]> };
  readonly apply: (partial: Partial<G>) => void;
  readonly reset: () => void;
}

/**
 * The givens of a model as signals, and the two ways to set several at once, all from the values
 * it starts with. Setting is batched: whatever is computed from three givens is worked out once
 * when a task sets all three, and never from a state half old and half new, which need not make
 * sense to the engine.
 */
export function givensFrom<G extends Givens>(start: G): Settable<G> {
  const givens = {} as { [K in keyof G]: Signal<G[K]> };
  for (const key in start) givens[key] = signal(start[key]);
  const apply = (partial: Partial<G>): void =>
    batch(() => {
      for (const key in partial) givens[key].value = partial[key] as G[typeof key];
    });
  return { givens, apply, reset: () => apply(start) };
}
