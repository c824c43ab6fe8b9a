import type { Asked } from '../../cases/answers.ts';

interface Bits {
  bits: string;
}
export const words = {
  title: 'What to ask first',
  /** Each question as it is put to a customer, and what the answers sound like. */
  questions: {
    ranges: 'Which ranges?',
    warm: 'Worse cold or hot?',
    minutes: 'After how many minutes?',
    road: 'What had it done before, and on what road?',
    weather: 'Is a frosty morning worse?',
    load: 'Does more gas make it rev up?',
    lights: 'Is there a warning light?',
    stood: 'Does it go by the hours it stood?',
    restart: 'Does a restart cure it?',
  } satisfies Record<Asked, string>,
  answers: {
    ranges: {
      drive: 'Drive. Reverse is fine.',
      reverse: 'Reverse. Drive is fine.',
      both: 'Drive and Reverse. On the highway it’s fine.',
      all: 'All of them.',
      upper: 'Only on the highway.',
      none: 'None that I could name.',
    },
    warm: {
      cold: 'Cold. Warm, it’s fine.',
      hot: 'Hot. Mornings are better.',
      same: 'It’s the same all day.',
      neither: 'Neither, that I noticed.',
    },
    minutes: {
      first: 'From the first minutes on.',
      ten: 'Within ten minutes.',
      half: 'Ten minutes to half an hour.',
      longer: 'More than half an hour.',
      not: 'That day it didn’t.',
    },
    road: {
      'overnight-flat': 'It stood overnight. Flat road.',
      'overnight-hills': 'It stood overnight. Hills and stops.',
      'stop-flat': 'An hour’s stop. Flat road.',
      'stop-hills': 'An hour’s stop. Hills and stops.',
    },
    weather: { worse: 'Much worse.', no: 'No different.' },
    load: { revs: 'Yes, it revs and doesn’t pull.', no: 'Not that I noticed.' },
    lights: { yes: 'Yes, one.', no: 'No.' },
    stood: { hours: 'Yes, by the hours.', no: 'No, not by that.' },
    restart: { cures: 'For a while, yes.', no: 'No.' },
  },
  said: (p: { answer: string }) => `“${p.answer}”`,
  worth: {
    third: (p: Bits) => `${p.bits} bits: leaves a third of the list`,
    half: (p: Bits) => `${p.bits} bits: halves the list`,
    much: (p: Bits) => `${p.bits} bits: takes a good third off`,
    quarter: (p: Bits) => `${p.bits} bits: takes a quarter off`,
    some: (p: Bits) => `${p.bits} bits: takes a tenth off`,
    little: (p: Bits) => `${p.bits} bits: hardly shortens it`,
    nothing: (p: Bits) => `${p.bits} bits: tells nothing now`,
  },
  names: { healthy: 'Nothing wrong', unlisted: 'Not in this list' },
  car: {
    hidden: (p: { number: string }) => `Car ${p.number}. What it has is hidden.`,
    shown: (p: { number: string }) => `Car ${p.number}. What it has is told below.`,
    chosen: 'You know what this car has.',
    another: 'Another car',
  },
  verdict: {
    at: (p: { name: string; clutch: string }) => `${p.name} (${p.clutch})`,
    right: (p: Had) => `Right: ${p.it}. On your list it stands alone in front, at ${p.share}.`,
    early: (p: Had & { others: string }) =>
      `Right: ${p.it}. Your list did not say so yet. As high as it, or higher: ${p.others}.`,
    lucky: (p: Had & { count: string }) =>
      `Right: ${p.it}. Your list did not say so yet: ${p.count} other names stand as high as it, or higher.`,
    wrong: (p: Had & { named: string; other: string }) =>
      `No. It has: ${p.it}, which stands at ${p.share} on your list. ${p.named} stands at ${p.other}.`,
    alike: (p: Had & { named: string; other: string }) =>
      `No. It has: ${p.it}. On your list ${p.named} stands as high: what you asked does not tell the two apart.`,
    shown: (p: Had) => `It has: ${p.it}. On your list that stands at ${p.share}.`,
  },
  controls: {
    car: 'Car',
    named: 'What you say it has',
    none: 'I have not said yet',
    shown: 'I give up: show me',
    dealt: 'as it came, hidden',
    fault: 'The car has (its customer doesn’t know)',
    circuit: 'Where it sits, if in one clutch',
    day: 'The customer’s day',
    asked: 'asked',
    open: 'not asked',
  },
  predict: {
    question:
      'You asked which ranges. “Drive and Reverse. On the highway it’s fine.” Some names fell far down the list. Which question shortens it most now?',
    options: {
      warm: {
        words: 'Worse cold or hot?',
        why: (p: Worths) =>
          `It is worth ${p.warm} bits here. Each of the faults that are left has its own side of the thermometer: a gap waits for heat, a starved pump is worst cold, worn plates do not care.`,
      },
      minutes: {
        words: 'After how many minutes?',
        why: (p: Worths) =>
          `It sounds exact, and it is worth ${p.minutes} bits where cold or hot is worth ${p.warm}. The same car says ten minutes on one day and half an hour on another.`,
      },
      load: {
        words: 'Does more gas make it rev up?',
        why: (p: Worths) =>
          `Worth ${p.load} bits. Anything that is far gone revs up with more gas, whatever it is, so the answer says how bad more than what.`,
      },
      restart: {
        words: 'Does a restart cure it?',
        why: (p: Worths) =>
          `Worth ${p.restart} bits on this list, since no leak minds the key. Ask it all the same: a yes points to electrics, which are hardly on it, or to a controller that had given up.`,
      },
    },
    runLabel: 'Ask all four',
  },
  outcome: (p: Worths & { open: string }) =>
    `Cold or hot was worth ${p.warm} bits, the minutes ${p.minutes}, more gas ${p.load}, the restart ${p.restart}. With all four answered it is as open as a list of ${p.open}.`,
  says: {
    whole: (p: { names: string }) => `All ${p.names} names are on the list.`,
    list: (p: { off: string; names: string; open: string }) =>
      `${p.off} of ${p.names} names are far down. The rest is as open as a list of ${p.open}.`,
    settled: (p: { off: string; names: string }) =>
      `${p.off} of ${p.names} names are far down. The rest is as good as one name.`,
    one: (p: { name: string; share: string }) => `In front: ${p.name}, ${p.share}.`,
    level: (p: { names: string }) => `Level in front: ${p.names}.`,
  },
  list: {
    name: 'The list, and how much speaks for each name',
    off: 'far down',
  },
};
interface Had {
  it: string;
  share: string;
}
interface Worths {
  warm: string;
  minutes: string;
  load: string;
  restart: string;
}
