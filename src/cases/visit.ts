/** What is done on a car in the bay, one thing after the other, and the minutes it takes. */
import {
  ARRIVES,
  minutesFor,
  stateAfter,
  testOf,
  type CarState,
  type TakenReading,
  type Test,
} from '../diagnosis/index.ts';
import type { Look, Question } from './lists.ts';

export type Step =
  | { readonly kind: 'ask'; readonly what: Question }
  | { readonly kind: 'look'; readonly what: Look }
  /** By the id of the planner's test. */
  | { readonly kind: 'test'; readonly what: string };

/** All nine questions together: one conversation, begun with the first [min]. Common practice, no source. */
export const TALK_MINUTES = 10;
/** Assumptions of this site, as the planner's minutes are [min]. */
export const LOOK_MINUTES: Readonly<Record<Look, number>> = {
  standing: 20,
  window: 30,
  longDrive: 60,
  idle: 3,
  learned: 5,
  connector: 20,
  supply: 20,
  frame: 5,
  unlocked: 25,
  strategy: 10,
};

/** How the car stands, and what has been spent. */
export interface Standing {
  readonly state: CarState;
  readonly minutes: number;
  readonly talked: boolean;
}

export const drivesIn = (coldMorning: boolean): Standing => ({
  state: { ...ARRIVES, coldMorning },
  minutes: 0,
  talked: false,
});

/** Minutes of one thing more [min]. */
export function costOf(step: Step, { state, talked }: Standing): number {
  if (step.kind === 'ask') return talked ? 0 : TALK_MINUTES;
  return step.kind === 'look' ? LOOK_MINUTES[step.what] : minutesFor(testOf(step.what), state);
}

/** How the car stands after one thing more. */
export function after(step: Step, now: Standing): Standing {
  return {
    minutes: now.minutes + costOf(step, now),
    talked: now.talked || step.kind === 'ask',
    state: step.kind === 'test' ? stateAfter(testOf(step.what), now.state) : now.state,
  };
}

/** How the car stands after all of it, from cold. */
export const standingAfter = (steps: readonly Step[], coldMorning: boolean): Standing =>
  steps.reduce((now, step) => after(step, now), drivesIn(coldMorning));

/** What the tests among the steps have read, in their order. */
export const readingsOf = (
  steps: readonly Step[],
  read: (test: Test) => TakenReading,
): readonly TakenReading[] =>
  steps.flatMap((step) => (step.kind === 'test' ? [read(testOf(step.what))] : []));
