interface Pressure {
  pressure: string;
}

export const words = {
  title: { split: 'Transfer seal, split', whole: 'Transfer seal, whole' },
  inside: {
    cold: (p: Pressure) => `${p.pressure}, cold`,
    hot: (p: Pressure) => `${p.pressure}, hot`,
  },
  valveBody: 'Valve body',
  joint: 'Joint',
  rubber: 'rubber, cut open',
  hair: 'one hair',
  enlarged: 'the crack, enlarged',
  leaks: (p: { leak: string }) => `leaks ${p.leak}`,
  tight: 'no leak',
  toSump: 'to the sump',
  fromFeed: 'from the feed hole',
  toClutch: 'to the clutch',
  describe: {
    split: (p: { width: string; hairs: string }) =>
      `The transfer seal between valve body and case is split. The crack is ${p.width} wide, about ${p.hairs}.`,
    loses: {
      cold: (p: Pressure & { leak: string }) =>
        `With ${p.pressure} inside and cold fluid it loses ${p.leak} into the joint and back to the sump.`,
      hot: (p: Pressure & { leak: string }) =>
        `With ${p.pressure} inside and hot fluid it loses ${p.leak} into the joint and back to the sump.`,
    },
    whole: 'The transfer seal between valve body and case is whole.',
    carries: {
      cold: (p: Pressure) =>
        `It carries cold fluid at ${p.pressure} across the joint and loses nothing.`,
      hot: (p: Pressure) =>
        `It carries hot fluid at ${p.pressure} across the joint and loses nothing.`,
    },
  },
};
