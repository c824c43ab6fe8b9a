import {
  after,
  bringSuspects,
  jobBegun,
  namesOf,
  rankedOf,
  readingsOn,
  SURE,
  type Job,
} from '../cases/bay-list.ts';
import { BAY_TESTS, type BayKey } from '../cases/bay-tests.ts';
import { solveBay } from '../cases/solve-bay.ts';
import { asGoodAs, entropy } from '../cases/talk-list.ts';
import { count, entry, percent, times, type Entries } from './entry.ts';

bringSuspects(solveBay());

const testOf = (key: BayKey) => BAY_TESTS.find((one) => one.key === key) ?? BAY_TESTS[0];
/** A car of the bay after these tests, in their order. */
const jobOf = (car: number, ...taken: readonly BayKey[]): Job =>
  taken.reduce((job, key) => {
    const one = testOf(key);
    return after(job, one, readingsOn(car - 1)[BAY_TESTS.indexOf(one)] ?? 0);
  }, jobBegun());

const minutes = (value: number, what: string) => entry('minutes', value, what);
const open = (job: Job): number => asGoodAs(namesOf(job.shares));
const top = (job: Job): number => 100 * Math.max(...namesOf(job.shares));
const halves = (...shares: readonly number[]): number => entropy(shares);
/** In ten minutes. */
const inTen = (worth: number, takes: number): number => (10 * worth) / takes;

/** The car of the course, before the question and after what the run takes. */
const done = ['codes', 'turbine', 'level', 'cable'] as const;
const asked = jobOf(1, ...done);
const cold = jobOf(1, ...done, 'cold');
const short = jobOf(1, ...done, 'cold', 'hotReverse', 'line');
const straight = jobOf(1, ...done, 'cold', 'seal');
/** A worn bore with all done that can be done from outside. */
const bore = jobOf(
  3,
  ...(['codes', 'turbine', 'cold', 'hotDrive', 'hotReverse', 'current', 'level'] as const),
  ...(['look', 'cable', 'line', 'tap'] as const),
);

const pan = rankedOf(bore, testOf('pan'));

function three(name: BayKey): Entries {
  const { worth, minutes: takes } = rankedOf(asked, testOf(name));
  return {
    [`next-${name}-worth`]: times(worth, `what the ${name} test tells there, in halvings`),
    [`next-${name}-minutes`]: minutes(takes, `what the ${name} test takes there`),
    [`next-${name}-rate`]: times(inTen(worth, takes), `halvings in ten minutes, ${name}`),
  };
}

/** What the test takes that leaves two names of eight, or six [min]. */
const QUARTER_TAKES = 5;
const quarter = halves(1 / 4, 3 / 4);

export const theNextBestTest: Entries = {
  ...three('cold'),
  ...three('seal'),
  ...three('tap'),
  'next-pan-worth': times(pan.worth, 'what the pan tells on the worn bore, in halvings'),
  'next-pan-minutes': minutes(pan.minutes, 'what the pan takes there'),
  'next-done-minutes': minutes(asked.minutes, 'spent before the question'),
  'next-open-before': count(open(asked), 'as open as a list of so many, before the run'),
  'next-open-after': count(open(cold), 'as open as a list of so many, after it'),
  'next-first-hot': minutes(
    rankedOf(cold, testOf('hotReverse')).minutes,
    'the first hot reading, with the warm-up',
  ),
  'next-second-hot': minutes(
    rankedOf(jobOf(1, ...done, 'cold', 'hotReverse'), testOf('hotDrive')).minutes,
    'the second hot reading',
  ),
  'next-short-minutes': minutes(short.minutes, 'one name by two hot readings'),
  'next-short-share': percent(top(short), 'how far that name is ahead'),
  'next-straight-minutes': minutes(straight.minutes, 'one name by the air test'),
  'next-straight-share': percent(top(straight), 'how far the name is ahead then'),
  'next-sure': percent(100 * SURE, 'from here the planner stops'),
  'next-one-of-eight': times(halves(1 / 8, 7 / 8), 'a sure answer on one name of eight'),
  'next-two-of-eight': times(quarter, 'a test that parts two names of eight from six'),
  'next-asked-quarter': minutes(QUARTER_TAKES, 'what the test of two and six takes'),
  'next-quarter-rate': times(inTen(quarter, QUARTER_TAKES), 'two and six, in ten minutes'),
  'next-eight-to-one': count(halves(...Array.from({ length: 8 }, () => 1 / 8)), 'eight to one', {
    'one-by-one': { mistake: 'strike off one name at a time', value: 7 },
    'half-of-eight': { mistake: 'take half of the eight', value: 4 },
  }),
};
