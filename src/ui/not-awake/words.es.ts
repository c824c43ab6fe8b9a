import type { words as en } from './words.en.ts';

export const words: typeof en = {
  asleep:
    'Esta parte de la página no ha despertado: su programa no ha llegado. Recarga la página cuando tengas conexión. Lo que este aparato guarda para ti sigue igual.',
};
