import type { words as en } from './words.en.ts';

export const words: typeof en = {
  letter: (place) => String.fromCharCode(65 + place),
  line: (letter) => `Línea ${letter}`,
  pressure: 'Presión',
  temperature: 'Temperatura del aceite',
  leak: 'Fuga',
  turbine: 'Velocidad de la turbina',
  slip: 'Patinaje',
  afterBrake: 'Tiempo desde que se suelta el freno',
  afterSelection: 'Tiempo desde la selección',
  viscosity: 'Viscosidad cinemática',
  minutes: 'Tiempo desde el arranque en frío',
  lineAndTap:
    'Dos manómetros en un carro, en Drive, con el freno de pie, en ralentí: la presión de línea y la toma del embrague de avance, de {temperature 20} a {temperature 110}.',
  threeTaps:
    'Las tomas de tres embragues de un carro, cada uno aplicado en su turno en ralentí, de {temperature 20} a {temperature 110}.',
  lineOverHeat:
    'La presión de línea de un carro, de {temperature 20} a {temperature 110}: una vez en ralentí, otra a {speed 1500}.',
  twoLeaks: 'Dos fugas detrás de la misma presión, de {temperature 20} a {temperature 110}.',
  oneStop:
    'Velocidad de la turbina de un carro desde que se pone Drive con el freno de pie, con el aceite a {temperature 95}.',
  twoStops:
    'Velocidad de la turbina de dos carros desde que se pone Drive con el freno de pie, con el aceite a {temperature 95}.',
  frostStop:
    'Velocidad de la turbina de un carro desde que se pone Drive con el freno de pie: con helada a {temperature -15}, y a {temperature 60}.',
  takeOff:
    'Patinaje de dos carros en el mismo arranque suave en primera, con el aceite a {temperature 95}.',
  twoFluids: 'Viscosidad cinemática de dos aceites, de {temperature 20} a {temperature 110}.',
  threeDrives:
    'Temperatura del aceite de un carro en tres días iguales, desde el arranque en frío: en ralentí, manejado suave y jalando carga.',
};
