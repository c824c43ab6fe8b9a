import type { words as en } from './words.en.ts';

export const words: typeof en = {
  table: 'Tabla',
  caution: 'Precaución',
  mistake: 'El error de siempre',
  recap: 'En resumen',
  tasks: 'Ahora tú',
  kinds: { finish: 'Termina', diagnose: 'Diagnostica', decide: 'Decide' },
  deeper: (title) => `Más a fondo: ${title}`,
  afterRun: {
    title: 'Qué salió, y por qué',
    shut: 'Pruébalo arriba y esto se abre solo. O ábrelo ya.',
    without: 'Antes de seguir, di qué esperas.',
  },
  solution: 'Ver la respuesta y el porqué',
  glossary: 'Verlo en el glosario',
  questions: {
    elsewhere: 'Por ahora, las preguntas de esta lección están solo en inglés.',
    link: 'Contéstalas en la lección en inglés',
  },
  noSource: { words: 'práctica común, sin fuente', label: 'Práctica común, sin fuente' },
  source: 'Fuente:',
  engineTable: {
    names: {
      fluids: 'los aceites',
      controller: 'el módulo de control',
      frost: 'el frío bajo cero',
      'air-test': 'la prueba de aire',
      'warm-up': 'el calentamiento',
      faults: 'las fallas',
      'apply-chart': 'lo que aplica cada cambio',
      sheet: 'la hoja de una transmisión',
    },
    heads: {
      fluids: ['Aceite', 'Valores'],
      controller: ['Qué', 'Límite'],
      frost: ['Aceite a', 'La turbina se detiene después de'],
      'air-test': ['Qué', 'Retiene'],
      'warm-up': ['Qué', 'Valor'],
      faults: ['Falla', 'Qué cambia', 'De sano a lo peor', 'Qué se ve'],
      'apply-chart': ['Cambio', 'Transmisión de práctica', 'Segunda transmisión'],
      sheet: ['Clave', 'Qué', 'Rango', 'De práctica', 'Segunda'],
    },
  },
};
