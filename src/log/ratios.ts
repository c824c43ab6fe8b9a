import { GAP } from './selections.ts';
import { rangeAt, type Series } from './series.ts';

/** A gear that the log shows: turbine over output while both run steadily. */
export interface GearSeen {
  readonly range: 'drive' | 'reverse';
  /** Median of the readings [-]. */
  readonly ratio: number;
  /** The middle eighty of a hundred readings lie between these [-]. */
  readonly low: number;
  readonly high: number;
  /** How much driving it rests on [s]. */
  readonly seconds: number;
  /** Where in the log the first of it is [s]. */
  readonly at: number;
}

/** Below this output speed a small error is a large one in the ratio [rpm]. */
const LEAST_OUTPUT_RPM = 150;
/** A reading is steady when both speeds and the ratio differ from the reading before by less than this share. */
const STEADY = 0.03;
const SAME_RATIO = 0.01;
/** Two readings that differ by more than this share are of two gears. */
const APART = 0.03;
/** Less driving than this is an accident [s]. */
const LEAST_SECONDS = 2;

interface Reading {
  readonly ratio: number;
  readonly seconds: number;
  readonly at: number;
}

/** The value below which this share of the readings lies, each weighted by its seconds. */
function weighted(sorted: readonly Reading[], share: number): number {
  const total = sorted.reduce((sum, { seconds }) => sum + seconds, 0);
  let sum = 0;
  for (const { ratio, seconds } of sorted) {
    sum += seconds;
    if (sum >= share * total) return ratio;
  }
  return sorted.at(-1)?.ratio ?? Number.NaN;
}

function gearsOf(readings: readonly Reading[], range: GearSeen['range']): readonly GearSeen[] {
  const sorted = [...readings].sort((a, b) => a.ratio - b.ratio);
  const groups: Reading[][] = [];
  for (const reading of sorted) {
    const group = groups.at(-1);
    const last = group?.at(-1);
    if (group && last && reading.ratio <= last.ratio * (1 + APART)) group.push(reading);
    else groups.push([reading]);
  }
  return groups
    .map((group) => ({
      range,
      ratio: weighted(group, 0.5),
      low: weighted(group, 0.1),
      high: weighted(group, 0.9),
      seconds: group.reduce((sum, { seconds }) => sum + seconds, 0),
      at: Math.min(...group.map(({ at }) => at)),
    }))
    .filter(({ seconds }) => seconds >= LEAST_SECONDS)
    .sort((a, b) => b.ratio - a.ratio);
}

/**
 * The ratios of a log, by range, first gear first: medians over stretches where speeds hardly change, so that a slipping
 * start, a shift or a dropout does not count. A clutch that slips by the same share for seconds would: so it comes with
 * its spread and its seconds.
 *
 * @param turbine without dropouts [rpm]
 */
export function estimateRatios(series: Series, turbine: Float64Array): readonly GearSeen[] {
  const { time, output } = series;
  if (output === undefined) return [];
  const byRange = { drive: [] as Reading[], reverse: [] as Reading[] };
  for (let row = 1; row < time.length; row += 1) {
    const said = rangeAt(series, row);
    const range = series.range === undefined ? 'drive' : said;
    if (range !== 'drive' && range !== 'reverse') continue;
    const seconds = (time[row] ?? 0) - (time[row - 1] ?? 0);
    const [out0 = Number.NaN, out1 = Number.NaN] = output.subarray(row - 1, row + 1);
    const [tur0 = Number.NaN, tur1 = Number.NaN] = turbine.subarray(row - 1, row + 1);
    if (!(seconds < GAP && out0 >= LEAST_OUTPUT_RPM && out1 >= LEAST_OUTPUT_RPM && tur0 > 0))
      continue;
    const [ratio0, ratio1] = [tur0 / out0, tur1 / out1];
    const near = (a: number, b: number, share: number) => Math.abs(a - b) <= share * b;
    if (near(out0, out1, STEADY) && near(tur0, tur1, STEADY) && near(ratio0, ratio1, SAME_RATIO)) {
      byRange[range].push({ ratio: ratio1, seconds, at: time[row] ?? 0 });
    }
  }
  return [...gearsOf(byRange.drive, 'drive'), ...gearsOf(byRange.reverse, 'reverse')];
}
