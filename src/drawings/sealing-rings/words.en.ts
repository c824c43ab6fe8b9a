interface Gap {
  gap: string;
}

export const words = {
  title: 'Rotating sealing rings',
  inside: {
    cold: (p: { pressure: string }) => `${p.pressure}, cold`,
    hot: (p: { pressure: string }) => `${p.pressure}, hot`,
  },
  sleeve: 'Sleeve',
  still: 'stands still',
  shaft: ['Shaft', 'turns'],
  toClutch: ['to the', 'clutch'],
  ring: 'Sealing ring',
  past: ['Past the', 'rings'],
  fromEnd: (p: Gap) => [
    'Ring, seen from the end:',
    'its joint lets it spring out',
    `gap ${p.gap}, drawn larger`,
  ],
  describe: {
    carry: (p: Gap & { pressure: string }) =>
      `Two sealing rings carry oil at ${p.pressure} from the still sleeve into the turning shaft. The gap past each ring is ${p.gap}, drawn far larger than it is.`,
    lose: {
      cold: (p: { leak: string }) => `Together they lose ${p.leak} of cold fluid.`,
      hot: (p: { leak: string }) => `Together they lose ${p.leak} of hot fluid.`,
    },
  },
};
