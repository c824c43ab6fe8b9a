/** What the page says of its questions: the door to them, and all of them for who has no script, or paper. */
export const words = {
  title: 'Without looking back',
  offer: {
    head: 'What stayed with you?',
    start: 'Cover the lesson and start',
    loading: 'Loading the questions',
    again: 'Try again',
    reload: 'Reload the page',
    /** No questions came. They can be asked for again, in any browser. */
    offline: 'The questions could not be loaded. Check that you are connected, then try again.',
    /** The questions came and the script did not: some browsers ask for that once in the life of a page. */
    stuck: 'The questions could not be loaded. Reload the page, then press start again.',
  },
  intro: (round: string, all: string) =>
    `${round} of the ${all} questions of this lesson. The lesson goes out of sight until you are done; that is what makes it stay with you. Your answers stay on this device; nothing is sent.`,
  /** What an answer earns and costs, from least sure to surest, and whose scale it is. */
  scale: {
    told: (p: { right: string; wrong: string }) =>
      `You say how sure you are before you check. The surer you say you are, the more is at stake: a right answer earns ${p.right} and a wrong one ${p.wrong}, so it pays to be honest.`,
    source: 'Where this scale comes from',
  },
  /** The questions without a script, and in print. */
  plain: {
    chartAsTable: 'The chart in numbers',
    number: 'Work it out.',
    single: 'One answer is best.',
    several: 'More than one answer fits.',
    order: 'Put the steps in order.',
    match: 'Find the letter that goes with each line.',
    spotStep: 'One step is wrong or unsafe. Which one?',
    spotGap: 'One step is missing. Which one, and where?',
    mayStandBefore: 'or before the step above',
    case: 'Ask for the readings that you want, then name what it is.',
    minutes: (minutes: string) => `${minutes} min`,
    cheapest: (minutes: string) => `The cheapest readings that decide take ${minutes} min:`,
    nothing: 'goes with nothing here.',
    missingFirst: 'Missing before step 1:',
    missingAfter: (step: string) => `Missing after step ${step}:`,
    wrongStep: 'This is the one:',
    answer: 'Answer and reasons',
    /** Between a number and the mistake that leads to it, which is in the words of the question. */
    comesOf: (mistake: string) => `is what you get if you ${mistake}.`,
    fits: 'Fits:',
    fitsNot: 'Does not fit:',
    /** Printed under them, where the answers are left out. */
    onPaper: 'The answers, with the reason for each choice, are on screen.',
  },
};
