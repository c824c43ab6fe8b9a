interface Labels {
  level: string;
  air: string;
}
export const words = {
  title: 'Pan, pick-up and stick',
  max: 'MAX',
  min: 'MIN',
  gears: 'gears',
  toPump: 'to the pump',
  filter: 'filter',
  mouth: 'mouth',
  describe: {
    stick: {
      under: (p: Labels) =>
        `The pan cut open. The fluid at ${p.level} stands under MIN on the stick.`,
      between: (p: Labels) =>
        `The pan cut open. The fluid at ${p.level} stands between MIN and MAX on the stick.`,
      over: (p: Labels) =>
        `The pan cut open. The fluid at ${p.level} stands over MAX on the stick.`,
    },
    other: (p: { level: string }) =>
      `A dashed line shows the same fluid at ${p.level}: under MIN, with nothing missing.`,
    pickUp: {
      covered: 'The mouth of the filter is covered, and the pump draws fluid alone.',
      air: (p: Labels) =>
        `The mouth of the filter is not covered: ${p.air} of what the pump draws is air.`,
    },
    gears: {
      dry: 'The gears turn clear of it.',
      dip: 'The gears dip in and whip air into it.',
    },
  },
};
