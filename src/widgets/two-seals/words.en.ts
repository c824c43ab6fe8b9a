interface Times {
  cold: string;
  hot: string;
  soundCold: string;
  splitCold: string;
  hardCold: string;
  soundHot: string;
  hardHot: string;
  alike: string;
  both: string;
}

export const words = {
  title: 'Split seal, hard lip',
  controls: {
    crack: 'Crack in the transfer seal',
    lip: 'Piston lip of the other car',
    lips: {
      '50': { words: 'half hardened' },
      '75': { words: 'three quarters hardened' },
      '100': { words: 'hard through' },
    },
  },
  chart: {
    name: 'Time to engage Drive',
    takeaway:
      'From selecting Drive until the turbine stops. A line that ends is a clutch that the controller gives up.',
    y: 'Time to engage',
    sound: 'healthy',
    split: 'split',
    hard: 'hard lip',
    now: { split: 'split', hard: 'hard lip' },
    alike: 'alike',
  },
  predict: {
    question: (p: Times) =>
      `Frost, ${p.cold}. A healthy car engages Drive in ${p.soundCold}, car A with the split seal in ${p.splitCold}, car B with the hard lip in ${p.hardCold}. Warm both to ${p.hot}. What does B do?`,
    options: {
      worse: {
        words: 'Gets later still. A seal that leaks, leaks more hot.',
        why: (p: Times) =>
          `So does A’s: thin fluid finds its crack. B’s leak itself gets smaller, because warm rubber grows and springs again. At ${p.hot} B takes ${p.hardHot}.`,
      },
      some: {
        words: 'Gets better, but hot it is still clearly late.',
        why: (p: Times) =>
          `It gets better all the way. What is left of its gap hot is too thin to matter: ${p.hardHot}, and a healthy car takes ${p.soundHot}.`,
      },
      right: {
        words: 'Gets right. Hot you cannot tell it from a healthy one.',
        why: (p: Times) =>
          `Yes, ${p.hardHot} beside ${p.soundHot}. A hard lip stands off in the cold and lies on again warm, so the leak goes away as the fluid thins.`,
      },
    },
    runLabel: 'Warm both up',
  },
  outcome: (p: Times) =>
    `B comes right: ${p.hardHot} at ${p.hot}, beside ${p.soundHot} for a healthy car. A goes the other way, and its clutch is given up. At ${p.alike} both take about ${p.both}.`,
  says: {
    times: (p: { temp: string; sound: string; split: string; hard: string }) =>
      `At ${p.temp}: healthy ${p.sound}, split ${p.split}, hard lip ${p.hard}.`,
    given: (p: { temp: string; sound: string; hard: string }) =>
      `At ${p.temp}: healthy ${p.sound}, hard lip ${p.hard}. With the split seal the controller gives the clutch up.`,
    splitLater: 'The split seal is the late one.',
    hardLater: 'The hard lip is the late one.',
    neither: 'Nobody would complain of either.',
    alike: 'The two read alike.',
  },
};
