import { plural } from '../quantity/lists.ts';
import type { Carried, Judged } from '../cases/judge.ts';

const verdicts: Record<Judged['verdict'], (p: { minutes: string }) => string> = {
  solved: (p) => `Solved, in ${p.minutes} minutes`,
  part: (p) => `Part of it, in ${p.minutes} minutes`,
  wrong: (p) => `Not this, after ${p.minutes} minutes`,
};

const carried: Record<Carried, string> = {
  shown: 'Your readings had shown it.',
  likely:
    'Your readings spoke for your answer, and left room for others. One more test would have made it sure.',
  outran:
    'Your answer went further than your readings. What you had seen fits other causes better or as well, whether you were right or not.',
};

export const words = {
  title: 'How it went',
  verdicts,
  carried,
  was: (p: { causes: string }) => `It was: ${p.causes}.`,
  in: (p: { cause: string; clutch: string }) => `${p.cause} (${p.clutch})`,
  you: (p: { causes: string }) => `You said: ${p.causes}.`,
  elsewhere: 'You had the right fault, in the wrong clutch.',
  missed: (p: { causes: string }) => `You missed: ${p.causes}.`,
  accused: (p: { causes: string }) => `There was nothing wrong here: ${p.causes}.`,
  repair: {
    title: 'The repair',
    right: 'Your plan is what this car needs.',
    missing: (p: { repairs: string }) => `Your plan lacks: ${p.repairs}.`,
    needless: (p: { repairs: string }) => `This was not needed: ${p.repairs}.`,
  },
  popular: {
    title: 'The popular answer',
    costs: (p: { hours: number; words: string }) =>
      `It costs ${plural(p.hours, { one: 'an hour', other: '# hours' })} of labor. ${p.words}`,
  },
  takeaway: 'Take with you',
  lesson: (p: { title: string }) => `Read: ${p.title}`,
  path: {
    title: 'Your way',
    working: 'The planner goes over your readings.',
    failed:
      'The planner did not load, so your way cannot be compared. Check that you are connected, then load the page again.',
    none: 'You asked and looked at nothing.',
    takes: (p: { minutes: string }) => `${p.minutes} min.`,
    took: (p: { minutes: string; did: string }) => `${p.minutes} min. ${p.did}`,
    nothing: 'It told nothing: the list stayed as it was.',
    moved: (p: { fault: string; before: string; after: string }) =>
      `${p.fault}: from ${p.before} to ${p.after}.`,
    asked: 'The planner does not weigh what a customer says.',
    looked: 'The planner does not weigh looks.',
    wasted: (p: { minutes: string }) =>
      `${p.minutes} of your minutes went into tests that told nothing.`,
    open: (p: { list: string }) =>
      `When you handed it in, this still fitted your readings: ${p.list}.`,
    one: (p: { fault: string; share: string }) => `${p.fault} ${p.share}`,
  },
  planner: {
    title: 'The planner’s way on this car',
    intro: 'It knows the tests of a shop and nothing of what the customer said.',
    top: (p: { fault: string; share: string }) => `Then at the top: ${p.fault}, ${p.share}.`,
    sum: (p: { minutes: string; tests: string }) => `${p.tests}, ${p.minutes} minutes.`,
    outside:
      'The cause of this car is not on the planner’s list. It can only say that no fault of its list fits, and the looks decide.',
    test: { one: 'One test', other: '# tests' },
  },
  again: 'Take this car again',
  next: 'Choose the next car',
};
