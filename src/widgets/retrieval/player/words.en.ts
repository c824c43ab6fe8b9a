import { languages } from '../../../language/languages.ts';
import { plural } from '../../../quantity/lists.ts';

const { locale } = languages.en;

/** Of the player, which is loaded when a round starts. */
export const words = {
  stayed: 'What stayed with you?',
  start: 'Cover the lesson and start',
  carryOn: 'Cover the lesson and carry on',
  startAgain: 'Start again',
  others: 'Cover the lesson and ask me others',
  paused: (place: string, of: string) => `Paused at question ${place} of ${of}`,
  tookUp: 'You are back where you left off.',
  asking: (place: string, of: string) => `Question ${place} of ${of}`,
  answered: (place: string, of: string) => `Question ${place} of ${of}, answered`,
  over: 'How it went',

  best: 'Choose the best answer',
  everyOne: 'Tick every answer that fits',
  sure: 'How sure are you?',
  howSure: { 1: 'Guessing', 2: 'Fairly sure', 3: 'Certain' },
  price: (right: string, wrong: string) => `right ${right}, wrong ${wrong}`,
  check: 'Check my answer',
  uncover: 'Show the lesson',
  tryIt: 'See it in the simulation (in a new tab; your answers stay here)',
  yours: 'Your answer',
  plainNumber: 'A number, without a unit.',
  typed: (quantity: string) => `A ${quantity}. If yours is in another unit, type the unit too.`,

  chartAsTable: 'The chart in numbers',
  loadingForm: 'Loading this kind of question',
  formMissing:
    'This kind of question could not be loaded. Check that you are connected, then try again. If that does not help, reload the page.',
  tryAgain: 'Try again',

  wrote: (text: string) => `You wrote “${text}”.`,
  marks: (howSure: string, marks: string, count: number) =>
    `${howSure}: ${marks} ${plural(count, { one: 'mark', other: 'marks' }, locale)}.`,
  tags: {
    answer: 'The answer',
    yourNumber: 'Your number is this one',
    mistake: 'A mistake people make',
    fitsChosen: 'Fits, and you chose it',
    fits: 'Fits',
    chosen: 'You chose this',
    fitsNot: 'Does not fit',
  },
  next: 'Next question',
  toEnd: 'See how it went',

  /** Below zero "of 18" means nothing: what was lost is said, and what there was to win. */
  result: (p: { right: number; asked: number; marks: number; best: number }): string =>
    p.marks < 0
      ? `${p.right} of ${p.asked} right. You lost ${plural(-p.marks, { one: '1 mark', other: '# marks' }, locale)}. The most you can win is ${p.best}.`
      : `${p.right} of ${p.asked} right, ${p.marks} of ${p.best} marks.`,
  table: 'How sure you were, and how often you were right',
  said: 'You said',
  times: 'Times',
  right: 'Right',
  notUsed: 'not used',
  again: 'Look at these again',
  /** When the questions that went wrong are asked again; a link to Today follows. */
  returns: (p: { days: number; all: boolean }) =>
    `${p.all ? 'These come back' : 'The first of these comes back'} ${p.days === 1 ? 'tomorrow' : `in ${p.days} days`} in`,
  today: 'Today',
  certainAndWrong: (times: number) =>
    `You were certain and wrong ${times === 1 ? 'once' : `${times} times`}: start there, because on a car nobody would have stopped you.`,
  rightGuesses: 'Every guess was right: you know more than you trust yourself with.',
  nothingWrong: 'Nothing wrong this time. Come back in a few days and see if it stayed.',
  fairlySureAndWrong: (times: number) =>
    `You were fairly sure and wrong ${times === 1 ? 'once' : `${times} times`}: on a car you would have gone ahead. Where you would rather look it up first, say “Guessing”.`,
  openLeft: 'Nothing that you answered was wrong. What you left open is what to read.',
  knewDoubt: 'You knew where you were not sure, and that is worth a lot in a shop.',

  otherAnswer: (status: string) =>
    `The site answered ${status} instead of the questions. It may have changed since you opened this page: reload it, then press start again.`,
  notQuestions:
    'Something other than the questions of this lesson arrived. If your network asks you to log in, do that first, then try again. If it does not, reload the page.',
};
