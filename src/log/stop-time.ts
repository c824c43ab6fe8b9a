import { STOPPED_BELOW_RPM } from './dropouts.ts';
import { moves, type Selection } from './selections.ts';
import type { Series } from './series.ts';

/** A time that lies somewhere between two [s]. */
export interface Interval {
  readonly low: number;
  readonly high: number;
}
export const middle = ({ low, high }: Interval): number => (low + high) / 2;

/** How long the turbine took to stand. Times after selection [s], `at` as in the log. */
export type StopTime =
  | { readonly kind: 'stopped'; readonly after: Interval; readonly at: number }
  /** It turned for all of the time that the log has it standing in gear. */
  | {
      readonly kind: 'notStopped';
      readonly watched: number;
      readonly lowest: number;
      readonly at: number;
    }
  /** The vehicle moved, or the log ended, before anybody could say. */
  | { readonly kind: 'cutShort'; readonly watched: number; readonly at: number }
  /** The turbine stood before, or the vehicle rolled. */
  | { readonly kind: 'notFromRest' };

/** A turbine that has not stood for so long [s] has not stopped: what the reading means by "not". */
export const NOT_STOPPED_AFTER = 2.5;

/**
 * Time from selection until the turbine turns slower than 30 rpm, from the rows alone. Selection fell between the last
 * row in Park or Neutral and the first in gear; the stop between the last row that turned and the first that did not. So the
 * time lies between the shortest and the longest of what those four rows allow. A tool that writes rows faster than it
 * reads repeats a reading: then the stop may be as early as the first of the repeats.
 *
 * @param turbine without dropouts [rpm]
 */
export function stopTime(series: Series, turbine: Float64Array, selection: Selection): StopTime {
  const { time } = series;
  const { before, first, last } = selection;
  const start = time[first] ?? 0;
  const earliest = time[before] ?? 0;
  let standing = -1;
  let turning = -1;
  let runFrom = -1;
  let lowest = Number.POSITIVE_INFINITY;
  if (moves(series, first) === true || (turbine[before] ?? Number.NaN) < STOPPED_BELOW_RPM) {
    return { kind: 'notFromRest' };
  }
  for (let row = first; row <= last; row += 1) {
    if (moves(series, row) === true) break;
    standing = row;
    const speed = turbine[row] ?? Number.NaN;
    if (Number.isNaN(speed)) continue;
    if (speed < STOPPED_BELOW_RPM) {
      // Nothing says that it turned after selection: then it may have stopped at once.
      const from = runFrom < 0 ? start : (time[runFrom] ?? start);
      const at = time[row] ?? 0;
      return { kind: 'stopped', after: { low: from - start, high: at - earliest }, at };
    }
    if (turning < 0 || turbine[turning] !== speed) runFrom = row;
    turning = row;
    lowest = Math.min(lowest, speed);
  }
  const watched = standing < 0 ? 0 : (time[standing] ?? 0) - start;
  const at = start + Math.min(watched, NOT_STOPPED_AFTER);
  return watched >= NOT_STOPPED_AFTER && Number.isFinite(lowest)
    ? { kind: 'notStopped', watched, lowest, at }
    : { kind: 'cutShort', watched, at };
}
