/** What the shell says once the run has ended: compare, tasks, your controls. */
export const words = {
  whatItDid: 'What it did',
  youSaid: {
    guessing: 'You said, guessing',
    'fairly-sure': 'You said, fairly sure',
    certain: 'You said, certain',
  },
  modelSays: 'The model says',
  right: 'As you said.',
  wrong: 'Not what you said.',
  instead: 'What it did:',
  otherAnswers: (p: { count: number }): string =>
    p.count === 1 ? 'The other answer' : 'The other answers',
  lastTime: 'Your last prediction, and what it did',
  toTasks: 'On to the tasks',
  task: (p: { number: number; of: number }) => `Task ${p.number} of ${p.of}`,
  verdicts: {
    'too-high': 'Too high.',
    'too-low': 'Too low.',
    'too-early': 'Too early.',
    'too-late': 'Too late.',
    nearly: 'Nearly.',
    'not-that': 'Not that one.',
  },
  done: 'Done.',
  hint: 'Give me a hint',
  nextTask: 'Next task',
  toOwnControls: 'On to your controls',
  startOver: 'Start this task over',
  ownControls: 'Your controls',
  moreControls: 'More controls',
  onWall: 'Show this on the wall',
};
