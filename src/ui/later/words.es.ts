import type { words as en } from './words.en.ts';

export const words: typeof en = {
  less: (label) => `${label}: menos`,
  more: (label) => `${label}: más`,
  type: (label) => `${label}, escribe un valor`,
  typeIn: (label, unit) => `${label}, escribe un valor en ${unit}`,
  switched: (label) => `${label}:`,
  reset: 'Volver al inicio',
  copy: 'Copiar un enlace a este estado',
  byHand: 'Cópialo a mano',
  copied: 'Enlace copiado.',
  notKept: {
    full: 'Tu respuesta cuenta aquí, pero no se pudo guardar para practicar: a este navegador ya no le queda espacio.',
    blocked:
      'Tu respuesta cuenta aquí, pero no se pudo guardar para practicar: este navegador no guarda nada de este sitio.',
    newer:
      'Tu respuesta cuenta aquí, pero no se pudo guardar para practicar: aquí ya estuvo una versión más nueva del sitio, así que recarga la página antes de la siguiente.',
    busy: 'Tu respuesta cuenta aquí, pero no se pudo guardar para practicar: otra pestaña de este sitio tiene tus respuestas, así que ciérrala antes de la siguiente.',
    unloaded:
      'Tu respuesta cuenta aquí, pero no se pudo guardar para practicar: no cargó la parte que guarda las respuestas, así que recarga la página cuando tengas conexión.',
    failed:
      'Tu respuesta cuenta aquí, pero no se pudo guardar para practicar: este navegador reportó un problema con lo que guarda.',
  },
  link: {
    noNumber: (label, start, min, max) =>
      `${label}: el enlace no traía un número, así que empieza en ${start}. Se permite de ${min} a ${max}.`,
    tooLarge: 'un número demasiado grande',
    outside: (label, asked, set, min, max) =>
      `${label}: el enlace pedía ${asked}. Quedó en ${set}; el rango es de ${min} a ${max}.`,
    noChoice: (label) =>
      `${label}: el enlace traía una opción que no existe. Quedó puesta la de siempre.`,
    tooLong: (most) =>
      `El enlace tiene más de ${most} caracteres. Quedaron puestos los valores de siempre.`,
    otherVersion:
      'El enlace es de otra versión de esta página. Quedaron puestos los valores de siempre.',
    partLeftOut: 'Una parte del enlace no se entendió y se dejó fuera.',
  },
};
