import { languages } from '../../language/languages.ts';
import { plural } from '../../quantity/lists.ts';

const { locale } = languages.en;
const count = (number: string, one: string, other: string): string =>
  plural(Number(number), { one, other }, locale);
/** While a rehearsal is under way, and of its result. */
export const words = {
  asking: (p: { place: string; of: string }) => `Question ${p.place} of ${p.of}`,
  askingFlagged: (p: { place: string; of: string }) => `Question ${p.place} of ${p.of}, flagged`,
  clock: {
    left: (p: { minutes: string }) => count(p.minutes, '1 minute left', '# minutes left'),
    up: 'The time is up. Go on as you like.',
    off: 'The clock is off.',
    switchOff: 'Switch the clock off',
    switchOn: 'Switch the clock on',
  },
  next: 'Next question',
  before: 'Previous question',
  flag: 'Flag it',
  unflag: 'Take the flag off',
  all: 'All questions',
  leave: 'Stop here, go on later',
  overview: {
    head: (p: { of: string }) => `All ${p.of} questions`,
    counts: (p: { answered: string; open: string }) => `${p.answered} answered, ${p.open} open.`,
    flags: (p: { flags: string }) => count(p.flags, '1 is flagged.', '# are flagged.'),
    back: (p: { place: string }) => `Back to question ${p.place}`,
    firstOpen: 'Go to the first open question',
    standing: {
      answered: (p: { place: string }) => `Question ${p.place}, answered`,
      open: (p: { place: string }) => `Question ${p.place}, open`,
      unsure: (p: { place: string }) => `Question ${p.place}, answered, how sure is missing`,
      unread: (p: { place: string }) =>
        `Question ${p.place}, the answer is incomplete or cannot be read`,
    },
    flagged: {
      answered: (p: { place: string }) => `Question ${p.place}, answered, flagged`,
      open: (p: { place: string }) => `Question ${p.place}, open, flagged`,
      unsure: (p: { place: string }) =>
        `Question ${p.place}, answered, how sure is missing, flagged`,
      unread: (p: { place: string }) =>
        `Question ${p.place}, the answer is incomplete or cannot be read, flagged`,
    },
    legend: {
      answered: 'answered',
      half: 'not complete: how sure is missing, or the answer is incomplete or cannot be read',
      open: 'open',
      flagged: 'flagged',
    },
  },
  handIn: {
    ask: 'Hand in',
    head: 'Hand in now?',
    complete: 'Every question is answered.',
    /** Places that follow each other, in a list of places. */
    run: (p: { first: string; last: string }) => `${p.first} to ${p.last}`,
    open: (p: { count: string; places: string }) =>
      count(
        p.count,
        `Question ${p.places} is open and counts as not right.`,
        `Questions ${p.places} are open and count as not right.`,
      ),
    unsure: (p: { count: string; places: string }) =>
      count(
        p.count,
        `Question ${p.places} does not say how sure you are, and counts as open until it does.`,
        `Questions ${p.places} do not say how sure you are, and count as open until they do.`,
      ),
    unread: (p: { count: string; places: string }) =>
      count(
        p.count,
        `Question ${p.places} has an answer that is incomplete or cannot be read, and counts as open.`,
        `Questions ${p.places} have answers that are incomplete or cannot be read, and count as open.`,
      ),
    flagged: (p: { count: string; places: string }) =>
      count(
        p.count,
        `Question ${p.places} is still flagged.`,
        `Questions ${p.places} are still flagged.`,
      ),
    final: 'Nothing can be changed after that.',
    yes: 'Hand it in',
    no: 'Not yet',
  },
  result: {
    head: 'How it went',
    of: (p: { date: string }) => `Handed in ${p.date}.`,
    right: (p: { right: string; asked: string }) => `${p.right} of ${p.asked} right.`,
    open: (p: { open: string }) =>
      count(
        p.open,
        '1 was left open and counts as not right.',
        '# were left open and count as not right.',
      ),
    ran: (p: { minutes: string }) =>
      count(p.minutes, 'The clock ran for 1 minute.', 'The clock ran for # minutes.'),
    ranShort: 'The clock ran for less than a minute.',
    off: 'The clock was off at the end.',
    areas: 'Area by area',
    few: 'So few questions in an area tell you where to look. They do not tell you how good you are.',
    area: 'Area',
    rightHead: 'Right',
    rightOf: (p: { right: string; asked: string }) => `${p.right} of ${p.asked}`,
    openHead: 'Open',
    readNext: 'Read this next',
    weak: 'The weakest area stands first. An area is listed if more than one question in four was not right.',
    line: (p: { area: string; right: string; asked: string }) =>
      `${p.area}: ${p.right} of ${p.asked} right.`,
    nothing:
      'In every area three questions in four were right, or more. Come back in a week and see if it stayed.',
    sure: 'How sure, how right',
    told: 'Every question, explained',
    missed: 'Not right, the surest first',
    rightOnes: 'Right',
    question: (p: { place: string }) => `Question ${p.place}`,
    leftOpen: 'You left it open.',
    unsure: 'Your answer did not say how sure you were, so it does not count.',
    unread: 'Your answer was incomplete or could not be read, so it does not count.',
    changed: 'This question has changed since, so your answer cannot be shown in it.',
    gone: 'This question is no longer on the site.',
    onScreen: 'The questions with their explanations are on the screen.',
    print: 'Print this result',
    toStart: 'To the next rehearsal',
  },
};
