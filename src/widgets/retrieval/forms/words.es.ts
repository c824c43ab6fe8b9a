import type { words as en } from './words.en.ts';

export const words: typeof en = {
  order: 'Pon los pasos en orden, el primero arriba',
  up: 'Subir:',
  down: 'Bajar:',
  nowAt: (place, of) => `Ahora en el lugar ${place} de ${of}:`,
  match: 'Busca la letra que va con cada línea',
  spotStep: 'Señala el paso que está mal o es peligroso',
  spotGap: 'Señala el lugar donde falta un paso',
  atStart: 'Falta aquí, antes del paso 1',
  after: (place) => `Falta aquí, después del paso ${place}`,
};
