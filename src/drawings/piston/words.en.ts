interface Pushes {
  pressure: string;
  area: string;
  oil: string;
  spring: string;
}

export const words = {
  title: 'Piston and return spring',
  oil: 'Oil pushes',
  on: (p: { pressure: string; area: string }) => `${p.pressure} on ${p.area}`,
  spring: 'Spring takes',
  plates: ['Plates', 'get'],
  nothing: 'nothing',
  short: (p: { force: string }) => `short by ${p.force}`,
  names: {
    cylinder: 'Cylinder',
    seal: 'Piston seal',
    seat: 'Seat',
    plate: 'First plate',
  },
  scale: 'All arrows to one scale',
  describe: {
    wins: (p: Pushes & { net: string }) =>
      `${p.pressure} on a piston of ${p.area} pushes with ${p.oil}. The return spring takes ${p.spring}; ${p.net} is left to squeeze the plates.`,
    loses: (p: Pushes) =>
      `${p.pressure} on a piston of ${p.area} pushes with ${p.oil}. That does not beat the return spring's ${p.spring}, so nothing squeezes the plates.`,
  },
};
