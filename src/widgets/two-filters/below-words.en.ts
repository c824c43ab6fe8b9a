export const words = {
  got: {
    name: 'What the pump gets',
    takeaway: (p: { speed: string }) => `of what it asks for at ${p.speed}, against temperature.`,
    axis: 'Of what it asks for',
  },
  taken: {
    head: 'What is taken for granted.',
    law: 'What media cost goes with the thickness of the fluid and with the flow, and against the area: twice the area, half the loss. That is Darcy’s law. Tighter media of the same area would raise the line in the same way, and the pour would show it. A ruler would not.',
    sheet: (p: { limit: string }) =>
      `The filter is that of our invented transmission, and all of its resistance is taken for media; neck and pick-up are counted in. Of the air pressure, ${p.limit} is taken as fit to push with.`,
    pour: (p: { amount: string; head: string }) =>
      `The pour is ${p.amount} with ${p.head} of fluid kept standing over the media. Your funnel will give other seconds. What stays is how many times as long the one takes as the other.`,
    left: 'A starved pump here only gets less. The howl, the wear, the foam and the air at a bad neck seal are left out, and so is what a filter catches.',
  },
};
