import type { words as en } from './task-words.en.ts';

export const words: typeof en = {
  tasks: {
    tenTimes: {
      words: ({ cool }) =>
        `Encuentra la temperatura a la que el aceite A está 10 veces más delgado que a ${cool}.`,
      hint: ({ cool }) =>
        `Caliéntalo y fíjate en las palabras debajo de la gráfica. Buscas que esté 10 veces más delgado que a ${cool}.`,
      after: ({ tenTimes }) =>
        `Diez veces más delgado, como a ${tenTimes}. Esa es una temperatura de trabajo normal, así que una rendija ve aceite así de delgado todos los días.`,
    },
    cross: {
      words: ({ hot }) =>
        `Una de estas clases es la más gruesa de dos a ${hot} y, aun así, la más delgada de las mismas dos en frío extremo. Ponla de aceite A, pon a su rival de aceite B y escoge una temperatura que lo muestre.`,
      hint: ({ deepCold }) =>
        `Es la línea que cae menos empinada. Pon estándar contra baja viscosidad y baja de ${deepCold}.`,
      after: ({ cross, standardIndex, lowIndex }) =>
        `Las dos líneas se cruzan cerca de ${cross}. El índice de viscosidad del estándar es más alto, ${standardIndex} contra ${lowIndex}: el calor lo cambia menos, para los dos lados.`,
    },
    higherIndex: {
      words: ({ lowIndex }) =>
        `El aceite A es el tuyo. Escribe dos números que le den un índice de viscosidad más alto que el del aceite B, que es ${lowIndex}.`,
      hint: 'Un índice más alto quiere decir menos cambio. Acerca los dos números: sube el de caliente o baja el de frío.',
      after:
        'Más juntos quiere decir índice más alto y línea más plana. Eso no dice qué tan grueso es un aceite, solo qué tan poco cambia.',
    },
  },
  reached: {
    thinner: ({ temp, times, cool }) =>
      `A ${temp}, el aceite A está ${times} veces más delgado que a ${cool}.`,
    thicker: ({ temp, times, cool }) =>
      `A ${temp}, el aceite A está ${times} veces más grueso que a ${cool}.`,
    pairs: {
      thinnerHot: ({ temp, a, b }) =>
        `A ${temp} el aceite A no es el más grueso de estos dos, ${a} contra ${b}. En caliente tiene que ser el más grueso.`,
      stillThicker: ({ temp, a, b }) =>
        `A ${temp} el A todavía es el más grueso de los dos, ${a} contra ${b}.`,
      neverTurns: ({ temp, a, b }) =>
        `Estos dos nunca cambian de lugar. Hasta a ${temp}, lo más frío que hay aquí, el A es el más grueso, ${a} contra ${b}.`,
      turned: ({ temp, a, b }) => `A ${temp} el A es el más delgado, ${a} contra ${b}.`,
    },
    index: ({ a, b }) => `Tu aceite da un índice de ${a}; el aceite B tiene ${b}.`,
  },
};
