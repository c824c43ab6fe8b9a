import { illustrativeSettings, slipRpm } from '../engine/index.ts';
import { cleaned, dropouts } from './dropouts.ts';
import { measure, type EngagementRead, type Ratios } from './measure.ts';
import { estimateRatios, type GearSeen } from './ratios.ts';
import { findSelections, GAP } from './selections.ts';
import type { Series } from './series.ts';

/** What a log cannot show, and why, as data. */
export type Blind =
  | {
      readonly kind:
        'noRange' | 'noTemperature' | 'noOutput' | 'noBrake' | 'noEngagement' | 'noTakeoff';
    }
  /** Slower than a reading every tenth of a second: a stop is only known to this [s]. */
  | { readonly kind: 'slow'; readonly step: number }
  /** Slower than the ratio check needs. */
  | { readonly kind: 'tooSlowForRatio'; readonly step: number }
  | {
      readonly kind: 'gaps';
      readonly count: number;
      readonly longest: number;
      readonly at: number;
    };

export interface SensorSigns {
  /** Rows where a speed fell to nothing for one reading, as times of the log [s]. */
  readonly turbineDropouts: readonly number[];
  readonly outputDropouts: readonly number[];
  /**
   * The turbine never reads less than this [rpm], standing in gear with the brake held as well, and yet it agrees with
   * the gear once the vehicle drives. Null where that is not so.
   */
  readonly floor: { readonly rpm: number; readonly at: number } | null;
}

export interface LogRead {
  readonly rows: number;
  /** Length [s] and median step between rows [s]. */
  readonly seconds: number;
  readonly step: number;
  readonly engagements: readonly EngagementRead[];
  readonly gears: readonly GearSeen[];
  readonly sensors: SensorSigns;
  readonly blind: readonly Blind[];
  readonly untimed: number;
  readonly doubled: number;
}

/** An event of 0.6 s needs a point every tenth of a second (common practice, no source). */
const GOOD_STEP = 0.1;
/** A floor is one where the lowest readings of several stops in gear are this alike [rpm]. */
const ALIKE_RPM = 40;
const FLOOR_RPM = 100;

const median = (values: readonly number[]): number =>
  [...values].sort((a, b) => a - b)[Math.floor(values.length / 2)] ?? Number.NaN;

function stepOf(time: Float64Array): number {
  const every = Math.max(1, Math.floor(time.length / 4000));
  const steps: number[] = [];
  for (let i = every; i < time.length; i += every) steps.push((time[i] ?? 0) - (time[i - 1] ?? 0));
  return median(steps);
}

function gapsIn(time: Float64Array): Blind | undefined {
  let [count, longest, at] = [0, 0, 0];
  for (let row = 1; row < time.length; row += 1) {
    const step = (time[row] ?? 0) - (time[row - 1] ?? 0);
    if (step <= GAP) continue;
    count += 1;
    if (step > longest) [longest, at] = [step, time[row - 1] ?? 0];
  }
  return count === 0 ? undefined : { kind: 'gaps', count, longest, at };
}

/** A sensor that says the turbine turns when it stands: the same low reading at every stop, and no slip on the road. */
function floorOf(
  series: Series,
  turbine: Float64Array,
  engagements: readonly EngagementRead[],
  { drive, reverse }: Ratios,
): SensorSigns['floor'] {
  const { output } = series;
  const held = engagements.flatMap(({ stop }) =>
    stop.kind === 'notStopped' && stop.lowest > FLOOR_RPM ? [stop] : [],
  );
  const [first] = held;
  if (output === undefined || first === undefined) return null;
  if (engagements.some(({ stop }) => stop.kind === 'stopped')) return null;
  const lows = held.map(({ lowest }) => lowest);
  if (Math.max(...lows) - Math.min(...lows) > ALIKE_RPM) return null;
  const { ratioSlipRpm, ratioSlipShare } = illustrativeSettings;
  const drives = engagements.filter(({ slip, selection }) => {
    if (slip.kind !== 'measured') return false;
    // Where the gear itself turns the turbine faster than the floor, the reading is true.
    for (let row = selection.first; row <= selection.last; row += 1) {
      const ratio = selection.range === 'reverse' ? reverse : drive;
      const speed = turbine[row] ?? Number.NaN;
      const shaft = output[row] ?? Number.NaN;
      if (!(ratio * shaft > 2 * Math.max(...lows))) continue;
      if (Math.abs(slipRpm(speed, ratio, shaft)) > Math.max(ratioSlipRpm, ratioSlipShare * speed))
        return false;
    }
    return slip.peak <= Math.max(...lows) + ALIKE_RPM;
  });
  return drives.length > 0 &&
    drives.length === engagements.filter(({ slip }) => slip.kind === 'measured').length
    ? { rpm: Math.min(...lows), at: first.at }
    : null;
}

function blindSpots(series: Series, engagements: readonly EngagementRead[]): readonly Blind[] {
  const spots: Blind[] = [];
  if (engagements.length === 0) spots.push({ kind: 'noEngagement' });
  if (series.range === undefined) spots.push({ kind: 'noRange' });
  if (series.temperature === undefined || engagements.some(({ tempC }) => tempC === null)) {
    spots.push({ kind: 'noTemperature' });
  }
  if (series.output === undefined) spots.push({ kind: 'noOutput' });
  else if (engagements.length > 0 && engagements.every(({ slip }) => slip.kind !== 'measured')) {
    spots.push({ kind: 'noTakeoff' });
  }
  if (series.brake === undefined && engagements.length > 0) spots.push({ kind: 'noBrake' });
  const step = Math.max(
    0,
    ...engagements.map((one) => one.step).filter((one) => !Number.isNaN(one)),
  );
  if (step > GOOD_STEP * 1.05) spots.push({ kind: 'slow', step });
  if (engagements.some(({ tooSlowForRatio }) => tooSlowForRatio)) {
    spots.push({ kind: 'tooSlowForRatio', step });
  }
  const gaps = gapsIn(series.time);
  if (gaps) spots.push(gaps);
  return spots;
}

/** The whole reading of a log under two ratios. */
export function analyse(series: Series, ratios: Ratios): LogRead {
  const { time, output } = series;
  const turbineOut = dropouts(time, series.turbine);
  const outputOut = output ? dropouts(time, output) : [];
  const clean = cleaned(series);
  const { turbine } = clean;
  const engagements = findSelections(clean, turbine).map((selection) =>
    measure(clean, turbine, selection, ratios),
  );
  const timesOf = (rows: readonly number[]) => rows.map((row) => time[row] ?? 0);
  return {
    rows: time.length,
    seconds: time.at(-1) ?? 0,
    step: stepOf(time),
    engagements,
    gears: estimateRatios(clean, turbine),
    sensors: {
      turbineDropouts: timesOf(turbineOut),
      outputDropouts: timesOf(outputOut),
      floor: floorOf(clean, turbine, engagements, ratios),
    },
    blind: blindSpots(clean, engagements),
    untimed: series.untimed,
    doubled: series.doubled,
  };
}
