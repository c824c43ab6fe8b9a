export interface Ends {
  cool: string;
  hot: string;
}

export const words = {
  title: 'Thin crack or drilled hole',
  controls: { height: 'Crack, how far open', pressure: 'Pressure behind both' },
  predict: {
    question: (p: Ends) =>
      `At ${p.cool} a crack that stands open by one hair and a drilled hole leak exactly the same. Warm the fluid to ${p.hot}. Which leak grows more?`,
    options: {
      crack: {
        words: 'The crack’s leak grows more',
        why: 'In a thin crack the fluid rubs along two walls all the way through. Thin fluid rubs less, so more gets past. The hole has next to no wall.',
      },
      hole: {
        words: 'The hole’s leak grows more',
        why: 'A hole looks like the easier way out. But its pressure goes into getting the fluid up to speed, and that takes the same push thick or thin.',
      },
      alike: {
        words: 'Both grow alike',
        why: 'Same pressure, same fluid, so it sounds fair. But only the crack makes the fluid rub, so only the crack feels how thick it is.',
      },
    },
    runLabel: 'Run it hot',
  },
  outcome: (p: Ends & { crack: string; crackTimes: string; hole: string; holeTimes: string }) =>
    `The crack leaks ${p.crack}, ${p.crackTimes} times what it leaked at ${p.cool}. The hole leaks ${p.hole}, ${p.holeTimes} times.`,
  says: {
    leaks: (p: { temp: string; pressure: string; crack: string; hole: string }) =>
      `At ${p.temp} and ${p.pressure} the crack leaks ${p.crack}, the hole ${p.hole}.`,
    growth: (p: Ends & { crackTimes: string; holeTimes: string }) =>
      `From ${p.cool} to ${p.hot} the crack comes to leak ${p.crackTimes} times as much, the hole ${p.holeTimes} times.`,
    wild: (p: { reynolds: string; limit: string }) =>
      `The Reynolds number is ${p.reynolds}, above ${p.limit}: the flow tumbles and the law is outside its range. Take the leak as an upper estimate.`,
  },
  /** Stands where a value would: what a spoon could not catch. */
  lessThan: (p: { leak: string }) => `less than ${p.leak}`,
  leaks: {
    name: 'Leak against temperature',
    takeaway: (p: Ends) => `Each line up is ten times more. The two are alike at ${p.cool}.`,
    axis: 'Leak',
    crack: 'crack',
    hole: 'drilled hole',
    crackNow: (p: { leak: string }) => `crack ${p.leak}`,
    holeNow: (p: { leak: string }) => `hole ${p.leak}`,
    lawEnds: 'thin-gap law ends',
  },
  spent: {
    name: 'Where the crack’s pressure goes',
    shares: (p: { rubbing: string; ends: string }) =>
      `Of this pressure, ${p.rubbing} is spent rubbing along the walls, ${p.ends} getting in and out.`,
    nearlyAll: (p: { least: string }) =>
      `Of this pressure, nearly all is spent rubbing along the walls, less than ${p.least} getting in and out.`,
    supply: 'pressure behind it',
    rubbing: 'rubbing along the walls',
    ends: 'getting in and out',
  },
  share: {
    name: 'Share spent rubbing',
    takeaway:
      'Rubbing is the part that thick fluid makes worse. Where the share is high, cold fluid all but stops the leak.',
    axis: 'Share of the pressure',
  },
  numbers: {
    times: 'times',
    crack: 'Crack, hot against cold',
    hole: 'Hole, hot against cold',
    matching: (p: Ends) => `Hole that matches at ${p.cool}`,
    across: 'across',
    reynolds: (p: { limit: string }) => `Reynolds number of the crack, limit ${p.limit}`,
    calm: (p: { limit: string }) =>
      `below ${p.limit}, so the flow slides in layers and the law holds`,
    wild: (p: { limit: string }) =>
      `above ${p.limit}: the flow tumbles and the law is outside its range. Take the leak as an upper estimate`,
    note: (p: { width: string; through: string; holeTimes: string }) =>
      `The crack is ${p.width} wide and ${p.through} through, as in the training transmission, which is invented. The hole grows ${p.holeTimes} times because hot fluid is a little lighter; a very small one begins to rub as well. In deep cold a real hole passes somewhat less than this.`,
  },
};
