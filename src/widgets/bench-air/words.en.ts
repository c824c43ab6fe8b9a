interface Run {
  dry: string;
  wet: string;
  sister: string;
}
interface Heard {
  place: string;
  held: string;
  where: string;
}

export const words = {
  title: 'Air on the bench',
  unit: (p: { number: string; complaint: string }) => `Unit ${p.number}: ${p.complaint}`,
  /** What the gauge had said of each, in the order of their numbers. */
  complaints: [
    'forward and reverse read low hot',
    'reverse read low hot',
    'forward read low, cold as well',
    'high read low hot',
    'forward read low hot',
    'a spare, nothing read',
  ],
  controls: {
    unit: 'On the bench',
    target: 'Air on',
    wet: 'Fluid',
    wetOn: 'a little put in first',
    wetOff: 'none, seals dry',
    supply: 'Supply',
    hole: 'Hole before the gauge',
    named: 'What you say it has',
  },
  places: {
    forward: 'Forward circuit',
    reverse: 'Reverse circuit',
    high: 'High circuit',
    transferSeal: 'Transfer seal by itself',
  },
  findings: {
    unsaid: 'I have not said yet',
    sealingRings: 'Worn sealing rings',
    pistonSeal: 'Cut piston seal',
    openPort: 'Plug or check ball missing',
    transferSeal: 'Split transfer seal',
    nothing: 'Nothing that air can find',
  },
  bars: {
    sister: (p: { place: string }) => `Sister: ${p.place}`,
    whole: 'A whole seal',
    shut: 'valve shut',
    held: (p: { share: string }) => `${p.share} held`,
  },
  predict: {
    question: (p: Run) =>
      `Unit 1, open since yesterday, seals dry. Air on forward: a loud hiss at the shaft, no thud, ${p.dry} held. Now a little fluid goes into forward and its sister, reverse, and the same air on both. What will forward hold?`,
    options: {
      same: {
        words: 'About the same. It hissed, so its rings are worn',
        why: (p: Run) =>
          `The hiss was real. But dry, a good circuit hisses as loud: its sister held ${p.dry} as well. Rings are made to run in a film of fluid. Wet, forward holds ${p.wet}.`,
      },
      half: {
        words: 'More, but far less than its sister',
        why: (p: Run) =>
          `That would be a leak of its own beside dry rings. With fluid in, forward holds ${p.wet} and its sister ${p.sister}, so there is no leak of its own here.`,
      },
      sister: {
        words: 'As much as its sister',
        why: (p: Run) =>
          `Forward ${p.wet}, its sister ${p.sister}. The film seats the rings, in both alike. What hissed were dry rings, and a number without its sister would have bought new ones.`,
      },
    },
    runLabel: 'Open the valve',
  },
  outcome: (p: Run) =>
    `Dry, forward held ${p.dry}. Wet it holds ${p.wet}, and its sister ${p.sister}.`,
  where: {
    rings: 'at the shaft',
    pistonSeal: 'in the drum',
    openPort: 'at a hole in the case',
    transferSeal: 'at the split',
    hardLip: 'in the drum',
  },
  says: {
    ceiling: (p: { supply: string; low: string }) =>
      `${p.supply} is over ${p.low}, the most that one manual prints. The valve stays shut. Lower the supply: the maker’s figure decides.`,
    ceilings: (p: { supply: string; low: string; high: string }) =>
      `${p.supply} is over both printed ceilings, ${p.low} and ${p.high}. The valve stays shut. Lower the supply: the maker’s figure decides.`,
    tight: (p: { place: string; held: string }) =>
      `${p.place}: ${p.held} held, no hiss. A whole seal holds all of it.`,
    seal: (p: Heard) =>
      `${p.place}: ${p.held} held, a loud hiss ${p.where}. A whole seal holds all of it.`,
    sealWet: (p: Heard) =>
      `${p.place}: ${p.held} held, and it bubbles ${p.where}. A whole seal holds all of it.`,
    softThud: (p: Heard) => `${p.place}: ${p.held} held, a dull thud, a soft hiss ${p.where}.`,
    softStill: (p: Heard) => `${p.place}: ${p.held} held, no thud, a soft hiss ${p.where}.`,
    loudThud: (p: Heard) => `${p.place}: ${p.held} held, a dull thud, a loud hiss ${p.where}.`,
    loudStill: (p: Heard) => `${p.place}: ${p.held} held, no thud, a loud hiss ${p.where}.`,
    softThudWet: (p: Heard) => `${p.place}: ${p.held} held, a dull thud, fine bubbles ${p.where}.`,
    softStillWet: (p: Heard) => `${p.place}: ${p.held} held, no thud, fine bubbles ${p.where}.`,
    loudThudWet: (p: Heard) =>
      `${p.place}: ${p.held} held, a dull thud, fluid blown out ${p.where}.`,
    loudStillWet: (p: Heard) => `${p.place}: ${p.held} held, no thud, fluid blown out ${p.where}.`,
    sisterThud: (p: { held: string }) => `Its sister: ${p.held}, a thud.`,
    sisterStill: (p: { held: string }) => `Its sister: ${p.held}, no thud.`,
    right: (p: { name: string; held: string }) =>
      `${p.name}: right. It holds ${p.held} there, and its sisters say that it is not the rig.`,
    rightNothing:
      'Right. Every place holds what its sister holds. That clears rings, piston seals, ports and the transfer seal cold, and nothing that opens only hot or that lies beside the case.',
    wrong:
      'Not that. Put the same air on each place in turn, wet, and look for the one that holds far less than its sister.',
  },
};
