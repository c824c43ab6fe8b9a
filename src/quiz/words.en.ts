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
  orderFirst: 'Put the steps in order first. None has been moved yet.',
  inOrder: (p: { stand: string; count: string }) =>
    `Not yet. ${p.stand} of the ${p.count} steps stand in the right order.`,
  standsRight: 'You have this one where it belongs',
  standsWrong: (p: { place: string }) => `You had this one at place ${p.place}`,
  oneOpen: 'One line has no partner yet. Choose one for it first.',
  someOpen: (p: { open: string }) =>
    `${p.open} lines have no partner yet. Choose one for each first.`,
  nameFirst: 'Name what is wrong with it first.',
  minutesSpent: (p: { spent: string; cheapest: string }) =>
    `You spent ${p.spent} minutes on readings. The cheapest that decide take ${p.cheapest}.`,
  /** Fewer minutes than any readings that decide would take. */
  rightUndecided: (p: { spent: string; cheapest: string }) =>
    `Right, but what you read does not prove it. You spent ${p.spent} minutes on readings, and the cheapest that decide take ${p.cheapest}.`,
  readIt: 'You read this',
  leftIt: 'You left this out',
  oneOfTheCheapest: ', and it is one of the cheapest that decide',
  /** Between what stands on the left and what it goes with. */
  goesWith: ' goes with: ',
  pairRight: 'You paired this one right',
  youPaired: 'You paired it with: ',
  goesWithNothing: 'This one goes with nothing here',
  pairsRight: (p: { found: string; count: string }) =>
    `Not yet. ${p.found} of the ${p.count} pairs are right.`,
  stepFirst: 'Point at one step first.',
  placeFirst: 'Point at one place first.',
  foundStep: 'This is the one, and you found it',
  thisStep: 'This is the one to find',
  pointedAt: 'You pointed at this one, and it is right',
  stepIsRight: 'This step is right',
  foundGap: 'This step was missing, and you found the place',
  thisGap: 'This step was missing here',
  notAtStart: 'Not there. Nothing is missing before the first step.',
  notAfter: (p: { place: string }) => `Not there. Nothing is missing after step ${p.place}.`,
  /** After the reason of a typed amount; # stands for the least and the most. */
  counts: 'What is printed above is rounded, so anything from about # to about # counts as right.',
  ifYou: (p: { mistake: string }) => `You get this if you ${p.mistake}. `,
};
