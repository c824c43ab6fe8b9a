/**
 * Whether it is worth fetching what predictions.ts reads: its slots, seen from outside, since all that opens them costs every page
 * more than this. A name that turns up without a prediction behind it fetches for nothing.
 */
export function predictedBefore(sim: string): boolean {
  try {
    const { 'hot-clutch:predicted:a': a, 'hot-clutch:predicted:b': b } = localStorage;
    return `${a}${b}`.includes(`"${sim}"`);
  } catch {
    return false;
  }
}
