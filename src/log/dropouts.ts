/** Below this a speed sensor says nothing is turning [rpm]. */
export const STOPPED_BELOW_RPM = 30;
/** A shaft cannot stop and come back from here [rpm] within the time below [s]. */
const HIGH_RPM = 200;
const WITHIN = 0.25;

/**
 * Rows where a speed reads nothing between two high readings: a sensor or its plug, for no shaft stops and comes back in
 * a few hundredths of a second.
 */
export function dropouts(time: Float64Array, speed: Float64Array): readonly number[] {
  const found: number[] = [];
  for (let row = 1; row < speed.length - 1; row += 1) {
    const [before = Number.NaN, here = Number.NaN, after = Number.NaN] = speed.subarray(
      row - 1,
      row + 2,
    );
    if (!(here < STOPPED_BELOW_RPM && before >= HIGH_RPM && after >= HIGH_RPM)) continue;
    const [from = 0, at = 0, to = 0] = time.subarray(row - 1, row + 2);
    if (at - from <= WITHIN && to - at <= WITHIN) found.push(row);
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
