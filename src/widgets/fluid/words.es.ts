import type { words as en } from './words.en.ts';

export const words: typeof en = {
  title: '¿Qué tan delgado se pone?',
  controls: {
    fluidA: 'Aceite A, línea continua',
    fluidB: 'Aceite B, línea punteada',
    own: {
      own40: ({ temp }) => `Tu propio aceite, cSt a ${temp}`,
      own100: ({ temp }) => `Tu propio aceite, cSt a ${temp}`,
      own15: ({ temp }) => `Tu propio aceite, densidad a ${temp}`,
    },
    usualDensity: 'la que se toma si la hoja no la trae',
    log: 'Escala vertical',
    logOn: 'cada línea hacia arriba es diez veces más',
    logOff: 'pasos iguales',
  },
  own: 'El tuyo',
  ownOption: 'El tuyo, con sus dos números',
  predict: {
    question: ({ cool, hot }) =>
      `Calienta este aceite de ${cool} a ${hot}. ¿Cuántas veces más delgado queda?`,
    options: {
      two: {
        words: 'Como 2 veces más delgado',
        why: ({ twice, hot }) =>
          `Dos veces es lo que hacen los primeros grados: a ${twice} ya está ahí. Lo que falta hasta ${hot} lo adelgaza mucho más.`,
      },
      five: {
        words: 'Como 5 veces más delgado',
        why: ({ fiveTimes }) =>
          `Por cinco veces se pasa en el camino, cerca de ${fiveTimes}. De ahí se sigue adelgazando, nada más que en pasos más chicos.`,
      },
      ten: {
        words: '10 veces más delgado, o más todavía',
        why: ({ from, to, times }) =>
          `De ${from} a ${to} son ${times} veces. El aceite no tiene nada malo: todos hacen lo mismo, y la transmisión tiene que vivir con eso.`,
      },
    },
    runLabel: 'Caliéntalo',
  },
  outcome: ({ times, from, cool, to, hot }) =>
    `${times} veces más delgado: ${from} a ${cool}, ${to} a ${hot}.`,
  says: {
    thinner: ({ side, name, temp, cSt, mPas, times, cool }) =>
      `${side} (${name}) a ${temp}: ${cSt}, ${mPas}, ${times} veces más delgado que a ${cool}.`,
    thicker: ({ side, name, temp, cSt, mPas, times, cool }) =>
      `${side} (${name}) a ${temp}: ${cSt}, ${mPas}, ${times} veces más grueso que a ${cool}.`,
    alike: ({ side, name, temp, cSt, mPas, cool }) =>
      `${side} (${name}) a ${temp}: ${cSt}, ${mPas}, igual que a ${cool}.`,
    alone: ({ side, name, temp, cSt, mPas }) => `${side} (${name}) a ${temp}: ${cSt}, ${mPas}.`,
    outOfRange: ({ side, name }) =>
      `${side} (${name}): aquí estos dos números se salen del rango de la ley.`,
    sameFluid: 'A y B son el mismo aceite.',
  },
  chart: {
    kinematic: 'Viscosidad cinemática',
    dynamic: 'Viscosidad dinámica',
    name: {
      kinematic: 'Viscosidad cinemática contra temperatura',
      dynamic: 'Viscosidad dinámica contra temperatura',
    },
    line: ({ side, name }) => `${side}: ${name}`,
    asFarAsWarmed: 'Dos aceites, hasta donde se han calentado.',
    feltByGap: 'Viscosidad cinemática por densidad. Esto es lo que siente una rendija.',
    logScale: 'Cada línea hacia arriba es diez veces más grueso.',
    evenScale: 'Empinada en frío, plana en caliente.',
    tooThick:
      'Aquí está demasiado grueso para esta gráfica. En “Más controles” hay una escala que lo alcanza.',
  },
  table: {
    caption: ({ temp }) => `Lado a lado a ${temp}`,
    density: 'Densidad',
    thinnerThan: ({ cool }) => `Más delgado que a ${cool}, en cSt`,
    thinner: ({ times }) => `${times} veces`,
    thicker: ({ times }) => `${times} veces más grueso`,
    index: 'Índice de viscosidad',
    none: 'ninguno',
  },
  noIndex: 'no definido para un aceite tan delgado',
  ownIndex: ({ index }) => `Índice de viscosidad de este par: ${index}.`,
  refused: {
    same: ({ hot, cool }) =>
      `${hot} como número caliente es lo mismo que ${cool} como el más frío. Todo aceite se adelgaza al calentarse, así que el número caliente tiene que ser el más chico.`,
    more: ({ hot, cool }) =>
      `${hot} como número caliente es más que ${cool} como el más frío. Todo aceite se adelgaza al calentarse, así que el número caliente tiene que ser el más chico.`,
    inForce: ({ own40, own100 }) => `Mientras tanto valen ${own40} y ${own100}.`,
  },
};
