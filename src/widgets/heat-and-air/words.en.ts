interface Readings {
  hot: string;
  cold: string;
  healthy: string;
  held: string;
  whole: string;
}

export const words = {
  title: 'What heat and air tell',
  controls: { fault: 'What is wrong', circuit: 'Circuit read, and put under air' },
  predict: {
    question: (p: { whole: string; hot: string; healthy: string; cold: string; atHot: string }) =>
      `A healthy forward circuit, cold on the bench, holds ${p.whole} of the air. Now its rings wear: hot at idle, at ${p.atHot}, it has ${p.hot} in place of ${p.healthy}, and cold still ${p.cold}. You put air on it cold. It holds:`,
    options: {
      'like-healthy': {
        words: 'About as much as a healthy one. Cold hides a thin gap.',
        why: (p: Readings) =>
          `Cold fluid hides it: ${p.cold} in the car. But what hides it is how thick cold fluid is, and air is thin at any temperature. The circuit holds ${p.held}, where a healthy one holds ${p.whole}.`,
      },
      'in-step': {
        words: 'About half, as the hot gauge shows about half.',
        why: (p: Readings) =>
          `The hot clutch does have ${p.hot} of ${p.healthy}. But the air gauge is another scale: air is far thinner than even hot fluid, and the tester’s hole lets in far less than the feed hole. It holds ${p.held}.`,
      },
      'far-less': {
        words: 'Only a small part. Air gets through a gap cold.',
        why: (p: Readings) =>
          `Air is thinner than hot fluid, on a cold bench as well. The gap that takes half of the hot pressure takes nearly all of the air: ${p.held} held, where a healthy circuit holds ${p.whole}.`,
      },
    },
    runLabel: 'Wear the rings',
  },
  outcome: (p: Readings) =>
    `Cold in the car ${p.cold}, hot ${p.hot}. On the cold bench it holds ${p.held} of the air, and a healthy circuit ${p.whole}.`,
  healthy: 'Nothing wrong',
  says: (p: {
    fault: string;
    clutch: string;
    has: string;
    temp: string;
    healthy: string;
    held: string;
    seal: string;
  }) =>
    `${p.fault}. ${p.clutch} clutch: ${p.has} at ${p.temp}, healthy ${p.healthy}. Cold on the bench the circuit holds ${p.held} of the air, the transfer seal ${p.seal}.`,
  chart: {
    name: 'Clutch pressure at idle',
    takeaway: 'in the car, over fluid temperature.',
    y: 'Clutch pressure',
    healthy: 'healthy',
    here: 'this one',
    now: 'now',
  },
  air: {
    circuit: 'Air, circuit',
    seal: 'Air, seal',
    /** The tick on the bar says the same. */
    held: (p: { held: string; healthy: string }) => `${p.held}, healthy ${p.healthy}`,
  },
};
