export const words = {
  chart: {
    name: 'One fill, every temperature',
    takeaway:
      'what the stick shows on the flat at idle, from the middle of its marks. Where no line is, it comes out dry.',
    y: 'On the stick',
    right: 'right fill',
    here: 'this fill',
    marks: 'MIN to MAX',
    now: 'now',
  },
  taken: {
    head: 'What is taken for granted.',
    model: (p: { fill: string; apart: string; holds: string; from: string; to: string }) =>
      `The swelling is that of the course’s fluid by a published law, all ${p.fill} of it. The pan is invented: MIN and MAX stand ${p.apart} apart, with ${p.holds} between them, and the stick is meant for ${p.from} to ${p.to} at idle.`,
    pressure:
      'The line is read in Drive on its idle command. At speed more fluid is out in the passages and the converter, so the level falls. In a bend and on a hill the surface tips; our right fill stays just covered there.',
    air: 'The air is spread evenly here. A real pump takes it in gulps: the needle flutters, and a clutch can let go for a moment with the line right on the average.',
    left: 'What whipped air does to the clutches, air that stays in the fluid for a while, and what drains back into the pan with the engine off are left out. On a hill the stick tells nothing: read it on the flat.',
  },
};
