/** Which questions a rehearsal asks, and in what order. */
import { interleave, type Idea } from '../schedule/interleave.ts';
import { seededRandom, shuffled } from '../seeded-order.ts';
import { apportion } from './apportion.ts';
import {
  areas,
  REHEARSAL_SIZE,
  shares,
  traitNames,
  wanted,
  type Area,
  type Trait,
} from './blueprint.ts';

/** What a draw needs to know of a question; a trait that is not there it does not have. */
export type Drawable = Idea & { readonly area: Area } & {
  readonly [Each in Trait]?: boolean | undefined;
};

/** How many questions each area gives: in proportion to its share, and where it has too few, the others give more. */
export function seatsFrom(
  inBank: Readonly<Record<Area, number>>,
  size: number,
): ReadonlyMap<Area, number> {
  const seats = new Map<Area, number>(areas.map((area) => [area, 0]));
  let open: readonly Area[] = areas.filter((area) => inBank[area] > 0);
  for (let left = size; left > 0 && open.length > 0;) {
    const given = apportion(
      open.map((area) => shares[area]),
      left,
    );
    open.forEach((area, i) => {
      const more = Math.min(given[i] ?? 0, inBank[area] - (seats.get(area) ?? 0));
      seats.set(area, (seats.get(area) ?? 0) + more);
      left -= more;
    });
    open = open.filter((area) => (seats.get(area) ?? 0) < inBank[area]);
  }
  return seats;
}

/** How many questions of each kind there are. */
export const traitsOf = (items: readonly Drawable[]): Readonly<Record<Trait, number>> => ({
  unseen: items.filter(({ unseen }) => unseen).length,
  next: items.filter(({ next }) => next).length,
  healthy: items.filter(({ healthy }) => healthy).length,
});

/**
 * Draws a rehearsal. The kinds that are rarest in the bank are seen to first, then the areas are filled. Among questions that
 * serve alike, those go first that were not rehearsed, then those rehearsed longest ago, then ideas that are not in it yet.
 * @param items the bank
 * @param seed the same bank and seed give the same rehearsal
 * @param lately of questions that were rehearsed, how many rehearsals ago, 1 the last one
 * @returns fewer questions if the bank has fewer
 */
export function drawRehearsal<Item extends Drawable>(
  items: readonly Item[],
  seed: number,
  lately: ReadonlyMap<string, number> = new Map(),
  size: number = REHEARSAL_SIZE,
): readonly Item[] {
  const random = seededRandom(seed);
  const left = new Set(shuffled(items, random));
  const inBank = Object.fromEntries(
    areas.map((area) => [area, items.filter((item) => item.area === area).length]),
  ) as Record<Area, number>;
  const room = new Map(seatsFrom(inBank, size));
  const seats = new Map(room);
  const drawn: Item[] = [];
  const concepts = new Map<string, number>();
  const wants: Record<Trait, number> = { unseen: 0, next: 0, healthy: 0 };
  for (const trait of traitNames) wants[trait] = wanted(trait, size);

  /** The smaller at the first place where two differ comes first. */
  function rank(item: Item): readonly number[] {
    return [
      traitNames.filter((trait) => item[trait] && wants[trait] <= 0).length,
      1 / (lately.get(item.id) ?? Number.POSITIVE_INFINITY),
      concepts.get(item.concept) ?? 0,
      -(room.get(item.area) ?? 0) / (seats.get(item.area) ?? 1),
    ];
  }
  function take(fits: (item: Item) => boolean): boolean {
    let best: { readonly item: Item; readonly rank: readonly number[] } | undefined;
    for (const item of left) {
      if ((room.get(item.area) ?? 0) === 0 || !fits(item)) continue;
      const one = rank(item);
      if (best === undefined || comesBefore(one, best.rank)) best = { item, rank: one };
    }
    if (best === undefined) return false;
    const { item } = best;
    left.delete(item);
    drawn.push(item);
    room.set(item.area, (room.get(item.area) ?? 0) - 1);
    concepts.set(item.concept, (concepts.get(item.concept) ?? 0) + 1);
    for (const trait of traitNames) if (item[trait]) wants[trait] -= 1;
    return true;
  }

  const inAll = traitsOf(items);
  const rarestFirst = [...traitNames].sort(
    (a, b) => inAll[a] / wanted(a, size) - inAll[b] / wanted(b, size),
  );
  for (const trait of rarestFirst) {
    while (wants[trait] > 0 && take((item) => item[trait] === true));
  }
  while (take(() => true));
  return interleave(shuffled(drawn, random));
}

function comesBefore(a: readonly number[], b: readonly number[]): boolean {
  const at = a.findIndex((one, i) => one !== b[i]);
  return at >= 0 && (a[at] ?? 0) < (b[at] ?? 0);
}
