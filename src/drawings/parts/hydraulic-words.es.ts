import type { words as en } from './hydraulic-words.en.ts';

export const words: typeof en = {
  line: 'Línea',
  lineAt: (pressure) => `Línea ${pressure}`,
  clutchAt: (pressure) => `Embrague ${pressure}`,
  pump: 'Bomba',
  filter: 'Filtro',
  regulator: 'Regulador',
  spring: 'Resorte',
  sensor: 'Sensor',
  sump: { cold: 'cárter, aceite frío', hot: 'cárter, aceite caliente' },
  beyond: ['conv., ', 'enfriador', ', lub.'],
  seal: 'Sello de paso',
  case: 'Carcasa',
};
