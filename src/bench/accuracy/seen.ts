/** All cars of one seed, and how each of them went. */
import { chanceFrom, type Chance, type Name, type Table } from '../../diagnosis/index.ts';
import { healthy, oneFault, outsideTheList, twoFaults, type Car } from './cars.ts';
import { shopOf, type Way } from './follow.ts';
import { FIXED, shuffled } from './orders.ts';

export interface Single {
  readonly name: Name;
  readonly planner: Way;
  readonly fixed: Way;
  readonly random: Way;
  readonly all: Way;
}
export interface Other {
  readonly names: readonly Name[];
  readonly stopped: Way;
  readonly all: Way;
}
export interface Seen {
  readonly seed: number;
  readonly singles: readonly Single[];
  readonly pairs: readonly Other[];
  readonly outside: readonly Other[];
  readonly sound: readonly Other[];
}
/** How many cars of each kind. */
export interface Counts {
  readonly singles: number;
  readonly pairs: number;
  readonly outside: number;
  readonly sound: number;
}

const many = <Item>(count: number, one: (n: number) => Item): Item[] =>
  Array.from({ length: count }, (_, n) => one(n));

export function seenWith(
  table: Table,
  seed: number,
  counts: Counts,
  told: (text: string) => void,
): Seen {
  const shop = shopOf(table);
  // Each kind draws from a chance of its own: more cars of one do not change those of another.
  const drawing = (kind: number): Chance => chanceFrom(4 * seed + kind);
  const single = (chance: Chance): Single => {
    const { names, read } = oneFault(table, chance);
    return {
      name: names[0] ?? 'healthy',
      planner: shop.byPlanner(read),
      fixed: shop.byOrder(read, FIXED),
      random: shop.byOrder(read, shuffled(chance)),
      all: shop.withAll(read),
    };
  };
  const other = ({ names, read }: Car): Other => ({
    names,
    stopped: shop.byPlanner(read),
    all: shop.withAll(read),
  });
  const [one, two, out, none] = [0, 1, 2, 3].map(drawing) as [Chance, Chance, Chance, Chance];
  return {
    seed,
    singles: many(counts.singles, (n) => {
      if (n % 50 === 49) told(`seed ${seed}: ${n + 1} cars`);
      return single(one);
    }),
    pairs: many(counts.pairs, () => other(twoFaults(two))),
    outside: many(counts.outside, () => other(outsideTheList(table, out))),
    sound: many(counts.sound, () => other(healthy(table, none))),
  };
}
