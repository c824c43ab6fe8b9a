import {
  circuitOf,
  illustrativeSettings,
  solveEngagement,
  trainingStory,
  type DriveRange,
  type Engagement,
  type EngagementEventName,
  type EngagementRequest,
  type FaultId,
  type FluidClass,
  type RangeSelection,
} from '../engine/index.ts';
import { makeCar, oneFault, type Car } from './car.ts';

/** A car with one fault, bad by so many percent; a fault of one circuit sits where the driver's range is. */
export const faultyCar = (given: {
  readonly fault: FaultId;
  readonly severity: number;
  readonly range: DriveRange;
  readonly fluid: FluidClass;
}): Car =>
  makeCar({
    faults: oneFault(given.fault, given.severity, circuitOf[given.range]),
    fluid: given.fluid,
  });

/** An engagement asked for; Drive with electronic selection where nothing is said. */
export interface EngageAsked extends Omit<
  EngagementRequest,
  'plant' | 'fluid' | 'range' | 'rangeSelection'
> {
  readonly range?: DriveRange;
  readonly rangeSelection?: RangeSelection;
}

/** A range selected at standstill and the take-off after it. Throws where the engine gives up. */
export function engage({ plant, fluid }: Car, asked: EngageAsked): Engagement {
  const solved = solveEngagement({
    range: 'drive',
    rangeSelection: 'electronic',
    ...asked,
    plant,
    fluid,
  });
  if (!solved.status.converged) {
    throw new Error(`The engagement at ${asked.tempC} °C was not solved.`);
  }
  return solved;
}

/** Whether something happened in an engagement. */
export const happened = ({ events }: Engagement, name: EngagementEventName): boolean =>
  events.some(({ event }) => event === name);

/** Whether the controller gave up on the clutch. */
export const gaveUp = (solved: Engagement): boolean => happened(solved, 'code stored');

/** When something happened, after selection [s]; null if never. */
export function afterSelection({ events }: Engagement, name: EngagementEventName): number | null {
  const found = events.find(({ event }) => event === name);
  return found === undefined ? null : found.time - trainingStory.select;
}

/** A column of the trace at so many seconds after selection. */
export function traceAt(
  { trace }: Engagement,
  column: Exclude<keyof Engagement['trace'], 'time'>,
  secondsAfter: number,
): number {
  const wanted = trainingStory.select + secondsAfter - 1e-6;
  const row = trace.time.findIndex((time) => time >= wanted);
  const value = trace[column][row];
  if (value === undefined) {
    throw new Error(`The trace ends before ${secondsAfter} s after selection.`);
  }
  return value;
}

/** When the controller looks whether the turbine has stopped [s after selection]. */
export const CHECK_AFTER = illustrativeSettings.engagementTime;

/**
 * The coolest fluid at which an event comes [°C], to a tenth of a degree: a yes or a no has no root to find. Throws where
 * it comes already cold, or not even hot.
 */
export function coolestWith(
  car: Car,
  event: EngagementEventName,
  between: readonly [coldC: number, hotC: number] = [20, 100],
): number {
  const comes = (tempC: number): boolean => happened(engage(car, { tempC }), event);
  let [without, withIt] = between;
  if (comes(without) || !comes(withIt)) {
    throw new Error(`"${event}" does not begin between ${without} and ${withIt} °C.`);
  }
  while (withIt - without > 0.1) {
    const middle = (without + withIt) / 2;
    if (comes(middle)) withIt = middle;
    else without = middle;
  }
  return withIt;
}
