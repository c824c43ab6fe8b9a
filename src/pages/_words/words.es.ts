import { languages } from '../../language/languages.ts';
import { listOf, plural } from '../../quantity/lists.ts';
import type { words as en } from './words.en.ts';

const { locale } = languages.es;

export const words: typeof en = {
  home: {
    description:
      'Por qué un embrague que agarra en frío patina en caliente, y cómo comprobarlo. Un sitio gratuito para talleres independientes de transmisiones automáticas.',
    holds: 'Agarra en frío.',
    slips: 'Patina en caliente.',
    findOut: 'Averigua por qué.',
    lead: 'En la mañana jala bien. A los veinte minutos se revoluciona de más, o ya no se mueve. Y cuando se enfría arriba de tu rampa, no tiene nada. Aquí tú mismo calientas el aceite y ves qué tanto se adelgaza.',
    learn: 'Aprende',
    learnAbout: (lessons) =>
      `${lessons} lecciones cortas, desde lo que hace la presión hasta comprobar la reparación. Cada una lleva alrededor de un cuarto de hora.`,
    practise: 'Practica',
    practiseAbout:
      'Unas cuantas preguntas al día, que regresan justo antes de que se te olviden. Carros que llegan con una queja, y un ensayo para tu examen. Está en inglés.',
    measure: 'Mide',
    measureAbout:
      '¿Tienes lecturas de un carro de verdad? Escríbelas y ve qué fallas todavía cuadran y qué prueba sigue. También hay hojas de trabajo y un lector de registros del escáner. Está en inglés.',
    show: 'Enseña',
    showAbout:
      'El carro entero en una pantalla, frío junto a caliente: cualquiera de las fallas, desde que metes Drive hasta el trinquete de Park. Pensado para un proyector, y sirve en un teléfono. Está en inglés.',
    lookUp: 'Consulta',
    lookUpAbout: 'Qué quiere decir cada palabra, como se dice en el taller.',
    whom: 'Para quién es',
    whomAbout:
      'Trabajas en un taller independiente de transmisiones, o estás aprendiendo el oficio. Necesitas saber por qué una falla sale solo en caliente, con qué prueba la compruebas y qué le dices al cliente. No hay más matemáticas que las de una calculadora. Puedes empezar por la primera lección sin saber nada de hidráulica.',
    notYet: 'Lo que todavía no está',
    notYetAbout:
      'Nadie ha medido todavía si este sitio hace mejor a alguien en el trabajo. Para eso hace falta una prueba con aprendices, y no se ha hecho.',
  },
  translated: {
    lessons: 'Lo que ya está en español',
    lesson: (order, minutes) => `Lección ${order}, ${minutes} minutos`,
    glossary: '[El glosario](glossary) tiene las palabras de estas lecciones.',
    rest: 'Lo demás está en inglés',
    restAbout: (lessons) =>
      `[El curso en inglés](course) tiene ${lessons} lecciones, cada una con sus simulaciones y sus preguntas. Las que todavía no están en español:`,
    units: 'Arriba, en cada página, escoges las unidades: psi y °F, o kPa y °C.',
  },
  course: {
    title: 'Curso',
    description:
      'Lecciones cortas sobre por qué un embrague que agarra en frío patina en caliente: la presión, el aceite caliente, las rendijas y cómo comprobar la reparación.',
    lead: ({ lessons, longest, minutes, questions, asked, more }) =>
      `${lessons} lecciones de ${longest} minutos como máximo, ${minutes} minutos en total. Eso cuenta el texto con calma, cada simulación una vez con sus tareas y ${questions} preguntas. Cada ronda sigue hasta ${asked}, y eso lleva ${more} minutos más en todo el curso. Lo que va más a fondo está plegado, y las tareas escritas del final van aparte.`,
    why: 'Por qué pasa',
    how: 'Cómo encontrarlo',
    notWritten: 'Todavía no está escrita',
    minutes: (minutes) => `${minutes} minutos`,
    after: (lessons) =>
      `Después de ${plural(lessons.length, { one: 'la lección', other: 'las lecciones' }, locale)} ${listOf(lessons, 'conjunction', locale)}`,
    done: 'La marcaste como terminada',
  },
  glossary: {
    title: 'Glosario',
    description:
      'Qué quieren decir, en palabras sencillas, los términos de transmisiones e hidráulica de las lecciones, y cómo más se les dice en el taller.',
    lead: 'Las palabras de las lecciones, explicadas en corto, y cómo más se les dice en el taller.',
    find: 'Busca una palabra',
    clear: 'Borrar',
    aToZ: 'A–Z',
    toLetters: 'arriba, a las letras',
    elsewhere:
      'Revisa cómo está escrita o pon menos letras. Tal vez esté en el sitio en inglés: [búscala allá](search).',
    letters: 'Letras',
    also: 'También se le dice:',
    see: 'Ver también:',
    lesson: 'Lección:',
  },
  sources: {
    title: 'Fuentes',
    description:
      'Cada norma, libro y artículo de donde sale un número o una ecuación de este sitio, y cuánto de cada uno leímos nosotros mismos.',
    lead: 'De dónde salen las ecuaciones y los números, qué tomamos de cada fuente y cuánto leímos de ella. Un dato del oficio sin fuente se marca como práctica común ahí donde aparece.',
    kinds: {
      standard: 'Normas',
      book: 'Libros',
      paper: 'Artículos',
      data: 'Datos',
      'open code': 'Código abierto',
      'common practice': 'Práctica común',
    },
    used: 'Para qué la usamos:',
    seen: 'Cómo la conocemos:',
    marked: 'Citada en:',
    howSure: 'Qué tan segura es una marca',
    seenMeans: {
      read: 'tuvimos el texto delante.',
      'read in part': 'tuvimos delante la parte que se usa aquí, no todo.',
      'read as quoted by others': 'la conocemos por libros y artículos que coinciden.',
      'from memory':
        'no hubo texto a la mano. Donde hay ejemplos de otra parte, una prueba compara con ellos lo que sale.',
    },
    noSource: {
      name: 'práctica común, sin fuente',
      meaning:
        'los talleres trabajan así, y no encontramos un texto que nombrar. Primero va la información de servicio del fabricante.',
    },
  },
  search: {
    title: 'Buscar',
    description:
      'Busca en todas las lecciones, sección por sección, en el glosario, en las fuentes y en la página de cómo funciona el modelo.',
    label: '¿Qué buscas?',
    button: 'Buscar',
    how: 'Con una o dos palabras basta casi siempre: una pieza, una falla, una prueba. Se busca en las lecciones, el glosario, las fuentes y la página del modelo.',
    withoutScript:
      'Para buscar hace falta un script, y este navegador aquí no ejecuta ninguno. Lo que hay en el sitio está en estas páginas: [todas las lecciones](course), [todos los términos](glossary), [todas las fuentes](sources) y [cómo funciona el modelo](model). Tu navegador puede buscar palabras dentro de una página.',
  },
  notFound: {
    title: 'No existe esa página',
    description: 'Esta dirección no lleva a ninguna página del sitio. En el curso está todo.',
    lead: 'En esta dirección no hay nada. A lo mejor está mal escrita, o la página se cambió de lugar.',
    ways: '[El curso](course) tiene todas las lecciones. [La portada](home) lleva a lo demás.',
  },
};
