import type { words as en } from './words.en.ts';

export const words: typeof en = {
  waiting: 'en Park',
  engaging: 'espera a la turbina',
  watching: 'vigila el patinaje',
  pressureRaised: 'presión aumentada',
  failSafeNeutral: 'a salvo: neutral',
  failSafePark: 'a salvo: Park',
  failSafeDefaultGear: 'a salvo: un solo cambio',
};
