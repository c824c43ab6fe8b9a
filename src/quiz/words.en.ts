/** What grading says besides what the question itself explains. Numbers come in printed. */
export const words = {
  chooseOne: 'Choose one answer first.',
  tickOne: 'Tick at least one answer first.',
  right: 'Right.',
  notThatOne: 'Not that one.',
  allRight: (p: { count: string }) => `Right, all ${p.count} of them.`,
  found: (p: { found: string; count: string }) =>
    `You found ${p.found} of the ${p.count} that fit.`,
  foundAndOneMore: (p: { found: string; count: string }) =>
    `You found ${p.found} of the ${p.count} that fit, and ticked 1 that does not.`,
  foundAndMore: (p: { found: string; count: string; extra: string }) =>
    `You found ${p.found} of the ${p.count} that fit, and ticked ${p.extra} that do not.`,
  tooHigh: 'Not that. It is too high.',
  tooLow: 'Not that. It is too low.',
  /** `mistake`: "forget the spring". */
  byMistake: (p: { mistake: string }) =>
    `Not that. This is the number you get if you ${p.mistake}.`,
  ifYou: (p: { mistake: string }) => `You get this if you ${p.mistake}. `,
};
