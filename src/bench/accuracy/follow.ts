/** A car's way through the shop: test after test until the planner is sure, or nothing is left that is worth its minutes. */
import {
  ARRIVES,
  findingsOf,
  fitOf,
  hypothesesOf,
  minutesFor,
  posteriorOf,
  prior,
  rankTests,
  stateAfter,
  SURE,
  take,
  type Finding,
  type Fit,
  type GeneratedCar,
  type Table,
  type TakenReading,
  type Test,
} from '../../diagnosis/index.ts';
import { ALL } from './orders.ts';

export interface Way {
  readonly faults: readonly Finding[];
  readonly fit: Fit;
  readonly minutes: number;
  readonly readings: number;
}

export const sure = ({ faults: [top] }: Pick<Way, 'faults'>): boolean =>
  (top?.probability ?? 0) >= SURE;

export interface Shop {
  readonly byPlanner: (read: GeneratedCar) => Way;
  readonly byOrder: (read: GeneratedCar, order: readonly Test[]) => Way;
  readonly withAll: (read: GeneratedCar) => Way;
}

export function shopOf(table: Table): Shop {
  const hypotheses = hypothesesOf(table);
  // Every car begins with the same question.
  const first = rankTests(posteriorOf(prior(hypotheses), []))[0]?.test;

  const byPlanner: Shop['byPlanner'] = (read) => {
    const cells = prior(hypotheses);
    const readings: TakenReading[] = [];
    let state = ARRIVES;
    let minutes = 0;
    for (;;) {
      const posterior = posteriorOf(cells, readings);
      const faults = findingsOf(posterior);
      const test = sure({ faults })
        ? undefined
        : readings.length === 0
          ? first
          : rankTests(posterior, state)[0]?.test;
      if (test === undefined) {
        return { faults, fit: fitOf(posterior), minutes, readings: readings.length };
      }
      minutes += minutesFor(test, state);
      state = stateAfter(test, state);
      const reading = read(test);
      readings.push(reading);
      take(cells, reading);
    }
  };

  const inOrder = (read: GeneratedCar, order: readonly Test[], stops: boolean): Way => {
    const cells = prior(hypotheses);
    const readings: TakenReading[] = [];
    let state = ARRIVES;
    let minutes = 0;
    let faults: readonly Finding[] = [];
    for (const test of order) {
      minutes += minutesFor(test, state);
      state = stateAfter(test, state);
      const reading = read(test);
      readings.push(reading);
      take(cells, reading);
      if (stops) {
        faults = findingsOf(posteriorOf(cells, readings));
        if (sure({ faults })) break;
      }
    }
    const posterior = posteriorOf(cells, readings);
    return {
      faults: findingsOf(posterior),
      fit: fitOf(posterior),
      minutes,
      readings: readings.length,
    };
  };

  return {
    byPlanner,
    byOrder: (read, order) => inOrder(read, order, true),
    withAll: (read) => inOrder(read, ALL, false),
  };
}
