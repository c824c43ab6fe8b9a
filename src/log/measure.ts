import { watch, type Watched } from '../car/watch.ts';
import { illustrativeSettings, slipRpm } from '../engine/index.ts';
import type { Selection } from './selections.ts';
import type { Series } from './series.ts';
import { stopTime, type StopTime } from './stop-time.ts';
import { takeoffAt, takeoffSlip, type TakeoffSlip } from './takeoff-slip.ts';

/** Turbine turns for one of the output, in the gear that each range begins in. */
export interface Ratios {
  readonly drive: number;
  readonly reverse: number;
}

export interface EngagementRead {
  readonly selection: Selection;
  /** First row in gear, in the time of the log [s]. */
  readonly at: number;
  /** Of the fluid [°C]; null where the log does not say within half a minute. */
  readonly tempC: number | null;
  /** Median time between turbine readings round the stop [s]. */
  readonly step: number;
  readonly stop: StopTime;
  readonly slip: TakeoffSlip;
  /** When the take-off begins, in the time of the log [s]. */
  readonly takeoff: number | null;
  /** What the site's controller would have made of it. */
  readonly watched: Watched;
  /** Readings are further apart than the ratio check is long, so nothing of it counts. */
  readonly tooSlowForRatio: boolean;
}

/** Fluid does not warm by a degree in this time [s]. */
const NEAR = 30;

/** The reading in force at a row: the last before it, else the first after it. */
function near(time: Float64Array, values: Float64Array | undefined, row: number): number | null {
  if (values === undefined) return null;
  const at = time[row] ?? 0;
  for (let back = row; back >= 0 && at - (time[back] ?? 0) <= NEAR; back -= 1) {
    const value = values[back] ?? Number.NaN;
    if (!Number.isNaN(value)) return value;
  }
  for (let on = row; on < time.length && (time[on] ?? 0) - at <= NEAR; on += 1) {
    const value = values[on] ?? Number.NaN;
    if (!Number.isNaN(value)) return value;
  }
  return null;
}

/** Median step between turbine readings up to three seconds after selection [s]. */
function readingStep(
  series: Series,
  turbine: Float64Array,
  { before, first, last }: Selection,
): number {
  const { time } = series;
  const steps: number[] = [];
  let previous = time[before] ?? 0;
  for (let row = first; row <= last && (time[row] ?? 0) - (time[first] ?? 0) <= 3; row += 1) {
    if (Number.isNaN(turbine[row] ?? Number.NaN)) continue;
    steps.push((time[row] ?? 0) - previous);
    previous = time[row] ?? 0;
  }
  steps.sort((a, b) => a - b);
  return steps[Math.floor(steps.length / 2)] ?? Number.NaN;
}

/** The engine's controller over the readings of one engagement. */
function watchRead(
  series: Series,
  turbine: Float64Array,
  selection: Selection,
  ratio: number,
): Watched {
  const { time, output, throttle, roadSpeed } = series;
  const inputs = [];
  for (let row = selection.first + 1; row <= selection.last; row += 1) {
    const turbineRpm = turbine[row] ?? Number.NaN;
    const outputRpm = output?.[row] ?? Number.NaN;
    if (Number.isNaN(turbineRpm) || Number.isNaN(outputRpm)) continue;
    const opened = throttle?.[row] ?? 0;
    inputs.push({
      time: time[row] ?? 0,
      turbineRpm,
      outputRpm,
      vehicleSpeed: (roadSpeed?.[row] ?? 0) / 3.6,
      throttle: (Number.isNaN(opened) ? 0 : opened) / 100,
    });
  }
  return watch(inputs, time[selection.first] ?? 0, {
    settings: illustrativeSettings,
    rangeSelection: 'electronic',
    mechanicalFailSafe: 'neutral',
    ratio,
    ratioCode: selection.range === 'reverse' ? 'P0736' : 'P0731',
  });
}

/** Everything that is read from one engagement. */
export function measure(
  series: Series,
  turbine: Float64Array,
  selection: Selection,
  ratios: Ratios,
): EngagementRead {
  const ratio = selection.range === 'reverse' ? ratios.reverse : ratios.drive;
  const step = readingStep(series, turbine, selection);
  const slip = takeoffSlip(series, turbine, selection, ratio);
  const end = lastInGear(series, turbine, selection, ratio);
  return {
    selection,
    at: series.time[selection.first] ?? 0,
    tempC: near(series.time, series.temperature, selection.first),
    step,
    stop: stopTime(series, turbine, selection),
    slip,
    takeoff: takeoffAt(series, selection) ?? null,
    watched: watchRead(series, turbine, { ...selection, last: end }, ratio),
    tooSlowForRatio: !(step <= illustrativeSettings.ratioTime),
  };
}

/** After a shift up the ratio is another, and what the controller made of it would be of no gear. */
function lastInGear(
  series: Series,
  turbine: Float64Array,
  { first, last }: Selection,
  ratio: number,
): number {
  const { ratioSlipRpm, ratioSlipShare } = illustrativeSettings;
  for (let row = first; row <= last; row += 1) {
    const speed = turbine[row] ?? Number.NaN;
    const slip = slipRpm(speed, ratio, series.output?.[row] ?? Number.NaN);
    if (slip < -Math.max(ratioSlipRpm, ratioSlipShare * speed)) return row - 1;
  }
  return last;
}
