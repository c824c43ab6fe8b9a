import type { words as en } from './words.en.ts';

export const words: typeof en = {
  left: ({ left, all }) => `${left} de ${all} palabras.`,
  all: (all) => `Las ${all} palabras.`,
  none: (typed) => `Aquí no hay ninguna palabra que se llame “${typed}”.`,
};
