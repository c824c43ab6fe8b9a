export const words = {
  chart: {
    name: 'Squeeze of the piston lip',
    takeaway:
      'What presses the rubber on the drum: what set has left of it, and what the rubber grows or shrinks against the steel.',
    y: 'Squeeze',
    new: 'new lip',
    set: 'this lip',
    off: 'stands off',
    now: 'now',
  },
  table: {
    head: 'How fast the rubber springs back.',
    caption: (p: { shop: string }) => `Its time beside the one it takes at ${p.shop}.`,
    temp: 'Rubber at',
    spring: 'takes',
    times: (p: { times: string }) => `${p.times} times as long`,
  },
  taken: {
    head: 'What is taken for granted.',
    lip: (p: { new: string; reach: string; glass: string }) =>
      `A new lip is pressed in by ${p.new} in the shop, over ${p.reach} of free rubber that turns to glass at ${p.glass}; all three are invented. Set takes as much of its squeeze as the lip has hardened. Rubber grows ten times as much as steel, by a rule of thumb, and springs back by a published law with its constants for all rubbers.`,
    gap: (p: { frost: string }) =>
      `The times come from the gap that our model gives a hard lip, a straight line from ${p.frost} to warm, invented as well. It grows no further in deeper frost: hence the bend in its line. It is wider than shrinking alone would make it, because stiff rubber does not follow its drum.`,
    left: 'Left out: pressure that presses a lip on, a lip that sticks or is helped by a spring behind it, fluid that the rubber takes up, and seals that are both split and hard.',
  },
};
