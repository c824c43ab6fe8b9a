import type { words as en } from './words.en.ts';

export const words: typeof en = {
  siteName: 'Patina en caliente',
  skip: 'Saltar al contenido',
  places: {
    course: 'Curso',
    wholeCar: 'Carro entero',
    practise: 'Práctica',
    measure: 'Medir',
    model: 'Cómo funciona el modelo',
    glossary: 'Glosario',
    sources: 'Fuentes',
  },
  header: {
    onScreen: 'En pantalla:',
    units: 'Unidades',
    usUnits: 'Unidades de EE. UU.:',
    metricUnits: 'Unidades métricas:',
    dark: 'Oscuro',
    light: 'Claro',
    page: 'para toda la página',
    main: 'Principal',
    search: 'Buscar',
    searchSite: 'Buscar en el sitio',
  },
  footer: {
    safetyTitle: 'Antes de meter las manos',
    safety:
      'El aceite caliente quema, la presión y el aire lastiman, y un vehículo se puede rodar: con cambio puesto, en neutral y en Park. Uno levantado se puede caer. Sigue la información de servicio del fabricante del vehículo y los reglamentos de tu localidad. Nada de lo que lees aquí los sustituye, ni sustituye a un técnico con licencia.',
    inventedTitle: 'La transmisión de práctica es inventada',
    invented:
      'No es de ningún fabricante. Sus números se escogieron para enseñar. [Aquí están todos, con cada ecuación (en inglés).](model) Lo que el sitio afirma se midió: [cómo lo sabemos (en inglés).](proof)',
    about:
      'Gratis y de código abierto, con licencia MIT. No te pide cuenta y no manda a ningún lado nada sobre ti. Lo que recuerda se queda en este aparato. La letra y una parte de los programas son obra de otros: [sus licencias (en inglés).](licences)',
    shop: 'Para el taller: [reuniones para proyector (en inglés),](meetings) con votaciones y notas.',
    offline:
      'También funciona donde no hay señal: [cómo usarlo sin internet (en inglés).](offline)',
  },
  coursePath: {
    name: (part, lessons) => `${part}: lección ${lessons}.`,
    after: (lesson, needs) => `${lesson} después de ${needs}`,
    lines: 'Cada lección va después de aquellas cuyas líneas llegan a ella.',
    dashed: 'Punteada: todavía no está escrita.',
    filled: 'Rellena: la marcaste como terminada.',
  },
  marks: {
    source:
      'Lo dice [una fuente](sources). Toca la marca para ver cuál, y qué tan bien la conocemos.',
    none: '[Práctica común del oficio](none), y no hay fuente.',
  },
  lesson: {
    place: (order) => `Lección ${order}`,
    minutes: (minutes) => `${minutes} minutos`,
    times: ({ read, simulate, questions, asked }) =>
      asked === 0
        ? `${read} para leer, ${simulate} para probar`
        : `${read} para leer, ${simulate} para probar, ${questions} para ${asked} preguntas`,
    more: ({ minutes, asked }) =>
      `más ${minutes === '1' ? '1 minuto' : `${minutes} minutos`} para ${asked === 1 ? 'otra pregunta' : `otras ${asked} preguntas`}`,
    after: 'Va después de:',
    notWritten: (title) => `${title} (todavía no está escrita)`,
    inEnglish: (title) => `${title} (en inglés)`,
    objectives: 'Lo que vas a poder hacer',
    ends: 'Qué sigue',
    mark: 'Marcar como terminada',
    marked: 'Marcada como terminada',
    unmark: 'Deshacer',
    notMarked: {
      full: 'A este navegador ya no le queda espacio para recordarlo.',
      blocked: 'Este navegador no guarda nada de este sitio, así que no se puede recordar.',
      newer:
        'Una versión más nueva de este sitio guardó tu avance. Recarga la página y vuelve a intentarlo.',
    },
    moved: 'Lo que buscas con este enlace está ahora en otro lugar:',
    movedWhole: {
      title: 'Esta lección cambió de lugar',
      description: 'Una lección que ahora tiene otra dirección. La página lleva a ella.',
      lead: 'Lo que estaba en esta dirección está ahora en otro lugar:',
    },
    next: (title) => `Sigue: ${title}`,
    nextInEnglish: (title) => `Sigue, en inglés: ${title}`,
    back: 'Volver al curso',
  },
};
