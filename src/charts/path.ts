/** Coordinates to a tenth: finer than any screen, and the same text on the server and here. */
export function round(place: number): number {
  const rounded = Math.round(place * 10) / 10;
  return rounded === 0 ? 0 : rounded;
}

type Place = (value: number) => number;
type Values = readonly (number | null)[];

/** Whether a chart has a value here at all. */
export const known = (value: number | null | undefined): value is number =>
  typeof value === 'number' && Number.isFinite(value);

/** A line through the known points; a gap where one is missing. */
export function linePath(x: readonly number[], y: Values, sx: Place, sy: Place): string {
  let path = '';
  let pen = 'M';
  for (let i = 0; i < x.length; i += 1) {
    const across = x[i];
    const up = y[i];
    if (!known(across) || !known(up)) {
      pen = 'M';
      continue;
    }
    path += `${pen}${round(sx(across))} ${round(sy(up))}`;
    pen = 'L';
  }
  return path;
}

/** The area between two lines, as for an uncertainty; missing points are left out. */
export function bandPath(
  x: readonly number[],
  low: Values,
  high: Values,
  sx: Place,
  sy: Place,
): string {
  const upper: string[] = [];
  const lower: string[] = [];
  for (let i = 0; i < x.length; i += 1) {
    const across = x[i];
    const a = low[i];
    const b = high[i];
    if (!known(across) || !known(a) || !known(b)) continue;
    upper.push(`${round(sx(across))} ${round(sy(b))}`);
    lower.push(`${round(sx(across))} ${round(sy(a))}`);
  }
  return upper.length < 2 ? '' : `M${upper.join('L')}L${lower.reverse().join('L')}Z`;
}
