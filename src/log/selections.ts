import { illustrativeSettings } from '../engine/index.ts';
import type { LogRange } from './roles.ts';
import { rangeAt, type Series } from './series.ts';

/** A range selected from Park or Neutral, or a turbine that fell where no range is in the log. Rows of the series. */
export interface Selection {
  readonly by: 'range' | 'turbine';
  /** `unknown` where only the turbine told. */
  readonly range: 'drive' | 'reverse' | 'unknown';
  /** The last row before it and the first row after it: it happened between the two. */
  readonly before: number;
  readonly first: number;
  /** The last row that belongs to it. */
  readonly last: number;
}

/** The log stood still for longer than this [s]: what comes after is another story. */
export const GAP = 2;
/** Nothing of an engagement is measured later than this after selection [s]. */
const LONGEST = 12;
/** A lever that goes through a range on its way stays there for less than this [s]. */
export const PASSING = 1;
const MOVING_RPM = illustrativeSettings.movingOutputRpm;
const MOVING_KMH = 3;

/** Whether the vehicle moves at a row; undefined where nothing tells. */
export function moves({ output, roadSpeed }: Series, row: number): boolean | undefined {
  const shaft = output?.[row];
  if (shaft !== undefined && !Number.isNaN(shaft)) return shaft > MOVING_RPM;
  const road = roadSpeed?.[row];
  return road === undefined || Number.isNaN(road) ? undefined : road > MOVING_KMH;
}

const holdsNothing = (range: LogRange | undefined): boolean =>
  range === 'park' || range === 'neutral';

/** The engagements that the range column tells. */
function byRange(series: Series): readonly Selection[] {
  const { time } = series;
  const found: Selection[] = [];
  let before = -1;
  for (let row = 0; row < time.length; row += 1) {
    const range = rangeAt(series, row);
    if (range === undefined) continue;
    const was = before < 0 ? undefined : rangeAt(series, before);
    if ((range === 'drive' || range === 'reverse') && holdsNothing(was)) {
      const start = time[row] ?? 0;
      const apart = start - (time[before] ?? 0) > GAP;
      let last = row;
      let left = false;
      for (let next = row + 1; next < time.length; next += 1) {
        const at = time[next] ?? 0;
        if (at - (time[next - 1] ?? 0) > GAP || at - start > LONGEST) break;
        const now = rangeAt(series, next);
        if (now !== undefined && now !== range) {
          left = true;
          break;
        }
        last = next;
      }
      const passing = left && (time[last + 1] ?? 0) - start < PASSING;
      if (!passing && !apart) found.push({ by: 'range', range, before, first: row, last });
    }
    before = row;
  }
  return found;
}

/** A turbine that turned freely for this long [s], at this much [rpm] or more, within this share of one speed. */
const FREE_FOR = 0.3;
const FREE_RPM = 400;
const FREE_WITHIN = 0.1;
/** It has fallen when it is under half of that, within so many seconds. */
const FALLEN = 0.5;
const FALLS_WITHIN = 3;

/** Where a turbine that ran free falls while the vehicle stands. The range that was selected is anybody's guess. */
function byTurbine(series: Series, turbine: Float64Array): readonly Selection[] {
  const { time } = series;
  const found: Selection[] = [];
  let freeSince = -1;
  let level = 0;
  for (let row = 0; row < time.length; row += 1) {
    const speed = turbine[row] ?? Number.NaN;
    if (Number.isNaN(speed)) continue;
    const at = time[row] ?? 0;
    const stands = moves(series, row) === false;
    const gap = row > 0 && at - (time[row - 1] ?? 0) > GAP;
    if (!stands || gap) freeSince = -1;
    if (!stands) continue;
    if (freeSince >= 0 && Math.abs(speed - level) <= FREE_WITHIN * level) {
      level = speed;
      continue;
    }
    const wasFree = freeSince >= 0 ? (time[row - 1] ?? 0) - (time[freeSince] ?? 0) : 0;
    if (freeSince >= 0 && wasFree >= FREE_FOR && speed < level) {
      let fallen = false;
      let last = row;
      for (let next = row; next < time.length; next += 1) {
        const then = time[next] ?? 0;
        if (then - at > LONGEST || (next > row && then - (time[next - 1] ?? 0) > GAP)) break;
        if (!fallen && then - at > FALLS_WITHIN) break;
        if ((turbine[next] ?? Number.NaN) < FALLEN * level) fallen = true;
        last = next;
      }
      if (fallen) {
        found.push({ by: 'turbine', range: 'unknown', before: row - 1, first: row, last });
        // The next one begins when it has run free again.
        while (row < last && (turbine[row + 1] ?? 0) < FREE_RPM) row += 1;
      }
      freeSince = -1;
      continue;
    }
    if (speed >= FREE_RPM) {
      freeSince = row;
      level = speed;
    } else freeSince = -1;
  }
  return found;
}

/** Every engagement of the log, in order. */
export const findSelections = (series: Series, turbine: Float64Array): readonly Selection[] =>
  series.range === undefined || !series.range.some((range) => range === 1 || range === 3)
    ? byTurbine(series, turbine)
    : byRange(series);
