import type { Manner } from '../cases/noticed.ts';

type Told = Readonly<Record<'drive' | 'reverse' | 'both', string>>;
const told = (one: (range: string) => string, both: string): Told => ({
  drive: one('Drive'),
  reverse: one('Reverse'),
  both,
});

/** How a range behaves, cold and then hot, in a customer's words. */
const range: Readonly<Record<Manner, Readonly<Record<Manner, Told>>>> = {
  good: {
    good: told((r) => `${r} is fine.`, ''),
    late: told(
      (r) => `Warmed up, ${r} takes its time before it bites.`,
      'Warmed up, Drive and Reverse both take their time before they bite.',
    ),
    never: told(
      (r) => `Cold, ${r} is as good as new, and hot it won't take at all.`,
      'Cold it drives like new. Hot, neither Drive nor Reverse will take.',
    ),
  },
  late: {
    good: told(
      (r) => `First thing in the morning ${r} keeps me waiting. Warm, it's fine.`,
      'First thing in the morning Drive and Reverse keep me waiting. Warm, both are fine.',
    ),
    late: told(
      (r) => `${r} comes in late, warm or cold.`,
      'Drive and Reverse both come in late, warm or cold.',
    ),
    never: told(
      (r) => `${r} is slow when it's cold, and hot it won't take at all.`,
      "It's slow into Drive and Reverse when it's cold, and hot it won't take at all.",
    ),
  },
  never: {
    good: told(
      (r) => `From cold, ${r} won't take. Once it has run a while it does.`,
      "From cold it won't take Drive or Reverse. Once it has run a while it does.",
    ),
    late: told(
      (r) => `From cold, ${r} won't take, and warm it's slow.`,
      "From cold it won't take Drive or Reverse, and warm it's slow.",
    ),
    never: told(
      (r) => `${r} won't take at all, warm or cold.`,
      "It won't take Drive or Reverse at all, warm or cold.",
    ),
  },
};

export const words = {
  title: (p: { number: string }) => `Car number ${p.number}`,
  car: 'A car drawn by number',
  range,
  flares: {
    drive: 'Hot, the engine runs up before the car does when I pull away.',
    reverse: 'Hot, backing out makes the engine race.',
  },
  high: 'In the upper gears it revs up and stops pulling.',
  light: 'And there is a light on.',
  lightOnly: "There's a light on. I can't feel anything wrong.",
  vague: [
    "A neighbor says it's slow going into gear. I can't say what is normal.",
    "I bought it last month and want to know that it's all right.",
    'It feels different from my old car. Can you have a look?',
  ],
  ranges: {
    spared: {
      spared: "I can't say that one is worse.",
      hit: 'Reverse. Drive is all right.',
    },
    hit: { spared: 'Drive. Reverse is all right.', hit: 'Drive and Reverse.' },
  },
  when: {
    both: 'It makes no difference, or not much.',
    cold: 'The first minutes. Then it goes away.',
    hot: 'Not before it is warm.',
    never: 'I never looked at the clock.',
  },
  stood: 'It only matters how warm it is, I think.',
  weather: {
    both: 'No.',
    cold: 'Worse when it is cold out.',
    hot: 'Worse when it is hot out, if at all.',
  },
  load: { more: 'Yes, worse with more gas.', none: 'I have not noticed.' },
  restart: 'I tried that. It makes no difference.',
  onset: {
    sudden: 'From one day to the next.',
    slow: ['It crept up.', 'Some time this year. I could not name a day.'],
  },
  lastWork: {
    rebuilt: 'It was apart for a rebuild.',
    any: ['Nothing that I know of.', 'A fluid change last year.', 'It was apart for a rebuild.'],
  },
  lights: { yes: 'Yes, one.', no: 'No.' },
} as const satisfies Record<string, unknown>;
