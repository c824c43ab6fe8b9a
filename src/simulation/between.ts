/**
 * On a straight line between two values of a row that were solved ahead; null where one of the two is none.
 * @param place in steps of the row, from 0 to its last
 */
export function between(row: readonly (number | null)[], place: number): number | null {
  const below = Math.floor(place);
  const [from = null, to = null] = [row[below], row[below + 1]];
  if (place === below || from === null || to === null) return place === below ? from : null;
  return from + (place - below) * (to - from);
}
