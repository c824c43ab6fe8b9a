/**
 * What one test, read before a repair and again after it, proves. Two readings that each have an error leave one on their
 * difference: the root of the sum of the squares (JCGM 100:2008, 5.1.2, equation 10, for a difference of two). Twice that, as in
 * its 6.2, is what a difference has to be larger than.
 */
import { discrepancyOf, errorOf, LONGEST_STOP, type NumericTest } from './tests.ts';

/** What the trade calls the same temperature [°C] (common practice, no source). */
export const SAME_C = 3;
/** So many standard deviations are called a doubt. */
const COVERS = 2;

/** One test taken once. */
export interface Taken {
  /** On the scale of the test; null for a turbine that never stopped. */
  readonly value: number | null;
  readonly tempC: number;
  readonly rpm: number;
}
export interface Compared {
  /** After less before, on the scale of the test. */
  readonly difference: number;
  /** What the two errors leave on the difference, twice the standard deviation. */
  readonly doubt: number;
  /** After less what a sound car reads there, and what that may come to in a sound car. */
  readonly offRight: number;
  readonly room: number;
  /** What each may be off by: the two readings, and a sound car from what is thought right. */
  readonly errors: { readonly before: number; readonly after: number; readonly sound: number };
  readonly apartC: number;
  readonly is: 'proves' | 'nothing' | 'notCured';
  /** What decided. */
  readonly by: 'right' | 'off' | 'temperature' | 'speed' | 'doubt' | 'cooler';
}

/** A turbine that never stops is read as one that takes longer than anybody waits. */
export const readAs = ({ value }: Taken): number => value ?? LONGEST_STOP;

/**
 * Spread of a time from one row of a log to another [s]: each end lies anywhere in its step, which is a spread of the step over
 * the root of 12 (JCGM 100, 4.3.7), and there are two.
 */
export const rowsDoubt = (step: number): number => step / Math.sqrt(6);

/** Error of a reading, sd; `step` is the time between two rows, for a time that is read from a log. */
export const errorAt = (test: NumericTest, reading: number, step: number): number =>
  Math.hypot(errorOf(test, reading), test.kind === 'stopTime' ? rowsDoubt(step) : 0);

/** Half the width that a reading may be off by. */
export const doubtOf = (...errors: readonly number[]): number => COVERS * Math.hypot(...errors);

/** `right`: what a sound car reads as the second was taken. `hotC`: where the complaint comes. */
export function compare(
  test: NumericTest,
  before: Taken,
  after: Taken,
  { right, hotC, step }: { readonly right: number; readonly hotC: number; readonly step: number },
): Compared {
  const [was, is] = [readAs(before), readAs(after)];
  const [errorWas, error] = [errorAt(test, was, step), errorAt(test, is, step)];
  const differs = discrepancyOf(test, right);
  const found = {
    difference: is - was,
    doubt: doubtOf(errorWas, error),
    offRight: is - right,
    room: doubtOf(error, differs),
    errors: { before: doubtOf(errorWas), after: doubtOf(error), sound: doubtOf(differs) },
    apartC: Math.abs(after.tempC - before.tempC),
  };
  if (Math.abs(found.offRight) > found.room) return { ...found, is: 'notCured', by: 'off' };
  if (found.apartC > SAME_C + 1e-6) return { ...found, is: 'nothing', by: 'temperature' };
  if (before.rpm !== after.rpm) return { ...found, is: 'nothing', by: 'speed' };
  if (Math.abs(found.difference) <= found.doubt) return { ...found, is: 'nothing', by: 'doubt' };
  if (after.tempC < hotC - SAME_C - 1e-6) return { ...found, is: 'nothing', by: 'cooler' };
  return { ...found, is: 'proves', by: 'right' };
}
