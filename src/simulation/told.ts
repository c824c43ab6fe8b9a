import type { UnitSystem } from '../quantity/unit-system.ts';

/** Sentences of a words file: as they stand, or with places for printed values. */
interface Sentences<P> {
  readonly [key: string]: string | ((printed: P) => string) | Sentences<P>;
}
/** The same, with every place filled but for the reader's units. */
export type Told<T> = {
  readonly [K in keyof T]: T[K] extends string
    ? string
    : T[K] extends (printed: never) => string
      ? (system: UnitSystem) => string
      : Told<T[K]>;
};

/**
 * Fills the places of a whole branch of a words file with numbers that do not change while the
 * simulation runs. The compiler refuses a sentence that asks for a number that is not among them.
 */
export function told<P, T extends Sentences<P>>(
  sentences: T,
  facts: (system: UnitSystem) => P,
): Told<T> {
  return Object.fromEntries(
    Object.entries(sentences).map(([key, one]) => [
      key,
      typeof one === 'string'
        ? one
        : typeof one === 'function'
          ? (system: UnitSystem) => one(facts(system))
          : told(one, facts),
    ]),
  ) as Told<T>;
}

/** The options of a prediction, or whatever else a words file keeps under its ids, as a list. */
export const withIds = <T extends object>(
  byId: Readonly<Record<string, T>>,
): readonly (T & { readonly id: string })[] =>
  Object.entries(byId).map(([id, one]) => ({ id, ...one }));
