import type { words as en } from './words.en.ts';

export const words: typeof en = {
  start: (lesson) => `Empieza con la lección ${lesson}`,
  goOn: (lesson) => `Sigue con la lección ${lesson}`,
  carryOn: (lesson) => `Continúa con la lección ${lesson}`,
  again: (lesson) => `Lee otra vez la lección ${lesson}`,
  takes: (title, minutes) => `${title}. ${minutes} minutos.`,
  wasAt: (title, section) => `${title}. Ibas en “${section}”.`,
  allDone: (lessons, first) =>
    `Marcaste las ${lessons} lecciones como terminadas. La primera es ${first}.`,
  noneDone:
    'Todavía no marcas ninguna lección como terminada. Este aparato recuerda las que marques.',
  someDone: (done, written) =>
    `Llevas ${done} de ${written} lecciones marcadas como terminadas en este aparato.`,
  notKept: {
    blocked: 'Este navegador no guarda nada de este sitio, así que tu avance no se recuerda.',
    unreadable: 'No se puede leer lo que este navegador guardó de tu avance. No se borró.',
    newer: 'Una versión más nueva de este sitio guardó tu avance. Recarga la página para verlo.',
  },
};
