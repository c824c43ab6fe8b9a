import type { words as en } from './words.en.ts';

export const words: typeof en = {
  whatItDid: 'Lo que pasó',
  youSaid: {
    guessing: 'Dijiste, adivinando',
    'fairly-sure': 'Dijiste, casi seguro',
    certain: 'Dijiste, seguro',
  },
  modelSays: 'El modelo dice',
  right: 'Como dijiste.',
  wrong: 'No fue como dijiste.',
  instead: 'Lo que pasó:',
  otherAnswers: ({ count }) => (count === 1 ? 'La otra respuesta' : 'Las otras respuestas'),
  lastTime: 'Tu última predicción, y lo que pasó',
  toTasks: 'Pasar a las tareas',
  task: ({ number, of }) => `Tarea ${number} de ${of}`,
  verdicts: {
    'too-high': 'Muy alto.',
    'too-low': 'Muy bajo.',
    'too-early': 'Muy temprano.',
    'too-late': 'Muy tarde.',
    nearly: 'Ya casi.',
    'not-that': 'Esa no es.',
  },
  done: 'Listo.',
  hint: 'Dame una pista',
  nextTask: 'Siguiente tarea',
  toOwnControls: 'Pasar a tus controles',
  startOver: 'Empezar de nuevo esta tarea',
  ownControls: 'Tus controles',
  moreControls: 'Más controles',
  onWall: 'Mostrarlo en la pared (en inglés)',
};
