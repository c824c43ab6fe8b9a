import { languages } from '../../../language/languages.ts';
import { plural } from '../../../quantity/lists.ts';
import type { words as en } from './words.en.ts';

const { locale } = languages.es;

export const words: typeof en = {
  stayed: '¿Qué se te quedó?',
  start: 'Tapar la lección y empezar',
  carryOn: 'Tapar la lección y seguir',
  startAgain: 'Empezar de nuevo',
  others: 'Tapar la lección y hacerme otras',
  paused: (place, of) => `En pausa en la pregunta ${place} de ${of}`,
  tookUp: 'Sigues donde te quedaste.',
  asking: (place, of) => `Pregunta ${place} de ${of}`,
  answered: (place, of) => `Pregunta ${place} de ${of}, contestada`,
  over: 'Cómo te fue',

  best: 'Escoge la mejor respuesta',
  everyOne: 'Marca todas las respuestas que queden',
  sure: '¿Qué tan seguro estás?',
  howSure: { 1: 'Adivinando', 2: 'Casi seguro', 3: 'Seguro' },
  price: (right, wrong) => `bien ${right}, mal ${wrong}`,
  check: 'Revisar mi respuesta',
  uncover: 'Mostrar la lección',
  tryIt: 'Míralo en la simulación (en otra pestaña; tus respuestas se quedan aquí)',
  yours: 'Tu respuesta',
  plainNumber: 'Un número, sin unidad.',
  typed: (quantity) => `Se pide: ${quantity}. Escribe la unidad si no es la que se muestra.`,

  chartAsTable: 'La gráfica en números',
  loadingForm: 'Cargando este tipo de pregunta',
  formMissing:
    'No se pudo cargar este tipo de pregunta. Revisa tu conexión y vuelve a intentarlo. Si eso no ayuda, recarga la página.',
  tryAgain: 'Intentar otra vez',

  wrote: (text) => `Escribiste “${text}”.`,
  marks: (howSure, marks, count) =>
    `${howSure}: ${marks} ${plural(count, { one: 'punto', other: 'puntos' }, locale)}.`,
  tags: {
    answer: 'La respuesta',
    yourNumber: 'Tu número es este',
    mistake: 'Un error común',
    fitsChosen: 'Queda, y la escogiste',
    fits: 'Queda',
    chosen: 'Escogiste esta',
    fitsNot: 'No queda',
  },
  next: 'Siguiente pregunta',
  toEnd: 'Ver cómo te fue',

  result: ({ right, asked, marks, best }) =>
    marks < 0
      ? `${right} de ${asked} bien. Perdiste ${plural(-marks, { one: '1 punto', other: '# puntos' }, locale)}. Lo más que puedes ganar es ${best}.`
      : `${right} de ${asked} bien, ${marks} de ${best} puntos.`,
  table: 'Qué tan seguro estabas y cuántas veces acertaste',
  said: 'Dijiste',
  times: 'Veces',
  right: 'Bien',
  notUsed: 'no la usaste',
  again: 'Vuelve a ver esto',
  returns: ({ days, all }) =>
    `${all ? 'Estas preguntas regresan' : 'La primera de estas preguntas regresa'} ${days === 1 ? 'mañana' : `en ${days} días`} en`,
  today: 'Today (en inglés)',
  certainAndWrong: (times) =>
    `Estabas seguro y te equivocaste ${times === 1 ? 'una vez' : `${times} veces`}: empieza por ahí, porque con un carro nadie te habría parado.`,
  rightGuesses: 'Todo lo que adivinaste estuvo bien: sabes más de lo que crees.',
  nothingWrong: 'Nada mal esta vez. Regresa en unos días a ver si se te quedó.',
  fairlySureAndWrong: (times) =>
    `Estabas casi seguro y te equivocaste ${times === 1 ? 'una vez' : `${times} veces`}. Con un carro habrías seguido adelante. Donde primero lo buscarías, di “Adivinando”.`,
  openLeft: 'Nada de lo que contestaste estuvo mal. Lo que dejaste abierto es lo que hay que leer.',
  knewDoubt: 'Supiste en qué no estabas seguro, y eso en un taller vale mucho.',

  otherAnswer: (status) =>
    `El sitio contestó ${status} en lugar de las preguntas. A lo mejor cambió desde que abriste esta página: recárgala y vuelve a oprimir el botón de empezar.`,
  notQuestions:
    'Llegó algo que no son las preguntas de esta lección. Si tu red te pide iniciar sesión, hazlo primero y vuelve a intentarlo. Si no, recarga la página.',
};
