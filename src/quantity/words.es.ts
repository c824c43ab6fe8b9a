import type { words as en } from './words.en.ts';

export const words: typeof en = {
  locale: 'es-MX',
  noValue: 'sin valor',
  thousandths: 'milésimas',
  empty: 'Todavía no hay ningún número.',
  noNumber: ({ text }) => `«${text}» no empieza con un número.`,
  twoNumbers: ({ text }) => `«${text}» no se puede leer como un solo número.`,
  unknownUnit: ({ unit }) => `«${unit}» no es una unidad que sirva aquí.`,
  range: ({ min, max }) => `de ${min} a ${max}`,
  above: ({ value, range }) => `${value} pasa de lo permitido aquí: ${range}.`,
  below: ({ value, range }) => `${value} queda por debajo de lo permitido aquí: ${range}.`,
  write: ({ example }) => `Escribe un número, por ejemplo ${example}.`,
  writeWithUnit: ({ units, example }) => `Escribe un número con ${units}, por ejemplo ${example}.`,
  writeInRange: ({ range, example }) => `Escribe un número, ${range}, por ejemplo ${example}.`,
  writeInRangeWithUnit: ({ units, range, example }) =>
    `Escribe un número con ${units}, ${range}, por ejemplo ${example}.`,
};

export const marks = ',.';
