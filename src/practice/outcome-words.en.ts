import { plural } from '../quantity/lists.ts';
import type { Carried, Judged } from '../cases/judge.ts';

const verdicts: Record<Judged['verdict'], (p: { minutes: string }) => string> = {
  solved: (p) => `Solved, in ${p.minutes} minutes`,
  part: (p) => `Part of it, in ${p.minutes} minutes`,
  wrong: (p) => `Not the right cause. You spent ${p.minutes} minutes.`,
};

const carried: Record<Carried, string> = {
  shown: 'Your readings had shown it.',
  likely:
    'Your readings spoke for your answer, and left room for others. One more test would have told them apart.',
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
  takeaway: 'Take this with you',
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
    role: { yours: 'Your answer', real: 'The real cause', both: 'Your answer and the real cause' },
    most: 'Moved most',
    inAny: (p: { fault: string }) => `${p.fault}, in any clutch`,
    of: (p: { role: string; fault: string; move: string }) => `${p.role}, ${p.fault}: ${p.move}`,
    moved: (p: { before: string; after: string }) => `from ${p.before} to ${p.after}`,
    stayed: (p: { share: string }) => `stayed at ${p.share}`,
    asked: 'The planner does not weigh what a customer says.',
    looked: 'The planner counts readings only.',
    wasted: (p: { minutes: string }) =>
      `${p.minutes} of your minutes went into tests that told nothing.`,
    open: (p: { list: string }) =>
      `When you handed it in, this still fitted your readings: ${p.list}.`,
    unread: (p: { list: string }) =>
      `You took no reading, so the list stood as it begins: ${p.list}.`,
    stood: {
      yours: (p: { list: string }) => `Your answer: ${p.list}.`,
      real: (p: { list: string }) => `The real cause: ${p.list}.`,
      both: (p: { list: string }) => `Your answer is the real cause: ${p.list}.`,
    },
    outside: (p: { cause: string; share: string }) =>
      `${p.cause}, which the list has only as something that is not on it, ${p.share}`,
    apart: 'Every share takes that fault to be the only one; two together have none of their own.',
    one: (p: { fault: string; share: string }) => `${p.fault} ${p.share}`,
  },
  planner: {
    title: 'The planner’s way on this car',
    intro: 'It knows the tests of a shop and nothing of what the customer said.',
    top: (p: { fault: string; share: string }) => `Most likely after this: ${p.fault}, ${p.share}.`,
    sum: (p: { minutes: string; tests: string }) => `${p.tests}, ${p.minutes} minutes.`,
    outside:
      'The cause of this car is not on the planner’s list. It can only say that no fault of its list fits, and the looks decide.',
    test: { one: 'One test', other: '# tests' },
  },
  again: 'Take this car again',
  next: 'Choose the next car',
};
