import type { words as en } from './words.en.ts';

export const words: typeof en = {
  temperature: 'Temperatura del aceite',
  temperatureAxis: 'Temperatura',
  crack: 'Rajadura en el sello de paso',
  fluidClass: 'Clase de aceite',
  fluid: ({ name, at40, at100 }) => `${name}, ${at40} y ${at100}`,
  circuit: 'Circuito',
  throughSeal: 'por el sello de paso',
  pastSeal: 'por otro camino',
  testPoint: 'Lo que manda el módulo',
  testPoints: { idle: 'Ralentí', load: 'Carga' },
  commands: ({ line, clutch }) => `línea ${line}, embrague ${clutch}`,
};
