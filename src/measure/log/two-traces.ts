type Values = readonly (number | null)[];

/** Two columns on one time axis. */
export interface Laid {
  readonly x: readonly number[];
  readonly a: Values;
  readonly b: Values;
}

/** Between two readings further apart than this [s] no line is drawn. */
const GAP = 2;

/** The value of a column at each x, in a straight line between the two readings beside it; null where there are none. */
function at(x: readonly number[], time: readonly number[], values: Values): Values {
  const known: number[] = [];
  for (const [row, value] of values.entries()) if (value !== null) known.push(row);
  let next = 0;
  return x.map((when) => {
    while (next < known.length && (time[known[next] ?? 0] ?? 0) < when) next += 1;
    const after = known[next];
    const before = known[next - 1];
    if (after === undefined) return null;
    const [to, high] = [time[after] ?? 0, values[after] ?? null];
    if (to === when || before === undefined) return to === when ? high : null;
    const [from, low] = [time[before] ?? 0, values[before] ?? null];
    if (low === null || high === null || to - from > GAP) return null;
    return low + ((high - low) * (when - from)) / (to - from);
  });
}

/** Two traces with times of their own, laid over one axis for a chart. */
export function layOver(
  first: { readonly time: readonly number[]; readonly values: Values },
  second: { readonly time: readonly number[]; readonly values: Values },
): Laid {
  const x = [...new Set([...first.time, ...second.time])].sort((p, q) => p - q);
  return { x, a: at(x, first.time, first.values), b: at(x, second.time, second.values) };
}
