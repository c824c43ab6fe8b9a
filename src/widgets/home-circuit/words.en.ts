export const words = {
  name: 'One clutch circuit that you can warm',
  temp: 'Warm the fluid',
  crack: 'Open the crack',
  held: (p: { temp: string; has: string; need: string }) =>
    `At ${p.temp} the clutch has ${p.has}. A gentle take-off needs ${p.need}: it holds.`,
  lost: (p: { temp: string; has: string; need: string }) =>
    `At ${p.temp} the clutch has ${p.has}. A gentle take-off needs ${p.need}: it slips.`,
  edge: {
    at: (p: { edge: string; crack: string }) => `A crack of ${p.crack} lets go at ${p.edge}.`,
    always: (p: { crack: string }) =>
      `A crack of ${p.crack} holds at any temperature you can drive to.`,
    never: (p: { crack: string }) => `A crack of ${p.crack} slips even cold.`,
    whole: 'With the seal whole, it holds at any temperature you can drive to.',
  },
  invented: 'Computed from a model of an invented transmission.',
};
