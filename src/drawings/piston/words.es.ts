import type { words as en } from './words.en.ts';

export const words: typeof en = {
  title: 'Pistón y resorte de retorno',
  oil: 'Aceite empuja',
  on: ({ pressure, area }) => `${pressure} en ${area}`,
  spring: 'Resorte quita',
  plates: ['Queda a', 'los discos'],
  nothing: 'nada',
  short: ({ force }) => `faltan ${force}`,
  names: {
    cylinder: 'Cilindro',
    seal: 'Sello',
    seat: 'Tope',
    plate: 'Primer disco',
  },
  scale: 'Todas las flechas a una escala',
  describe: {
    wins: ({ pressure, area, oil, spring, net }) =>
      `${pressure} en un pistón de ${area} empujan con ${oil}. El resorte de retorno quita ${spring}; quedan ${net} para apretar los discos.`,
    loses: ({ pressure, area, oil, spring }) =>
      `${pressure} en un pistón de ${area} empujan con ${oil}. Eso no les gana a los ${spring} del resorte de retorno, así que nada aprieta los discos.`,
  },
};
