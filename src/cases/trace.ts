/** The speed signal after selection, as a log of the car shows it: what a stop time was read from. */
import type { Plant } from '../engine/index.ts';
import {
  heldTrace,
  isNumeric,
  LONGEST_STOP,
  nominalWarmth,
  SELECT_S,
  stoppedIn,
  testOf,
} from '../diagnosis/index.ts';

export interface StopTrace {
  /** After selection [s]. */
  readonly time: readonly number[];
  /** As the sensor says it [rpm]. */
  readonly turbine: readonly number[];
}

const POINTS = 60;
const rounded = (value: number, digits: number): number => Number(value.toFixed(digits));

/**
 * The trace of a stop-time test on a car, from selection on, stretched so that it stops when the reading says.
 *
 * @param read what the clock said [s]; null where the turbine did not stop
 */
export function stopTraceOf(plant: Plant, test: string, read: number | null): StopTrace {
  const one = testOf(test);
  if (!isNumeric(one) || one.kind !== 'stopTime')
    throw new Error(`${test} has no trace of a turbine that stops.`);
  const trace = heldTrace({ plant, fluid: plant.fluid, warmth: nominalWarmth }, one);
  const exact = stoppedIn(trace);
  const stretch = read === null || exact === 0 ? 1 : read / exact;
  const time = Array.from({ length: POINTS + 1 }, (_, i) => (LONGEST_STOP * i) / POINTS);
  const turbine = time.map((t) => {
    const from = SELECT_S + t / stretch;
    const next = trace.time.findIndex((one) => one >= from);
    return trace.turbineSeenRpm[next < 0 ? trace.time.length - 1 : next] ?? 0;
  });
  return {
    time: time.map((t) => rounded(t, 3)),
    turbine: turbine.map((rpm) => rounded(rpm, 0)),
  };
}
