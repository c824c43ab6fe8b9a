import type { Ends } from './words.en.ts';

export const words = {
  tasks: {
    eightTimes: {
      words: (p: Ends) =>
        `Find a crack that leaks at least 8 times as much at ${p.hot} as at ${p.cool}.`,
      hint: 'Wide cracks behave like holes. Go the other way.',
      after:
        'Only a thin crack does that: nearly all its pressure is spent rubbing. It hides in a cold shop and shows on a hot road.',
    },
    likeHole: {
      words: (p: Ends) =>
        `Now one that behaves like the hole: less than 1.5 times as much at ${p.hot} as at ${p.cool}.`,
      hint: 'Far from thin: five hairs or more. More pressure helps too.',
      after:
        'Wide open, hardly any pressure goes into rubbing. This one leaks hot and cold alike, as a missing plug does.',
    },
    fiveToOne: {
      words:
        'Find the temperature at which the one-hair crack leaks about 5 times what the hole leaks.',
      hint: (p: Ends) =>
        `The two leak alike at ${p.cool}. Warm it step by step and compare the two numbers.`,
      after: (p: Ends) =>
        `The crack passes the hole at ${p.cool} and pulls away with every degree. The hole hardly moves.`,
    },
    endOfLaw: {
      words: (p: { limit: string }) =>
        `Every law has an end. The Reynolds number tells how wild a flow is: low, it slides in layers; above ${p.limit}, it tumbles. Find a state where the crack is above ${p.limit}.`,
      hint: 'Fast flow and thin fluid raise it: wider, hotter, more pressure.',
      after:
        'Up there the flow tumbles instead of sliding, and the real crack leaks less than the line says. The words under the picture warn you.',
    },
  },
  reached: {
    grown: (p: Ends & { times: string }) =>
      `This crack leaks ${p.times} times as much at ${p.hot} as at ${p.cool}.`,
    apart: (p: { temp: string; times: string }) =>
      `At ${p.temp} the crack leaks ${p.times} times what the hole leaks.`,
    reynolds: (p: { reynolds: string }) => `The Reynolds number here is ${p.reynolds}.`,
  },
};
