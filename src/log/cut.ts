import { slipRpm } from '../engine/index.ts';
import type { Series } from './series.ts';

/** A stretch of a log for a chart: times from its own zero [s], a few hundred points. */
export interface Cut {
  readonly time: readonly number[];
  readonly engine?: readonly (number | null)[];
  readonly turbine: readonly (number | null)[];
  readonly output?: readonly (number | null)[];
  /** Without its sign [rpm]; there with an output alone. */
  readonly slip?: readonly (number | null)[];
  readonly clutchPressure?: readonly (number | null)[];
  readonly linePressure?: readonly (number | null)[];
}

/** What is cut out [s], where its time is counted from [s], and the ratio that slip is reckoned with. */
export interface Stretch {
  readonly from: number;
  readonly to: number;
  readonly zero: number;
  readonly ratio: number;
}

const MOST = 600;

/**
 * The readings between two times, counted from `zero`, thinned where there are more than a chart has room for. Nothing is
 * drawn between readings that the log does not have.
 *
 * @param clean the speeds without dropouts, for slip: one that is gone for a reading is no slip
 */
export function cut(
  series: Series,
  { from, to, zero, ratio }: Stretch,
  clean: Pick<Series, 'turbine' | 'output'> = series,
): Cut {
  const { time, turbine, output } = series;
  let [first, last] = [0, time.length];
  while (first < last) {
    const half = (first + last) >> 1;
    if ((time[half] ?? 0) < from) first = half + 1;
    else last = half;
  }
  const rows: number[] = [];
  for (let row = first; row < time.length && (time[row] ?? 0) <= to; row += 1) rows.push(row);
  const every = Math.max(1, Math.ceil(rows.length / MOST));
  const kept = rows.filter((_, i) => i % every === 0);
  const value = (column: Float64Array, row: number): number | null => {
    const read = column[row] ?? Number.NaN;
    return Number.isNaN(read) ? null : read;
  };
  const column = (name: 'engine' | 'output' | 'clutchPressure' | 'linePressure') => {
    const values = series[name];
    return values && { [name]: kept.map((row) => value(values, row)) };
  };
  return {
    time: kept.map((row) => Math.round(((time[row] ?? 0) - zero) * 1000) / 1000),
    turbine: kept.map((row) => value(turbine, row)),
    ...column('engine'),
    ...column('output'),
    ...column('clutchPressure'),
    ...column('linePressure'),
    ...(output && {
      slip: kept.map((row) => {
        const [fast, slow] = [value(clean.turbine, row), value(clean.output ?? output, row)];
        return fast === null || slow === null ? null : Math.abs(slipRpm(fast, ratio, slow));
      }),
    }),
  };
}
