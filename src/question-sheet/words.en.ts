import { languages } from '../language/languages.ts';
import { listOf, plural } from '../quantity/lists.ts';

const { locale } = languages.en;
const questions = (count: string): string =>
  plural(Number(count), { one: '1 question', other: `${count} questions` }, locale);

interface Range {
  readonly least: string;
  readonly most: string;
}

export const words = {
  page: {
    title: 'Question sheets',
    description:
      'Print a sheet of questions for the shop: choose lessons, how many, and US or metric units. Two sheets for neighbors, the key apart, and a seed that prints them again.',
    lead: 'Print questions for a meeting, or for somebody who learns better with a pencil. The same seed prints the same sheet again, on any device.',
    noScript:
      'This page needs a script to draw a sheet. Without one, print a lesson: its questions stand at its end.',
    toLessons: 'Go to the course',
  },
  reading: 'Setting up the form.',
  lessons: {
    label: 'Which lessons?',
    every: 'Tick all lessons',
    none: 'Untick all',
    all: 'All of these',
    count: (p: { count: string }) => questions(p.count),
    ticked: (p: { count: string; lessons: string }) =>
      plural(
        Number(p.lessons),
        {
          one: `1 lesson ticked, ${questions(p.count)} to draw from.`,
          other: `${p.lessons} lessons ticked, ${questions(p.count)} to draw from.`,
        },
        locale,
      ),
  },
  count: {
    label: 'How many questions?',
    hint: (p: Range) => `${p.least} to ${p.most}. Twenty take about half an hour.`,
  },
  units: { label: 'Units on paper', us: 'US: psi, °F', si: 'Metric: kPa, °C' },
  seed: {
    label: 'Seed',
    hint: 'A word or a number. It stands on the sheet, and typing it again prints the same sheet. Whoever types it here can print the key as well.',
    draw: 'Draw another',
  },
  version: {
    label: 'Version on the sheet',
    hint: 'Only to print an old sheet again: copy it from there, and you are told if the questions have changed since.',
  },
  make: 'Make the sheets',
  loading: 'Fetching the questions',
  faults: {
    noLesson: 'Tick at least one lesson to draw from.',
    count: {
      none: (p: Range) => `Type how many questions you want, ${p.least} to ${p.most}.`,
      notWhole: (p: Range & { typed: string }) =>
        `“${p.typed}” is not a whole number. Type one from ${p.least} to ${p.most}.`,
      outside: (p: Range & { typed: string }) =>
        `A sheet holds ${p.least} to ${p.most} questions, and you asked for ${p.typed}.`,
      tooMany: (p: { there: string }) =>
        `The lessons you ticked hold ${questions(p.there)}. Ask for no more than that, or tick more lessons.`,
    },
    seed: {
      none: 'Type a seed, any short word or number, or press “Draw another”.',
      long: 'A seed has 16 characters at most, so that it is quick to type. Shorten this one.',
      sign: (p: { sign: string }) =>
        `A seed has only letters from a to z, digits and hyphens, and this one has ${p.sign} in it.`,
      space: 'a space',
    },
    version:
      'That is no version of the questions. One has six letters and digits; leave the field empty for a new sheet.',
  },
  gone: (p: { lessons: readonly string[] }) =>
    plural(
      p.lessons.length,
      {
        one: `The link asks for a lesson that is not on this site: ${listOf(p.lessons)}. The sheet goes without it.`,
        other: `The link asks for lessons that are not on this site: ${listOf(p.lessons)}. The sheet goes without them.`,
      },
      locale,
    ),
  miss: {
    offline: 'The questions could not be fetched. Check that you are connected, then try again.',
    refused:
      'The site did not hand out its questions. It may have changed since you opened this page: reload it.',
    stuck: 'Part of this page could not be loaded. Reload it.',
    foreign:
      'Something other than the questions arrived. If your network asks you to log in, do that first, then try again.',
  },
  again: 'Try again',
  nothing: 'There is no sheet on this page yet. Make one, then print it.',
  made: {
    title: 'Your sheets',
    about: (p: { count: string; seed: string }) =>
      `${questions(p.count)}, drawn with the seed “${p.seed}”. What you see here is what gets printed.`,
    which: 'Show and print',
    shown: { a: 'Sheet A', b: 'Sheet B', key: 'The key' },
    notes: {
      a: 'For every other seat.',
      b: 'The same questions in another order, with the options moved.',
      key: 'Answers to both, with the reasons.',
    },
    print: 'Print this',
    wrongToo: 'Say why the wrong answers are wrong as well',
    otherVersion: (p: { then: string; now: string }) =>
      `That sheet was made with version ${p.then} of its questions, and this one is drawn from version ${p.now}. Either questions have changed since, or other lessons are ticked than were then. Do not mark old papers with the new key.`,
  },
  paper: {
    title: { a: 'Question sheet A', b: 'Question sheet B' },
    running: { a: 'Sheet A', b: 'Sheet B', key: 'Key' },
    seed: (p: { seed: string; version: string }) => `seed ${p.seed}, version ${p.version}`,
    name: 'Name',
    date: 'Date',
    score: (p: { count: string }) => `Right answers, of ${p.count}`,
    how: 'Tick the answer you would give. Where more than one may be right, the question says so.',
    asks: {
      one: '',
      several: 'Tick every one that fits.',
      amount: 'Write the number.',
      order: 'Number the steps in the right order.',
      match: 'Write the letter that goes with each line.',
      step: 'Tick the step that is wrong or unsafe.',
      gap: 'Tick the place where a step is missing.',
      fault: 'On paper every reading has been taken for you. Tick what it is.',
    },
    minutes: (p: { minutes: string }) => `${p.minutes} min`,
    beforeFirst: 'before step 1',
    afterStep: (p: { step: string }) => `after step ${p.step}`,
  },
  key: {
    title: 'Key to sheets A and B',
    how: (p: { count: string; lessons: readonly string[]; units: string }) =>
      `${questions(p.count)} from ${listOf(p.lessons)}. ${p.units}`,
    howAll: (p: { count: string; units: string }) =>
      `${questions(p.count)} from all lessons. ${p.units}`,
    units: { us: 'US units.', si: 'Metric units.' },
    answers: { a: 'Answers to sheet A', b: 'Answers to sheet B' },
    from: (p: { amount: string; least: string; most: string }) =>
      `${p.amount} (${p.least} to ${p.most})`,
    /** Numbers of steps that stand for one another. */
    swap: (p: { numbers: readonly string[] }) => `${listOf(p.numbers)} may swap`,
    either: (p: { one: string; other: string }) => `${p.one} or ${p.other}`,
    topDown:
      'Where steps are numbered or lines get a letter, the answer runs from the top line to the bottom one.',
    cheapest: (p: { minutes: string }) =>
      `The cheapest readings that decide take ${p.minutes} min:`,
    /** Before the step that is not there. */
    missing: (p: { places: string }) => `Missing ${p.places}:`,
    marks: { rightStep: 'Right as it stands:', withNothing: 'Goes with nothing:' },
    reasons: 'Why',
    inA: 'Questions and answers are numbered as on sheet A. Their numbers on sheet B stand at the side.',
    onB: (p: { number: string; answer: string }) => `On sheet B: ${p.number}, answer ${p.answer}`,
    onlyB: (p: { number: string }) => `On sheet B: ${p.number}`,
    wrong: 'Not:',
    ifThey: (p: { mistake: string }) => `You get this if you ${p.mistake}.`,
  },
};
