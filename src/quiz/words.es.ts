import type { words as en } from './words.en.ts';

export const words: typeof en = {
  chooseOne: 'Primero elige una respuesta.',
  tickOne: 'Primero marca por lo menos una respuesta.',
  right: 'Correcto.',
  notThatOne: 'Esa no.',
  allRight: ({ count }) => `Correcto, las ${count}.`,
  found: ({ found, count }) => `Encontraste ${found} de las ${count} que van.`,
  foundAndOneMore: ({ found, count }) =>
    `Encontraste ${found} de las ${count} que van, y marcaste 1 que no va.`,
  foundAndMore: ({ found, count, extra }) =>
    `Encontraste ${found} de las ${count} que van, y marcaste ${extra} que no van.`,
  tooHigh: 'No es eso. Es demasiado.',
  tooLow: 'No es eso. Es muy poco.',
  byMistake: ({ mistake }) => `No es eso. Ese número sale con este error: ${mistake}.`,
  ifYou: ({ mistake }) => `Este número sale con este error: ${mistake}. `,
};
