interface Heights {
  cold: string;
  hot: string;
  added: string;
  before: string;
  after: string;
}

export const words = {
  title: 'The level window',
  controls: {
    off: 'Against the right fill',
    rpm: 'Engine speed',
    place: 'Where it stands or drives',
  },
  off: { low: 'too little', right: 'right', high: 'too much' },
  places: {
    flat: 'On the flat',
    hill: 'Steep street, nose up',
    bend: 'Brisk bend',
  },
  predict: {
    question: (p: Heights) =>
      `This fill was right. Overnight cold, at ${p.cold} and idling, the stick stood ${p.before} under the middle, below MIN. Somebody has just put ${p.added} in, and now it stands at MAX. Warm it to ${p.hot}. Where does it stand then?`,
    options: {
      same: {
        words: 'At MAX. What is in, is in.',
        why: (p: Heights) =>
          `The weight that is in stays in. The room it takes does not: fluid swells as it warms, and at ${p.hot} it stands ${p.after} over the middle.`,
      },
      lower: {
        words: 'Back between the marks. Hot fluid is thin and spreads out.',
        why: (p: Heights) =>
          `Thin is not less. Hot fluid takes more room, so the level climbs, to ${p.after} over the middle at ${p.hot}.`,
      },
      over: {
        words: 'Well over MAX, up to the gears.',
        why: (p: Heights) =>
          `It stands ${p.after} over the middle, and the gears dip in. The fill had been right, and the ${p.added} were too much from the first drop.`,
      },
    },
    runLabel: 'Warm it up',
  },
  outcome: (p: Heights) =>
    `At ${p.cold} it stood at MAX. At ${p.hot} the same fluid stands ${p.after} over the middle, far over MAX, and the gears whip air into it.`,
  stick: {
    dry: (p: { temp: string }) => `At ${p.temp} the stick comes out dry.`,
    under: (p: { temp: string; mm: string }) =>
      `At ${p.temp} the stick stands ${p.mm} under the middle, below MIN.`,
    low: (p: { temp: string; mm: string }) =>
      `At ${p.temp} the stick stands ${p.mm} under the middle, between the marks.`,
    middle: (p: { temp: string }) => `At ${p.temp} the stick stands at the middle of its marks.`,
    high: (p: { temp: string; mm: string }) =>
      `At ${p.temp} the stick stands ${p.mm} over the middle, between the marks.`,
    over: (p: { temp: string; mm: string }) =>
      `At ${p.temp} the stick stands ${p.mm} over the middle, above MAX.`,
  },
  pickUp: {
    covered: 'The pick-up is covered.',
    air: (p: { air: string }) => `The pump draws ${p.air} air.`,
  },
  gears: 'The gears dip in and whip air into the fluid.',
  line: {
    held: (p: { line: string }) => `Line ${p.line}, as asked.`,
    down: (p: { line: string; asked: string }) => `Line ${p.line} of ${p.asked}.`,
  },
  now: (p: { temp: string }) => p.temp,
};
