/** Every 50 ms shows every bend there is; a solver's row comes every 10. */
const EVERY = 5;

/** A column of a trace as a chart draws it, in its unit. */
export function thinned(column: Float64Array, scale = 1): readonly number[] {
  const rows: number[] = [];
  for (let i = 0; i < column.length; i += EVERY) rows.push((column[i] ?? 0) * scale);
  return rows;
}
