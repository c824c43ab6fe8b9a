export const words = {
  chart: {
    name: 'One fill, every temperature',
    takeaway: 'what the stick would show on the flat at idle, from the middle of its marks.',
    y: 'On the stick',
    right: 'right fill',
    here: 'this fill',
    marks: 'MIN to MAX',
    now: 'now',
  },
  taken: {
    head: 'What is taken for granted.',
    model: (p: { fill: string; litre: string; lifts: string; from: string; to: string }) =>
      `The swelling is that of the course’s fluid by a published law, all ${p.fill} of it. The pan is invented: ${p.litre} more lifts the level by ${p.lifts}, MIN and MAX are half of that apart, and the stick is meant for ${p.from} to ${p.to} at idle.`,
    pressure:
      'The line is read in Drive on its idle command. At speed more fluid is out in the passages and the converter, so the level falls. In a bend and on a hill the surface tips; our right fill stays just covered there.',
    left: 'What whipped air does to the clutches, air that stays in the fluid for a while, and what drains back into the pan with the engine off are left out. On a hill the stick tells nothing: read it on the flat.',
  },
};
