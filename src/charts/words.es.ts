import type { words as en } from './words.en.ts';

export const words: typeof en = {
  noValue: 'sin valor',
  at: (place, values) => `A ${place}: ${values}.`,
  noPoint: 'Ningún punto elegido. Con las flechas se leen los valores.',
  read: (name) => `Leer valores: ${name}`,
  events: 'Qué pasó',
  event: 'Suceso',
  from: 'Desde',
  to: 'Hasta',
  state: 'Estado',
  where: 'Dónde',
  missing: (amount) => `A las partes les faltan ${amount} para el total.`,
  readMap: (name) => `Leer el mapa: ${name}. Con las flechas te mueves.`,
  setFromMap: (name) =>
    `Leer el mapa: ${name}. Con las flechas te mueves, con Entrar ajustas los controles.`,
  eachState: (name, axis) => `${name}. ${axis} para cada estado.`,
  axisIn: (axis, unit) => `${axis} en ${unit}`,
  nowhere: 'en ningún lado',
  range: (low, high) => `${low} a ${high}`,
};
