import type { words as en } from './words.en.ts';

export const words: typeof en = {
  title: 'Sin mirar atrás',
  offer: {
    head: '¿Qué se te quedó?',
    start: 'Tapar la lección y empezar',
    loading: 'Cargando las preguntas',
    again: 'Intentar otra vez',
    reload: 'Recargar la página',
    offline: 'No se pudieron cargar las preguntas. Revisa tu conexión y vuelve a intentarlo.',
    stuck:
      'No se pudieron cargar las preguntas. Recarga la página y vuelve a oprimir el botón de empezar.',
  },
  intro: (round, all) =>
    `${round} de las ${all} preguntas de esta lección. La lección se esconde hasta que acabes; por eso se te queda. Tus respuestas se quedan en este aparato; nada se manda.`,
  scale: {
    told: ({ right, wrong }) =>
      `Antes de revisar dices qué tan seguro estás. Mientras más seguro digas, más está en juego: una respuesta correcta gana ${right} y una equivocada ${wrong}; así que conviene ser honesto.`,
    source: 'De dónde sale esta escala',
  },
  plain: {
    chartAsTable: 'La gráfica en números',
    number: 'Calcúlalo.',
    single: 'Una respuesta es la mejor.',
    several: 'Hay más de una respuesta que queda.',
    order: 'Pon los pasos en orden.',
    match: 'Busca la letra que va con cada línea.',
    spotStep: 'Un paso está mal o es peligroso. ¿Cuál?',
    spotGap: 'Falta un paso. ¿Cuál es y dónde va?',
    mayStandBefore: 'o antes del paso de arriba',
    case: 'Pide las lecturas que quieras y después di qué es.',
    minutes: (minutes) => `${minutes} min`,
    cheapest: (minutes) => `Las lecturas más baratas que deciden toman ${minutes} min:`,
    nothing: 'no va con ninguna.',
    missingFirst: 'Falta antes del paso 1:',
    missingAfter: (step) => `Falta después del paso ${step}:`,
    wrongStep: 'Es este:',
    answer: 'Respuesta y razones',
    comesOf: (mistake) => `es lo que te sale si ${mistake}.`,
    fits: 'Queda:',
    fitsNot: 'No queda:',
    onPaper: 'Las respuestas, con la razón de cada opción, están en pantalla.',
  },
};
