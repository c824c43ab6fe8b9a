import type { UnitSystem } from '../quantity/unit-system.ts';

/** Sentences of a words file: as they stand, or with places for printed values. */
interface Sentences {
  readonly [key: string]: string | ((printed: never) => string) | Sentences;
}
/** What one of the sentences asks for. */
type Places<T> = T extends string
  ? never
  : T extends (printed: infer P) => string
    ? (all: P) => void
    : { [K in keyof T]: Places<T[K]> }[keyof T];
/** What all of them ask for: a function that must do for each is a function of the whole. */
type Facts<T> = Places<T> extends (all: infer P) => void ? P : unknown;

/** The same sentences, with every place filled but for the reader's units. */
export type Told<T> = {
  readonly [K in keyof T]: T[K] extends string
    ? string
    : T[K] extends (printed: never) => string
      ? (system: UnitSystem) => string
      : Told<T[K]>;
};

/**
 * Fills the places of a whole branch of a words file with numbers that do not change while the
 * simulation runs. The compiler refuses facts that leave a sentence without one of its numbers.
 */
export function told<T extends Sentences>(
  sentences: T,
  facts: (system: UnitSystem) => Facts<T>,
): Told<T> {
  const known: Partial<Record<UnitSystem, Facts<T>>> = {};
  // Worked out once for all the sentences, since many of them take the engine.
  const factsIn = (system: UnitSystem): Facts<T> => (known[system] ??= facts(system));
  const fill = (one: Sentences[string]): unknown => {
    if (typeof one === 'string') return one;
    if (typeof one === 'function') return (system: UnitSystem) => one(factsIn(system) as never);
    return Object.fromEntries(Object.entries(one).map(([key, part]) => [key, fill(part)]));
  };
  return fill(sentences) as Told<T>;
}

/** The options of a prediction, or whatever else a words file keeps under its ids, as a list. */
export const withIds = <T extends object>(
  byId: Readonly<Record<string, T>>,
): readonly (T & { readonly id: string })[] =>
  Object.entries(byId).map(([id, one]) => ({ id, ...one }));

/** The same for the options of a choice, whose ids are values of a given. */
export const withValues = <T extends object>(
  byValue: Readonly<Record<string, T>>,
): readonly (T & { readonly value: string })[] =>
  Object.entries(byValue).map(([value, one]) => ({ value, ...one }));
