/** A car's way through the shop: test after test until the planner is sure, or nothing is left that is worth its minutes. */
import {
  ARRIVES,
  bestTest,
  findingsOf,
  fitOf,
  hypothesesOf,
  isSure,
  minutesFor,
  narrowed,
  posteriorOf,
  prior,
  stateAfter,
  twoFaults,
  wayOf,
  type Finding,
  type Fit,
  type GeneratedCar,
  type Milestone,
  type Table,
  type TakenReading,
  type Test,
  type TwoFaults,
  type Weighed,
} from '../../diagnosis/index.ts';
import { ALL } from './orders.ts';

export interface Way {
  readonly faults: readonly Finding[];
  readonly fit: Fit;
  readonly minutes: number;
  readonly readings: number;
  /** What two faults together come to, where every reading was taken. */
  readonly two?: TwoFaults;
}

export interface Shop {
  readonly byPlanner: (read: GeneratedCar) => Way;
  readonly byOrder: (read: GeneratedCar, order: readonly Test[]) => Way;
  readonly withAll: (read: GeneratedCar) => Way;
}

export function shopOf(table: Table): Shop {
  const hypotheses = hypothesesOf(table);
  // Every car begins with the same question.
  const first = bestTest(posteriorOf(prior(hypotheses), []))?.test;

  const byPlanner: Shop['byPlanner'] = (read) => {
    let end: Milestone | undefined;
    let minutes = 0;
    let readings = 0;
    for (const milestone of wayOf(hypotheses, read, { first })) {
      end = milestone;
      if (milestone.last === undefined) continue;
      minutes += milestone.last.minutes;
      readings += 1;
    }
    if (end === undefined) throw new Error('The way has no end.');
    return { faults: end.faults, fit: fitOf(end.posterior), minutes, readings };
  };

  const inOrder = (read: GeneratedCar, order: readonly Test[], stops: boolean): Way => {
    let cells: readonly Weighed[] = prior(hypotheses);
    const readings: TakenReading[] = [];
    let state = ARRIVES;
    let minutes = 0;
    for (const test of order) {
      minutes += minutesFor(test, state);
      state = stateAfter(test, state);
      const reading = read(test);
      readings.push(reading);
      cells = narrowed(cells, reading);
      if (stops && isSure(findingsOf(posteriorOf(cells, readings)))) break;
    }
    const posterior = posteriorOf(cells, readings);
    const two = stops ? undefined : twoFaults(hypotheses, posterior, readings);
    return {
      faults: findingsOf(posterior),
      fit: fitOf(posterior, two),
      minutes,
      readings: readings.length,
      ...(two && { two: { ...two, pairs: two.pairs.slice(0, 2) } }),
    };
  };

  return {
    byPlanner,
    byOrder: (read, order) => inOrder(read, order, true),
    withAll: (read) => inOrder(read, ALL, false),
  };
}
