/** A car's way through the shop: test after test until the planner is sure, or nothing is left that is worth its minutes. */
import {
  ARRIVES,
  bestTest,
  findingsOf,
  fitOf,
  hypothesesOf,
  minutesFor,
  posteriorOf,
  prior,
  stateAfter,
  SURE,
  take,
  type Finding,
  type Fit,
  type GeneratedCar,
  type Table,
  type TakenReading,
  type Test,
  type Weighed,
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

/** From here down a hypothesis does not come back: it is some six contradictions behind the likeliest [ln]. */
const HOPELESS = 60;

/** The cells after one more reading, less the hopeless: most of the work is theirs. */
function after(cells: readonly Weighed[], reading: TakenReading): readonly Weighed[] {
  take(cells, reading);
  const most = cells.reduce((log, cell) => Math.max(log, cell.log), -Infinity);
  return cells.filter(({ log }) => log > most - HOPELESS);
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
    let cells: readonly Weighed[] = prior(hypotheses);
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
          : bestTest(posterior, state)?.test;
      if (test === undefined) {
        return { faults, fit: fitOf(posterior), minutes, readings: readings.length };
      }
      minutes += minutesFor(test, state);
      state = stateAfter(test, state);
      const reading = read(test);
      readings.push(reading);
      cells = after(cells, reading);
    }
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
      cells = after(cells, reading);
      if (stops && sure({ faults: findingsOf(posteriorOf(cells, readings)) })) break;
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
