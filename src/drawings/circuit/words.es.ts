import type { words as en } from './words.en.ts';

export const words: typeof en = {
  title: 'Un circuito de embrague, de la bomba a los discos',
  crack: (width) => `grieta de ${width}`,
  whole: 'entero',
  leaks: (flow) => `fuga ${flow}`,
  rings: 'Anillos de sellado',
  hole: 'Orificio',
  valve: 'Válvula',
  clearances: 'holguras',
  describe: {
    pump: {
      cold: (line) => `La bomba alimenta la línea a ${line} con aceite frío.`,
      hot: (line) => `La bomba alimenta la línea a ${line} con aceite caliente.`,
    },
    over: 'Lo que sobra, el regulador lo manda al convertidor, al enfriador y a la lubricación.',
    noneOver: 'No sobra nada para el convertidor, el enfriador y la lubricación.',
    way: 'De la línea, el aceite va por la válvula de alimentación y su orificio, por el sello de paso y los anillos de sellado, hasta el embrague.',
    split: ({ width, crack }) =>
      `El sello de paso tiene una grieta de ${width} y por ahí se pierden ${crack}.`,
    whole: 'El sello de paso está entero y no pierde nada.',
    holds: (clutch) => `El embrague tiene ${clutch} y agarra.`,
    slips: (clutch) => `El embrague tiene ${clutch} y patina.`,
  },
};
