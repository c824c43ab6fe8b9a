import type { words as en } from './words.en.ts';

export const words: typeof en = {
  howSure: '¿Qué tan seguro estás?',
  confidence: { guessing: 'Adivinando', 'fairly-sure': 'Casi seguro', certain: 'Seguro' },
  notYet: {
    both: 'Primero di qué esperas y qué tan seguro estás.',
    prediction: 'Primero di qué esperas.',
    confidence: 'Ahora di qué tan seguro estás.',
  },
  running: 'Corriendo',
  watch: 'Mira la gráfica.',
  predictFirst: 'Primero predice',
  predictAgain: 'Predecir otra vez',
  tasks: 'Tareas',
  ownControls: 'Tus controles',
  loading: { controls: 'Cargando los controles.', pictures: 'Cargando las gráficas.' },
  failed: {
    controls: 'No se pudieron cargar los controles. Revisa tu conexión y vuelve a intentarlo.',
    pictures: 'No se pudieron cargar las gráficas. Revisa tu conexión y vuelve a intentarlo.',
  },
  reload: 'Volver a cargar la página',
};
