/** The way through a case, reading by reading: what each did to the list. */
import { isName, NAMES, type ByName, type Name } from '../diagnosis/index.ts';
import type { Cause, Named } from './judge.ts';
import { after, drivesIn, type Step } from './visit.ts';

/** A reading that tells less than this told nothing [bits]. */
export const NOTHING_TOLD = 0.05;

/** What a reading did to one name: its share before and after. */
export interface Move {
  readonly fault: Name;
  readonly before: number;
  readonly after: number;
}
/** One step with what it took and did. */
export interface Stage {
  readonly step: Step;
  readonly minutes: number;
  /** How far the list moved: relative entropy of the names after to before [bits]; a test alone has it. */
  readonly told?: number;
  /** Of the names that are followed; then of the one that moved most, where that is another. */
  readonly moves?: readonly Move[];
}

/** How far one list of shares lies from another: Kullback and Leibler's divergence, in bits. */
export const movedBits = (before: ByName, now: ByName): number =>
  NAMES.reduce(
    (sum, name) =>
      now[name] > 0 && before[name] > 0
        ? sum + now[name] * Math.log2(now[name] / before[name])
        : sum,
    0,
  );

function movesOf(before: ByName, now: ByName, followed: readonly Name[]): readonly Move[] {
  const all = NAMES.map((fault): Move => ({ fault, before: before[fault], after: now[fault] }));
  const most = all.reduce((one, other) =>
    Math.abs(other.after - other.before) > Math.abs(one.after - one.before) ? other : one,
  );
  const mine = followed.flatMap((name) => all.filter(({ fault }) => fault === name));
  return mine.includes(most) ? mine : [...mine, most];
}

/** The planner's name for a cause; its list has no other for what is outside it. */
export const listedAs = (cause: Cause): Name => (isName(cause) ? cause : 'unlisted');

/** What was answered and what it was, by the planner's names: the answer first. */
export type Role = 'yours' | 'real' | 'both';
export function rolesOf(said: readonly Named[], truth: readonly Named[]): ReadonlyMap<Name, Role> {
  const yours = said.map(({ cause }) => listedAs(cause));
  const real = truth.map(({ cause }) => listedAs(cause));
  const role = (name: Name): Role =>
    real.includes(name) ? (yours.includes(name) ? 'both' : 'real') : 'yours';
  return new Map([...yours, ...real].map((name) => [name, role(name)]));
}

/**
 * The way that was gone. `lists`: how the list stood before the first test, and after each; `followed`: names of which each
 * reading tells what it did to them.
 */
export function pathOf(
  lists: readonly ByName[],
  steps: readonly Step[],
  coldMorning: boolean,
  followed: readonly Name[] = [],
): readonly Stage[] {
  let standing = drivesIn(coldMorning);
  let place = 0;
  return steps.map((step) => {
    const before = standing;
    standing = after(step, standing);
    const minutes = standing.minutes - before.minutes;
    if (step.kind !== 'test') return { step, minutes };
    const [was, now] = [lists[place], lists[place + 1]];
    place += 1;
    if (was === undefined || now === undefined) throw new Error(`${step.what} has no step.`);
    return { step, minutes, told: movedBits(was, now), moves: movesOf(was, now, followed) };
  });
}
