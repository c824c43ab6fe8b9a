export const words = {
  title: 'Pump and pressure regulator',
  turns: 'turns this way',
  toClutches: 'to the clutches',
  pushes: ['Line pushes', 'the valve here'],
  shut: 'port shut',
  crescent: 'Crescent',
  describe: {
    draws: {
      cold: (p: { pump: string }) =>
        `The pump draws cold fluid through the filter and delivers ${p.pump}.`,
      hot: (p: { pump: string }) =>
        `The pump draws hot fluid through the filter and delivers ${p.pump}.`,
    },
    open: (p: { line: string; leftOver: string }) =>
      `Line pressure of ${p.line} pushes the regulator valve against its spring; the valve holds its port open and lets ${p.leftOver} go to the converter, the cooler and lubrication.`,
    shut: (p: { line: string }) =>
      `Line pressure of ${p.line} pushes the regulator valve against its spring; the valve has shut its port: nothing is left over.`,
  },
};
