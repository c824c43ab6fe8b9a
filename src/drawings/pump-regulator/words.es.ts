import type { words as en } from './words.en.ts';

export const words: typeof en = {
  title: 'Bomba y regulador de presión',
  turns: 'gira para acá',
  toClutches: 'a los embragues',
  pushes: ['La línea', 'empuja aquí'],
  shut: 'cerrado',
  crescent: 'Media luna',
  describe: {
    draws: {
      cold: ({ pump }) => `La bomba jala aceite frío por el filtro y entrega ${pump}.`,
      hot: ({ pump }) => `La bomba jala aceite caliente por el filtro y entrega ${pump}.`,
    },
    open: ({ line, leftOver }) =>
      `La línea, a ${line}, empuja la válvula reguladora contra su resorte; la válvula tiene su puerto abierto y deja pasar ${leftOver} al convertidor, al enfriador y a la lubricación.`,
    shut: ({ line }) =>
      `La línea, a ${line}, empuja la válvula reguladora contra su resorte; la válvula ya cerró su puerto: no sobra nada.`,
  },
};
