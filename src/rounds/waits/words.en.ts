import { languages } from '../../language/languages.ts';
import { plural } from '../../quantity/lists.ts';

const { locale } = languages.en;

/** What waits for somebody who has practiced on this device: what it is, and what a press does. */
export const words = {
  title: 'What waits for you',
  /** Before the answers are read. */
  today: { what: 'Today’s round', press: 'See what is due' },
  rehearsal: { what: 'Rehearsal begun.', press: 'Go on where you stopped' },
  case: { what: 'Case begun.', press: 'Go on with it' },
  due: {
    what: (p: { count: number }) =>
      plural(p.count, { one: '1 question is due.', other: '# questions are due.' }, locale),
    press: (p: { minutes: number }) => `Start today’s round (${p.minutes} minutes)`,
  },
  begun: 'Today’s round is begun.',
  later: 'No question comes back today.',
  toToday: 'Go to today’s round',
  nextIn: (p: { days: number }) =>
    `The next comes back ${p.days === 1 ? 'tomorrow' : `in ${p.days} days`}`,
  goOnAt: (p: { place: number; of: number }) => `Go on at question ${p.place} of ${p.of}`,
  caseOf: (p: { title: string }) => `Case begun: ${p.title}.`,
  made: (p: { number: string }) => `car number ${p.number}`,
};
