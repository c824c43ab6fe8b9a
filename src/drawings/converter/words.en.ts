interface Speed {
  speed: string;
}

export const words = {
  title: 'Torque converter, cut open',
  cover: (p: Speed) => `Cover, turned by the engine: ${p.speed}`,
  impeller: 'Impeller',
  turbine: 'Turbine',
  stator: 'Stator',
  held: 'held',
  free: 'runs free',
  oneWay: 'One-way clutch',
  hub: ['Hub drives', 'the oil pump'],
  support: 'Stator support',
  shaft: (p: Speed) => `Input shaft: ${p.speed}`,
  round: {
    none: ['Oil', 'goes around', 'this way'],
    hot: ['Hot oil', 'goes around', 'this way'],
    cold: ['Cold oil', 'goes around', 'this way'],
  },
  describe: {
    turns: (p: { engine: string; turbine: string }) =>
      `Torque converter, upper half cut open. It is full of oil. The engine turns the cover and the impeller at ${p.engine}; the turbine and the input shaft turn at ${p.turbine}.`,
    flung:
      'Oil is flung outward in the impeller, strikes the turbine, and comes back through the stator.',
    alike: 'Both halves turn nearly alike, so little oil goes around.',
    held: 'The stator is held by its one-way clutch.',
    free: 'The stator runs free on its one-way clutch.',
  },
};
