import type { words as en } from './words.en.ts';

export const words: typeof en = {
  table: 'Los números',
  points: (shown, all) => `(${shown} de ${all} puntos)`,
};
