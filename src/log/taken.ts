import { turbineAt, type LiveCar } from '../car/live-cars.ts';
import { sensorReading } from '../engine/index.ts';
import { STOPPED_BELOW_RPM } from './dropouts.ts';
import { LOG_RANGES } from './roles.ts';
import type { Series } from './series.ts';

/** How one car's engagement is logged. */
export interface Taking {
  readonly car: LiveCar;
  /** Between two readings [s]. */
  readonly interval: number;
  /** How much of an interval has gone by when Drive is selected, from 0 to less than 1. */
  readonly late: number;
  /** How long the log is [s]. */
  readonly lasts: number;
  /** Whether the range is on the list. */
  readonly range: boolean;
}

/** Drive is selected in the row that begins here, or in the last before it [s]. */
const SELECTED = 0.5;
/** A turbine that runs free wobbles by this much [rpm]; every log of the lesson by the same wobble, row for row. */
const WOBBLE = { resolutionRpm: 0, noiseRpm: 4, seed: 5 };
/** Sums of many intervals miss a whole number by this much. */
const BIT = 1e-9;

/** When Drive is selected, in the time of the log, whose first row is 0 [s]. */
export const selectedAt = ({ interval, late }: Pick<Taking, 'interval' | 'late'>): number =>
  (Math.floor(SELECTED / interval + BIT) + late) * interval;

/** What the log has in its rows: one reading of everything on its list each, all of one moment. */
export function taken(taking: Taking): Series {
  const { car, interval, lasts } = taking;
  const selected = selectedAt(taking);
  const rows = Math.floor(lasts / interval + BIT) + 1;
  const time = Float64Array.from({ length: rows }, (_, row) => row * interval);
  const turbine = time.map((at, row) => {
    const rpm = turbineAt(car, at - selected);
    // The wobble stops no shaft.
    return rpm < STOPPED_BELOW_RPM
      ? 0
      : Math.max(STOPPED_BELOW_RPM, sensorReading(WOBBLE, rpm, row));
  });
  const range = Uint8Array.from(
    time,
    (at) => 1 + LOG_RANGES.indexOf(at - selected > BIT ? 'drive' : 'park'),
  );
  return { time, turbine, ...(taking.range && { range }), untimed: 0, doubled: 0 };
}

/** A shaft that stands does not come back to this [rpm] while a foot is on the brake. */
const BACK_RPM = 200;

/** Rows at which the turbine reads nothing and later turns again: a sensor or its plug, and no reading of the turbine. */
export function comesBack({ turbine }: Series): readonly number[] {
  const last = turbine.findLastIndex((rpm) => rpm >= BACK_RPM);
  const rows = Array.from(turbine.keys());
  return rows.filter((row) => row < last && (turbine[row] ?? 0) < STOPPED_BELOW_RPM);
}

/** Two readings that nobody would tell apart on a screen [rpm]. */
const ALIKE = 50;
const alike = (one: number, other: number): boolean =>
  one < STOPPED_BELOW_RPM === other < STOPPED_BELOW_RPM && Math.abs(one - other) <= ALIKE;

/** How finely the moment of selection is tried [s], and in how many steps of an interval at the least and the most. */
const FINE = 0.01;
const TRIED = [5, 50] as const;

/** The moments of selection, in parts of an interval, at which another car's log would have the same rows. */
export function sameRows(log: Series, taking: Taking, car: LiveCar): readonly number[] {
  const steps = Math.min(TRIED[1], Math.max(TRIED[0], Math.round(taking.interval / FINE)));
  const tried = Array.from({ length: steps }, (_, i) => i / steps);
  return tried.filter((late) => {
    const selected = selectedAt({ ...taking, late });
    return log.time.every((at, row) => {
      const rpm = turbineAt(car, at - selected);
      return alike(log.turbine[row] ?? 0, rpm);
    });
  });
}
