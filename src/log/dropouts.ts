/** Below this a speed sensor says nothing is turning [rpm]. */
export const STOPPED_BELOW_RPM = 30;
/** A shaft cannot stop and come back from here [rpm] within the time below [s]. */
const HIGH_RPM = 200;
const WITHIN = 0.25;

/**
 * Rows where a speed reads nothing between two high readings: a sensor or its plug, for no shaft stops and comes back in
 * a few hundredths of a second. One row of a slow log, or several of a fast one that are over as quickly.
 */
export function dropouts(time: Float64Array, speed: Float64Array): readonly number[] {
  const found: number[] = [];
  const isHigh = (row: number): boolean => (speed[row] ?? Number.NaN) >= HIGH_RPM;
  const between = (from: number, to: number): number => (time[to] ?? 0) - (time[from] ?? 0);
  for (let first = 1; first < speed.length - 1; first += 1) {
    if (!isHigh(first - 1)) continue;
    let after = first;
    while ((speed[after] ?? Number.NaN) < STOPPED_BELOW_RPM) after += 1;
    if (after === first || !isHigh(after)) continue;
    const quick =
      after === first + 1
        ? between(first - 1, first) <= WITHIN && between(first, after) <= WITHIN
        : between(first - 1, after) <= WITHIN;
    if (quick) for (let row = first; row < after; row += 1) found.push(row);
    first = after;
  }
  return found;
}

/** A log whose turbine and output speeds have no dropouts. */
export function cleaned<T extends Speeds>(series: T): T {
  const { time, turbine, output } = series;
  return {
    ...series,
    turbine: withoutRows(turbine, dropouts(time, turbine)),
    ...(output && { output: withoutRows(output, dropouts(time, output)) }),
  };
}
interface Speeds {
  readonly time: Float64Array;
  readonly turbine: Float64Array;
  readonly output?: Float64Array;
}

/** A speed without its dropouts: they are no readings. */
export function withoutRows(speed: Float64Array, rows: readonly number[]): Float64Array {
  const clean = speed.slice();
  for (const row of rows) clean[row] = Number.NaN;
  return clean;
}
