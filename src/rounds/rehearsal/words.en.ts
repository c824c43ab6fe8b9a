import { languages } from '../../language/languages.ts';
import { plural } from '../../quantity/lists.ts';

const { locale } = languages.en;
const count = (number: string, one: string, other: string): string =>
  plural(Number(number), { one, other }, locale);

/** What stands on the page before a question and after the last. */
export const words = {
  reading: 'Looking up your rehearsals.',
  loading: 'Loading the questions',
  head: { ready: 'Your next rehearsal', waits: 'Your rehearsal waits' },
  size: (p: { questions: string; minutes: string }) =>
    `${p.questions} questions, and a clock of ${p.minutes} minutes that you can switch off.`,
  unseen: (p: { questions: string }) =>
    count(
      p.questions,
      '1 question is set in a place that no lesson shows.',
      '# questions are set in places that no lesson shows.',
    ),
  next: (p: { questions: string }) =>
    count(p.questions, '1 is about which test comes next.', '# are about which test comes next.'),
  healthy: (p: { questions: string }) =>
    count(
      p.questions,
      '1 is about a car with nothing wrong.',
      '# are about cars with nothing wrong.',
    ),
  begin: 'Begin',
  waits: (p: { place: string; of: string }) => `You stopped at question ${p.place} of ${p.of}.`,
  has: (p: { answers: string }) => count(p.answers, '1 has an answer.', '# have an answer.'),
  flagged: (p: { flags: string }) => count(p.flags, '1 is flagged.', '# are flagged.'),
  ran: (p: { minutes: string }) =>
    count(p.minutes, 'The clock has run for 1 minute.', 'The clock has run for # minutes.'),
  goOn: 'Go on',
  drop: 'Throw this rehearsal away',
  dropped: 'The rehearsal is thrown away.',
  bringBack: 'Bring it back',
  past: {
    title: 'Rehearsals so far',
    result: (p: { right: string; asked: string }) => `${p.right} of ${p.asked} right`,
  },
  notKept: {
    blocked:
      'This browser keeps nothing for this site. The rehearsal works all the same, until you close or reload the page.',
    full: 'This browser has no room left. What you put down from now on stays until you close or reload the page.',
    newer:
      'A newer version of this site has been here, so nothing more can be kept. Reload the page before you go on.',
  },
};
