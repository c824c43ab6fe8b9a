/** The way through a case, reading by reading: what each did to the list. */
import { NAMES, type ByName, type Name } from '../diagnosis/index.ts';
import { after, drivesIn, type Step } from './visit.ts';

/** A reading that tells less than this told nothing [bits]. */
export const NOTHING_TOLD = 0.05;

/** One step with what it took and did. */
export interface Stage {
  readonly step: Step;
  readonly minutes: number;
  /** How far the list moved: relative entropy of the names after to before [bits]; a test alone has it. */
  readonly told?: number;
  /** The name whose share moved most, before and after. */
  readonly moved?: { readonly fault: Name; readonly before: number; readonly after: number };
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

const mostMoved = (before: ByName, now: ByName): NonNullable<Stage['moved']> =>
  NAMES.map((fault) => ({ fault, before: before[fault], after: now[fault] })).reduce((most, one) =>
    Math.abs(one.after - one.before) > Math.abs(most.after - most.before) ? one : most,
  );

/** The way that was gone. `lists`: how the list stood before the first test, and after each. */
export function pathOf(
  lists: readonly ByName[],
  steps: readonly Step[],
  coldMorning: boolean,
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
    return { step, minutes, told: movedBits(was, now), moved: mostMoved(was, now) };
  });
}
