interface Speeds {
  turbine: string;
  output: string;
  ratio: string;
  /** What the turbine should turn at in that gear. */
  wanted: string;
}

export const words = {
  title: 'Turbine and output speed sensors',
  wheel: ['Tone', 'wheel'],
  turbine: 'Turbine',
  output: 'Output',
  gears: 'gears',
  ratio: (p: { ratio: string }) => `${p.ratio} : 1`,
  pulses: 'pulses in the same time',
  sum: (p: Speeds) => `${p.ratio} × output ${p.output} = ${p.wanted}`,
  slip: (p: { turbine: string; wanted: string; slip: string }) =>
    `turbine ${p.turbine} − ${p.wanted} = slip ${p.slip}`,
  describe: (p: Speeds & { slip: string }) =>
    `The turbine sensor counts ${p.turbine}, the output sensor ${p.output}. In a gear of ${p.ratio} to 1 the turbine should turn at ${p.wanted}. The difference, ${p.slip}, is what the controller calls slip.`,
};
