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
