/** The way through a case, reading by reading: what each did to the list, and the way that the planner takes on the same car. */
import {
  minutesFor,
  stateAfter,
  SURE,
  type Advice,
  type CarState,
  type Finding,
  type Name,
  type Question as Asked,
  type TakenReading,
  type Test,
} from '../diagnosis/index.ts';
import { after, drivesIn, type Standing, type Step } from './visit.ts';

export type Ask = (question: Asked) => Advice;

/** A reading that tells less than this told nothing [bits]. */
export const NOTHING_TOLD = 0.05;

/** One step with what it took and did. */
export interface Stage {
  readonly step: Step;
  readonly minutes: number;
  readonly reading?: TakenReading;
  /** How far the list moved: relative entropy of the names after to before [bits]; a test alone has it. */
  readonly told?: number;
  /** The name whose share moved most, before and after. */
  readonly moved?: { readonly fault: Name; readonly before: number; readonly after: number };
}

/** How far one list of shares lies from another: Kullback and Leibler's divergence, in bits. */
export function movedBits(before: readonly Finding[], now: readonly Finding[]): number {
  const was = new Map(before.map(({ fault, probability }) => [fault, probability]));
  return now.reduce((sum, { fault, probability }) => {
    const from = was.get(fault) ?? 0;
    return probability > 0 && from > 0 ? sum + probability * Math.log2(probability / from) : sum;
  }, 0);
}

function mostMoved(before: readonly Finding[], now: readonly Finding[]) {
  const was = new Map(before.map(({ fault, probability }) => [fault, probability]));
  return now
    .map(({ fault, probability }) => ({
      fault,
      before: was.get(fault) ?? 0,
      after: probability,
    }))
    .reduce((most, one) =>
      Math.abs(one.after - one.before) > Math.abs(most.after - most.before) ? one : most,
    );
}

/** The way that was gone. A generator, so that a page can breathe between two readings. */
export function* pathOf(
  ask: Ask,
  steps: readonly Step[],
  read: (test: Test) => TakenReading,
  { coldMorning, testOf }: { readonly coldMorning: boolean; readonly testOf: (id: string) => Test },
): Generator<void, { readonly stages: readonly Stage[]; readonly end: Advice }> {
  let standing: Standing = drivesIn(coldMorning);
  let readings: readonly TakenReading[] = [];
  let advice = ask({ readings, state: standing.state, priors: {} });
  const stages: Stage[] = [];
  for (const step of steps) {
    const before = standing;
    standing = after(step, standing);
    const minutes = standing.minutes - before.minutes;
    if (step.kind !== 'test') {
      stages.push({ step, minutes });
      continue;
    }
    const reading = read(testOf(step.what));
    readings = [...readings, reading];
    const now = ask({ readings, state: standing.state, priors: {} });
    stages.push({
      step,
      minutes,
      reading,
      told: movedBits(advice.faults, now.faults),
      moved: mostMoved(advice.faults, now.faults),
    });
    advice = now;
    yield;
  }
  return { stages, end: advice };
}

/** One test of the planner's way. */
export interface Planned {
  readonly reading: TakenReading;
  readonly minutes: number;
  readonly top: Finding;
}
const MOST_TESTS = 20;

/** The way that the planner takes: each time the test that tells most for its minutes, until it is sure or nothing is worth it. */
export function* plannersWay(
  ask: Ask,
  read: (test: Test) => TakenReading,
  coldMorning: boolean,
): Generator<void, readonly Planned[]> {
  let state: CarState = drivesIn(coldMorning).state;
  let readings: readonly TakenReading[] = [];
  const way: Planned[] = [];
  let advice = ask({ readings, state, priors: {} });
  while (way.length < MOST_TESTS) {
    const [best] = advice.next;
    if (best === undefined || (advice.faults[0]?.probability ?? 0) >= SURE) break;
    const { test } = best;
    const minutes = minutesFor(test, state);
    const reading = read(test);
    state = stateAfter(test, state);
    readings = [...readings, reading];
    advice = ask({ readings, state, priors: {} });
    const [top] = advice.faults;
    if (top === undefined) break;
    way.push({ reading, minutes, top });
    yield;
  }
  return way;
}
