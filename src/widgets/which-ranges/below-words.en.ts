/** Fetched with the pictures that explain the answer. */
export const words = {
  /** Which test a drawing shows, in full. */
  tests: {
    'cold-idle': (p: { temp: string }) => `cold (${p.temp}), idle in gear`,
    'cold-load': (p: { temp: string; speed: string }) => `cold (${p.temp}), ${p.speed} under load`,
    'hot-idle': (p: { temp: string }) => `hot (${p.temp}), idle in gear`,
    'hot-load': (p: { temp: string; speed: string }) => `hot (${p.temp}), ${p.speed} under load`,
  },
  torques: {
    name: 'What each range can carry',
    head: 'What each range can carry:',
    need: (p: { standing: string; speed: string; firm: string }) =>
      `standing in gear asks for ${p.standing}, ${p.speed} for ${p.firm}.`,
  },
  legend: {
    ok: 'Ok',
    okIs: 'within a tenth of a healthy transmission.',
    low: 'Low',
    lowIs: 'more than a tenth down, still enough for the test.',
    gone: 'Gone',
    goneIs: (p: { standing: string; firm: string; speed: string }) =>
      `not enough to hold, under ${p.standing} at idle or ${p.firm} at ${p.speed}.`,
    load: (p: { speed: string }) => `Load is ${p.speed}, driving against the converter.`,
    rest: 'The cooler is low under half of a healthy transmission’s flow. Car held, one range at a time. This is arithmetic on an invented transmission: on a car this is a stall test. Follow the maker’s procedure or leave it.',
  },
  map: {
    name: 'The map:',
    shows: {
      forward: (p: { test: string }) => `forward engaged, ${p.test}. The ring marks the fault.`,
      reverse: (p: { test: string }) => `reverse engaged, ${p.test}. The ring marks the fault.`,
      high: (p: { test: string }) => `high engaged, ${p.test}. The ring marks the fault.`,
    },
    inWords: 'The drawing in words',
  },
};
