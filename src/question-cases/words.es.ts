import { words as names } from '../car/words.es.ts';
import type { words as en } from './words.en.ts';

export const words: typeof en = {
  warmths: { frost: 'con helada', cold: 'en frío', hot: 'en caliente' },
  ranges: names.ranges,
  circuits: names.circuits,
  tests: {
    engineOffTurbine: () => 'Velocidad de la turbina, motor apagado, llave puesta',
    stopTime: (p) => `Tiempo hasta que para la turbina, ${p.range}, ${p.warm}`,
    takeoffSlip: (p) => `Patinaje máximo al arrancar, ${p.range}, ${p.warm}`,
    linePressure: (p) => `Presión de línea, ${p.range}, ${p.speed}, ${p.warm}`,
    clutchPressure: (p) => `Presión del embrague, ${p.circuit}, ${p.speed}, ${p.warm}`,
    coolerFlow: (p) => `Retorno del enfriador, ${p.range}, ${p.speed}, ${p.warm}`,
  },
  never: 'No para',
};
