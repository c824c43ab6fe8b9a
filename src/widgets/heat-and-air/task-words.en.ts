export const words = {
  tasks: {
    morning: {
      words: (p: { cold: string; warm: string; hot: string }) =>
        `Car one, forward. Overnight cold, at ${p.cold}, its clutch is more than a tenth short at idle. From ${p.warm} up to ${p.hot} it reads right. Find the fault, and make it bad enough to show.`,
      hint: 'A gap opens its leak as the fluid thins. What does the opposite, and closes as it warms?',
      after: (p: { held: string; pistonHeld: string }) =>
        `A piston lip gone hard. Cold it stands off the wall; warm it comes back to it. Air finds it on a cold bench: it holds ${p.held}. But air does not say how it behaves warm, and a cut lip can hold about as little (${p.pistonHeld} at the worst). The morning tells those two apart.`,
    },
    passesAir: {
      words: (p: { short: string }) =>
        `Car two, forward. It reads right cold, and hot at idle it has less than ${p.short}. Reverse is as it should be, hot too. On the cold bench circuit and transfer seal hold as much as healthy ones. What is left?`,
      hint: 'Air finds a leak only in what it is put on. What belongs to forward alone and lies in the valve body?',
      after: (p: { sealHeld: string; feedReverse: string; reverse: string }) =>
        `The forward clutch’s own valve, sticking as it warms. Nothing runs out, so air has nothing to find. A split transfer seal passes at the case too, but under air by itself it gives itself away (${p.sealHeld} held with the crack of the course), and Reverse is low with it. A choked feed passes as well, and it hurts every range: the worst leaves Reverse ${p.feedReverse} of ${p.reverse}.`,
    },
    byAir: {
      words: (p: { cold: string; hot: string; held: string; whole: string }) =>
        `Car three, reverse alone. Cold at idle its clutch has ${p.cold}, hot ${p.hot}. On the bench its circuit holds ${p.held} of the air (a good one ${p.whole}), and the transfer seal holds all. Make all of it read so, the air within one percent.`,
      hint: 'Cold right and hot short is a gap. Rings and a cut piston seal are both gaps. Bring each to that hot pressure, and compare the air.',
      after: (p: { hot: string; piston: string; held: string }) =>
        `Rings. They run right round the shaft, a gap that is wide and thin, and a cut is narrow and stands further open. Thin is what slows fluid, and it hardly slows air. So, brought to the same ${p.hot} hot, a cut piston seal still holds ${p.piston} in our model, where the rings hold ${p.held}. And a cold bench is enough for either.`,
    },
  },
  reached: {
    air: (p: { held: string; hot: string }) =>
      `Here the circuit holds ${p.held}, and hot at idle the clutch has ${p.hot}.`,
    cold: (p: { cold: string; healthy: string }) =>
      `Cold it has ${p.cold}, where a healthy one has ${p.healthy}.`,
    hot: (p: { hot: string }) => `Hot at idle it has ${p.hot}.`,
  },
};
