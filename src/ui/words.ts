import type { UnitSystem } from './quantity.ts';

/** A sentence, or one that depends on the reader's units. */
export type Words = string | ((system: UnitSystem) => string);

export const say = (words: Words, system: UnitSystem): string =>
  typeof words === 'function' ? words(system) : words;
