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
  due: (p: { count: number; minutes: number }) => ({
    what: plural(p.count, { one: '1 question is due.', other: '# questions are due.' }, locale),
    press: `Start today’s round (${p.minutes} minutes)`,
  }),
  round: (p: { place: number; of: number }) => ({
    what: 'Today’s round is begun.',
    press: `Go on at question ${p.place} of ${p.of}`,
  }),
  later: (p: { days: number | undefined }) => ({
    what: 'No question comes back today.',
    press:
      p.days === undefined
        ? 'Go to today’s round'
        : `The next comes back ${p.days === 1 ? 'tomorrow' : `in ${p.days} days`}`,
  }),
  rehearsalAt: (p: { place: number; of: number }) => ({
    what: 'Rehearsal begun.',
    press: `Go on at question ${p.place} of ${p.of}`,
  }),
  caseOf: (p: { title: string }) => ({ what: `Case begun: ${p.title}.`, press: 'Go on with it' }),
  made: (p: { number: string }) => `car number ${p.number}`,
};
