import type { DriveKind } from '../../engine/index.ts';

interface Edge {
  temp: string;
}

/** As the middle of a sentence, and as what somebody did for so many minutes. */
const kinds: Record<DriveKind, string> = {
  idling: 'idling',
  gentle: 'gentle',
  pulling: 'pulling',
};

export const words = {
  title: 'When will it let go?',
  kinds,
  controls: {
    outside: 'Outside',
    kinds: { kind1: 'First', kind2: 'Then', kind3: 'At last' },
    minutes: {
      minutes1: 'First, how long',
      minutes2: 'Then, how long',
      minutes3: 'At last, how long',
    },
    options: { idling: 'Idling', gentle: 'Gentle', pulling: 'Pulling' },
    leftOut: 'left out',
    above: 'Fluid at the start, above outside',
    overnight: 'stood overnight',
    warm: 'still warm',
  },
  minutes: { one: '# minute', other: '# minutes' },
  noMinute: 'less than a minute',
  predict: {
    question: (p: { crack: string; goesAt: string; outside: string; minutes: string }) =>
      `The customer says: it slips when hot, pulling away. The crack, ${p.crack}, loses a gentle take-off at ${p.goesAt}. The car stood overnight at ${p.outside}. You drive it gently for ${p.minutes}. What do you find?`,
    options: {
      shows: {
        words: 'It slips. After ten minutes on the road any car is hot.',
        why: (p: { got: string }) =>
          `The engine may be by then. The fluid warms by its own losses and by the engine’s coolant in the cooler, and it comes after both. It has got to ${p.got}.`,
      },
      close: {
        words: 'It just holds. Five minutes more and it would slip.',
        why: (p: { got: string; goesAt: string; needs: string }) =>
          `It is a long way off: ${p.got} of ${p.goesAt}. The warmer the fluid, the slower it warms, since it gives off more heat. Driven like this it takes ${p.needs}.`,
      },
      far: {
        words: 'Nothing. The fluid is not nearly warm enough.',
        why: (p: { got: string; minutes: string; goesAt: string; needs: string }) =>
          `${p.got} after ${p.minutes}; the crack lets go at ${p.goesAt}, and driven like this that takes ${p.needs}. A short test drive proves nothing about a hot fault. Note the fluid temperature, not the minutes.`,
      },
    },
    runLabel: 'Drive it',
  },
  outcome: (p: { got: string; minutes: string; goesAt: string }) =>
    `Fluid at ${p.got} after ${p.minutes}. Lets go at ${p.goesAt}.`,
  says: {
    never: 'This crack holds at every temperature offered. No drive will show it.',
    atOnce: (p: Edge) =>
      `The fluid starts warmer than ${p.temp}: it slips from the first take-off.`,
    always: 'It does not hold at any temperature offered: it slips from the start.',
    after: {
      idling: (p: { minutes: string } & Edge) =>
        `After ${p.minutes} of idling it will let go, at ${p.temp}.`,
      gentle: (p: { minutes: string } & Edge) =>
        `After ${p.minutes} of gentle driving it will let go, at ${p.temp}.`,
      pulling: (p: { minutes: string } & Edge) =>
        `After ${p.minutes} of stop-and-go pulling it will let go, at ${p.temp}.`,
      mixed: (p: { minutes: string } & Edge) =>
        `After ${p.minutes} of this drive it will let go, at ${p.temp}.`,
    },
    notOnThisDrive: (p: { last: string; minutes: string; demand: string; temp: string }) =>
      `This drive does not show it. It ends at ${p.last} after ${p.minutes}. ${p.demand}: lets go at ${p.temp}, hotter than the fluid gets on it.`,
    tooHot: (p: { minutes: string; most: string }) =>
      `After ${p.minutes} the fluid is over ${p.most}: stop long before.`,
  },
  chart: {
    name: 'Fluid temperature on the drive',
    x: 'Time',
    y: 'Fluid temperature',
    fluid: 'fluid',
    holds: 'holds',
    slips: 'slips',
    slipsAbove: (p: Edge) => `slips above ${p.temp}`,
    after: (p: { minutes: string }) => `after ${p.minutes}`,
    drive: 'The drive',
    takeaway: {
      at: (p: { demand: string } & Edge) => `${p.demand}: lets go at ${p.temp}.`,
      always: (p: { demand: string }) => `${p.demand}: never lets go with this crack.`,
      never: (p: { demand: string }) => `${p.demand}: slips at any temperature.`,
    },
  },
};
