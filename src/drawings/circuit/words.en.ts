export const words = {
  title: 'One clutch circuit, from pump to plates',
  crack: (width: string) => `crack ${width}`,
  whole: 'whole',
  leaks: (flow: string) => `leaks ${flow}`,
  rings: 'Sealing rings',
  hole: 'Feed hole',
  valve: 'Feed valve',
  clearances: 'clearances',
  describe: {
    pump: {
      cold: (line: string) => `The pump feeds the line at ${line} with cold fluid.`,
      hot: (line: string) => `The pump feeds the line at ${line} with hot fluid.`,
    },
    over: 'The regulator sends what is left over to the converter, the cooler and lubrication.',
    noneOver: 'Nothing is left over for the converter, the cooler and lubrication.',
    way: 'The feed valve and its hole lead through the transfer seal and past the sealing rings to the clutch.',
    split: (p: { width: string; crack: string }) =>
      `The transfer seal has a crack ${p.width} wide that loses ${p.crack}.`,
    whole: 'The transfer seal is whole and loses nothing.',
    holds: (clutch: string) => `The clutch has ${clutch} and holds.`,
    slips: (clutch: string) => `The clutch has ${clutch} and slips.`,
  },
};
