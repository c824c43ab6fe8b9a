import type { words as en } from './words.en.ts';

export const words: typeof en = {
  none: 'sin grieta',
  fraction: 'una fracción de un cabello',
  half: 'medio cabello',
  whole: [
    'un cabello',
    'dos cabellos',
    'tres cabellos',
    'cuatro cabellos',
    'cinco cabellos',
    'seis cabellos',
  ],
  oneAndAHalf: 'un cabello y medio',
  many: ({ count }) => `${count} cabellos`,
};
