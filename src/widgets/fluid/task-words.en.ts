interface Pair {
  temp: string;
  a: string;
  b: string;
}

export const words = {
  tasks: {
    tenTimes: {
      words: (p: { cool: string }) =>
        `Find the temperature where fluid A is 10 times thinner than at ${p.cool}.`,
      hint: (p: { cool: string }) =>
        `Warm it, and watch the words under the picture. You are looking for 10 times thinner than at ${p.cool}.`,
      after: (p: { tenTimes: string }) =>
        `Ten times thinner at about ${p.tenTimes}. That is an ordinary working temperature, so a gap meets fluid this thin every day.`,
    },
    cross: {
      words: (p: { hot: string }) =>
        `One of these classes is the thicker of two at ${p.hot} and yet the thinner of the same two in deep cold. Make it fluid A, make its rival fluid B, and set a temperature that shows it.`,
      hint: (p: { deepCold: string }) =>
        `The line that falls less steeply is the one. Put standard against low-viscosity, then go below ${p.deepCold}.`,
      after: (p: { cross: string; standardIndex: string; lowIndex: string }) =>
        `The two lines cross near ${p.cross}. Standard has the higher viscosity index, ${p.standardIndex} against ${p.lowIndex}: it changes less with heat, both ways.`,
    },
    higherIndex: {
      words: (p: { lowIndex: string }) =>
        `Fluid A is your own. Type two numbers that give it a higher viscosity index than fluid B has, ${p.lowIndex}.`,
      hint: 'A higher index means less change. Bring the two numbers closer together: raise the hot one, or lower the cool one.',
      after:
        'Closer together is a higher index, and a flatter line. It says nothing about how thick a fluid is, only how little it changes.',
    },
  },
  reached: {
    thinner: (p: { temp: string; times: string; cool: string }) =>
      `At ${p.temp} fluid A is ${p.times} times thinner than at ${p.cool}.`,
    thicker: (p: { temp: string; times: string; cool: string }) =>
      `At ${p.temp} fluid A is ${p.times} times thicker than at ${p.cool}.`,
    pairs: {
      thinnerHot: (p: Pair) =>
        `At ${p.temp} fluid A is not the thicker of these two, ${p.a} against ${p.b}. It has to be the thicker one hot.`,
      stillThicker: (p: Pair) =>
        `At ${p.temp} A is still the thicker of the two, ${p.a} against ${p.b}.`,
      neverTurns: (p: Pair) =>
        `These two never trade places. Even at ${p.temp}, as cold as it goes here, A is the thicker, ${p.a} against ${p.b}.`,
      turned: (p: Pair) => `At ${p.temp} A is the thinner, ${p.a} against ${p.b}.`,
    },
    index: (p: { a: string; b: string }) =>
      `Your fluid comes to an index of ${p.a}; fluid B has ${p.b}.`,
  },
};
