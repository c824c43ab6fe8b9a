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
  write: (p) => {
    const units = p.units && ` con ${p.units}`;
    const range = p.range && `, ${p.range}`;
    const example = p.example && `, por ejemplo ${p.example}`;
    return `Escribe un número${units}${range}${example}.`;
  },
};

export const marks = ',.';
