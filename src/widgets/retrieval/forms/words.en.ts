/** Of the questions in which one arranges, pairs or points. */
export const words = {
  order: 'Put the steps in order, the first at the top',
  up: 'Move up:',
  down: 'Move down:',
  nowAt: (place: string, of: string) => `Now at place ${place} of ${of}:`,
  match: 'Find the letter that goes with each line',
  spotStep: 'Point at the step that is wrong or unsafe',
  spotGap: 'Point at the place where a step is missing',
  atStart: 'Missing here, before step 1',
  after: (place: string) => `Missing here, after step ${place}`,
};
