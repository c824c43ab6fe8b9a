import { minutesOf, type Arrives, type Priced } from '../quiz/case-minutes.ts';

/** Cold before hot: the other way around it waits overnight. */
const heat = ['frost', 'cold', undefined, 'hot'];

/**
 * The readings that decide together, for the fewest minutes; of equals, those that come first in the list.
 *
 * @returns nothing where even all of them leave a doubt
 */
export function cheapestThatDecide(
  readings: readonly Priced[],
  decides: (ids: readonly string[]) => boolean,
  arrives: Arrives,
): readonly Priced[] | undefined {
  let best: readonly Priced[] | undefined;
  for (let mask = 1; mask < 1 << readings.length; mask += 1) {
    const set = readings
      .filter((_, i) => (mask >> i) & 1)
      .sort((a, b) => heat.indexOf(a.warmth) - heat.indexOf(b.warmth));
    if (best !== undefined && minutesOf(set, arrives) >= minutesOf(best, arrives)) continue;
    if (decides(set.map(({ id }) => id))) best = set;
  }
  return best;
}
