/**
 * The list of suspects of a car in the bay: what readings leave of it, what the next test is worth, and which one tells most
 * for its minutes. Bayes' rule and Shannon's information; what a test can say on each suspect was worked out at build.
 */
import { ARRIVES, minutesFor, stateAfter, type CarState } from '../diagnosis/car-state.ts';
import { NAMES, usualWeight } from '../diagnosis/hypotheses.ts';
import { BAY_TESTS, BEFORE_OPENING, opens, type BayKey } from './bay-tests.ts';
import { byName, tells } from './talk-list.ts';

type One = (typeof BAY_TESTS)[number];

export interface BaySuspect {
  /** Place of its name in NAMES. */
  readonly name: number;
  /** Chance of all that a test can say, test by test in the order of BAY_TESTS. */
  readonly says: readonly (readonly number[])[];
}

/** Less than this is not worth the walk [bits]; as the planner has it. */
export const LEAST = 0.03;
/** From this share on a name is above the rest; as the planner has it. */
export const SURE = 0.9;

/** A chance is told in thousandths, of two signs; nothing is impossible. */
const WHOLE = 1000;
const BASE = 36;
const SIGNS = 2;

const printed = (chance: number): string =>
  Math.max(1, Math.round(WHOLE * chance))
    .toString(BASE)
    .padStart(SIGNS, '0');

/** What is handed to the page: the cars' readings, then a line for each suspect. */
export const printSuspects = (
  cars: readonly (readonly number[])[],
  suspects: readonly BaySuspect[],
): string =>
  [
    cars.map((readings) => readings.join('')).join(' '),
    ...suspects.map(
      ({ name, says }) => `${name} ${says.map((all) => all.map(printed).join('')).join(' ')}`,
    ),
  ].join('\n');

let cars: readonly (readonly number[])[] = [];
let list: readonly BaySuspect[] = [];
let before: readonly number[] = [];

/** Takes what the page brought along: the same on every page, so it need not say for whom. */
export function bringSuspects(text: string): void {
  const [first = '', ...lines] = text.split('\n');
  cars = first.split(' ').map((readings) => Array.from(readings, Number));
  list = lines.map((line) => {
    const [name, ...all] = line.split(' ');
    const says = all.map((signs) =>
      Array.from(
        { length: signs.length / SIGNS },
        (_, i) => parseInt(signs.slice(i * SIGNS, (i + 1) * SIGNS), BASE) / WHOLE,
      ),
    );
    return { name: Number(name), says };
  });
  const alike = NAMES.map((_name, i) => list.filter(({ name }) => name === i).length);
  const weights = NAMES.map(usualWeight);
  const all = weights.reduce((sum, one) => sum + one, 0);
  before = list.map(({ name }) => (weights[name] ?? 0) / all / (alike[name] ?? 1));
}

/** What each test says on a car, in the order of BAY_TESTS. */
export function readingsOn(car: number): readonly number[] {
  const readings = cars[car];
  if (readings === undefined) throw new Error('The page brought no such car.');
  return readings;
}

/** Share of each name, in the order of NAMES. */
export const namesOf = (shares: readonly number[]): readonly number[] =>
  byName(list, shares, NAMES.length);

const placeOf = (one: One): number => BAY_TESTS.indexOf(one);

/** Chance of all that a test can say, as the list stands. */
export const canSay = (shares: readonly number[], one: One): readonly number[] =>
  (list[0]?.says[placeOf(one)] ?? []).map((_said, what) =>
    list.reduce(
      (sum, { says }, i) => sum + (shares[i] ?? 0) * (says[placeOf(one)]?.[what] ?? 0),
      0,
    ),
  );

/** What a test is worth, as the list stands [bits]. */
export const worthOf = (shares: readonly number[], one: One): number =>
  tells(
    shares,
    list.map(({ says }) => says[placeOf(one)] ?? []),
    namesOf,
  );

/** A test that can be taken next. */
export interface Ranked {
  readonly one: One;
  readonly worth: number;
  readonly minutes: number;
}
export const rateOf = ({ worth, minutes }: Pick<Ranked, 'worth' | 'minutes'>): number =>
  worth / minutes;

/** How a job stands: what was taken, what is left of the list, and how the car stands. */
export interface Job {
  readonly taken: readonly One[];
  readonly shares: readonly number[];
  readonly state: CarState;
  readonly minutes: number;
}
export const jobBegun = (): Job => ({ taken: [], shares: before, state: ARRIVES, minutes: 0 });

/** The job after a test that said something, by its place. */
export function after(job: Job, one: One, said: number): Job {
  const weights = job.shares.map((share, i) => share * (list[i]?.says[placeOf(one)]?.[said] ?? 0));
  const all = weights.reduce((sum, weight) => sum + weight, 0);
  return {
    taken: [...job.taken, one],
    shares: weights.map((weight) => weight / all),
    state: stateAfter(one.test, job.state),
    minutes: job.minutes + minutesFor(one.test, job.state),
  };
}

export const rankedOf = ({ shares, state }: Job, one: One): Ranked => ({
  one,
  worth: worthOf(shares, one),
  minutes: minutesFor(one.test, state),
});

/** Tests that have not been taken, the one that tells most for its minutes first. */
export const ranked = (job: Job): readonly Ranked[] =>
  BAY_TESTS.filter((one) => !job.taken.includes(one))
    .map((one) => rankedOf(job, one))
    .sort((a, b) => rateOf(b) - rateOf(a));

const isFirst = (key: BayKey): boolean => BEFORE_OPENING.includes(key);

/** The first of them that is worth its walk; before anything is opened, what comes before opening. */
export function bestOf(job: Job): Ranked | undefined {
  const all = ranked(job);
  const first = all.find(({ worth }) => worth >= LEAST);
  if (first === undefined || !opens(first.one)) return first;
  return all.find(({ one }) => isFirst(one.key)) ?? first;
}

export const isSure = ({ shares }: Job): boolean => Math.max(...namesOf(shares)) >= SURE;
