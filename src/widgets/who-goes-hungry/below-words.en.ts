const converterAndCooler = 'converter, cooler and lubrication';

/** Fetched with the pictures that explain the answer. */
export const words = {
  left: {
    name: `Left for ${converterAndCooler}`,
    y: 'Left over',
    leak: 'A leak takes its part hot and slow; with speed there is always more.',
    filter:
      'A leak takes its part hot and slow. A clogged filter cuts the cold line off flat: faster brings no more.',
  },
  order: {
    name: 'Who loses first:',
    how: 'the regulator feeds the line first and sends on what is over.',
    who: {
      leftOver: 'Converter, cooler, lubrication',
      line: 'The line',
      clutch: 'The forward clutch',
    },
    states: { fed: 'fed', short: 'short', starved: 'starved' },
    nothing: 'nothing',
    note: 'Short: less than half of what a healthy transmission leaves over here; line under its command; clutch too weak for a firm take-off. Starved: nothing left over; line under the clutch’s command; clutch too weak to stand in gear.',
  },
  two: {
    name: 'Two readings',
    head: 'Two readings:',
    how: 'this transmission beside a healthy one.',
    where: (p: { temp: string; speed: string }) => `${p.temp}, ${p.speed}`,
    this: 'this',
    healthy: 'healthy',
    line: (p: { unit: string }) => `Line, ${p.unit}`,
    left: (p: { unit: string }) => `Left over, ${p.unit}`,
  },
  budget: {
    name: (p: { temp: string }) => `Flow at ${p.temp}`,
    filter: (p: { draws: string; full: string }) =>
      `the filter holds the pump to ${p.draws} of ${p.full}.`,
    allTaken: 'all of it is taken; nothing is left over.',
    left: (p: { left: string }) => `${p.left} is left for ${converterAndCooler}.`,
    supply: 'Pump draws',
    slip: 'slips back in the pump',
    clearances: 'clearances',
    bleed: 'bleeds',
    bore: 'regulator bore',
    clutch: 'forward clutch',
    leftOver: 'left over',
  },
  pump: {
    name: 'Pump and regulator:',
    how: 'the valve lets go of what the line can spare.',
    inWords: 'The drawing in words',
  },
};
