interface Thickness {
  side: string;
  name: string;
  temp: string;
  cSt: string;
  mPas: string;
  cool: string;
}

export const words = {
  title: 'How thin does it get?',
  controls: {
    fluidA: 'Fluid A, solid line',
    fluidB: 'Fluid B, dotted line',
    own: {
      own40: (p: { temp: string }) => `Your own fluid, cSt at ${p.temp}`,
      own100: (p: { temp: string }) => `Your own fluid, cSt at ${p.temp}`,
      own15: (p: { temp: string }) => `Your own fluid, density at ${p.temp}`,
    },
    usualDensity: 'taken where a sheet does not say',
    log: 'Upright scale',
    logOn: 'each line up is ten times more',
    logOff: 'even steps',
  },
  own: 'Your own',
  ownOption: 'Your own, by its two numbers',
  predict: {
    question: (p: { cool: string; hot: string }) =>
      `Warm this fluid from ${p.cool} to ${p.hot}. How much thinner does it get?`,
    options: {
      two: {
        words: 'About 2 times thinner',
        why: (p: { twice: string; hot: string }) =>
          `Two times is what the first few degrees do: it is there by ${p.twice}. The rest of the way to ${p.hot} thins it much more.`,
      },
      five: {
        words: 'About 5 times thinner',
        why: (p: { fiveTimes: string }) =>
          `Five times is reached on the way, near ${p.fiveTimes}. It goes on thinning from there, only in smaller steps.`,
      },
      ten: {
        words: '10 times thinner or more',
        why: (p: { from: string; to: string; times: string }) =>
          `From ${p.from} to ${p.to} is ${p.times} times. Nothing is wrong with the fluid: every fluid does this, and the transmission has to live with it.`,
      },
    },
    runLabel: 'Warm it up',
  },
  outcome: (p: { times: string; from: string; cool: string; to: string; hot: string }) =>
    `${p.times} times thinner: ${p.from} at ${p.cool}, ${p.to} at ${p.hot}.`,
  says: {
    thinner: (p: Thickness & { times: string }) =>
      `${p.side} (${p.name}) at ${p.temp}: ${p.cSt}, ${p.mPas}, ${p.times} times thinner than at ${p.cool}.`,
    thicker: (p: Thickness & { times: string }) =>
      `${p.side} (${p.name}) at ${p.temp}: ${p.cSt}, ${p.mPas}, ${p.times} times thicker than at ${p.cool}.`,
    alike: (p: Thickness) =>
      `${p.side} (${p.name}) at ${p.temp}: ${p.cSt}, ${p.mPas}, the same as at ${p.cool}.`,
    alone: (p: Thickness) => `${p.side} (${p.name}) at ${p.temp}: ${p.cSt}, ${p.mPas}.`,
    outOfRange: (p: { side: string; name: string }) =>
      `${p.side} (${p.name}): these two numbers carry the law out of its range here.`,
    sameFluid: 'A and B are the same fluid.',
  },
  chart: {
    kinematic: 'Kinematic viscosity',
    dynamic: 'Dynamic viscosity',
    name: {
      kinematic: 'Kinematic viscosity against temperature',
      dynamic: 'Dynamic viscosity against temperature',
    },
    line: (p: { side: string; name: string }) => `${p.side}: ${p.name}`,
    asFarAsWarmed: 'Two fluids, as far as they have been warmed.',
    feltByGap: 'Kinematic viscosity times density. This is what a gap feels.',
    logScale: 'Each line up is ten times thicker.',
    evenScale: 'Steep in the cold, flat when hot.',
    tooThick: 'It is too thick here for this picture. “More controls” has a scale that reaches it.',
  },
  table: {
    caption: (p: { temp: string }) => `Side by side at ${p.temp}`,
    density: 'Density',
    thinnerThan: (p: { cool: string }) => `Thinner than at ${p.cool}, in cSt`,
    thinner: (p: { times: string }) => `${p.times} times`,
    thicker: (p: { times: string }) => `${p.times} times thicker`,
    index: 'Viscosity index',
    none: 'none',
  },
  noIndex: 'not defined for a fluid this thin',
  ownIndex: (p: { index: string }) => `Viscosity index of this pair: ${p.index}.`,
  refused: {
    same: (p: { hot: string; cool: string }) =>
      `${p.hot} for the hot number is the same as ${p.cool} for the cooler one. Every fluid thins as it warms, so the hot number must be the smaller.`,
    more: (p: { hot: string; cool: string }) =>
      `${p.hot} for the hot number is more than ${p.cool} for the cooler one. Every fluid thins as it warms, so the hot number must be the smaller.`,
    inForce: (p: { own40: string; own100: string }) =>
      `Until then ${p.own40} and ${p.own100} stand.`,
  },
};
