/**
 * The order of a round (L9): never three questions of one idea in a row while there are others, and two ideas that people take
 * for each other within three questions. Questions that come first in the list stay as early as that allows.
 */
export interface Idea {
  readonly id: string;
  readonly concept: string;
  readonly lookAlikes: readonly string[];
}

/** How far apart look-alikes may stand. */
export const NEAR = 3;
const TRIES = 12;

const alike = (a: Idea, b: Idea): boolean =>
  a.lookAlikes.includes(b.concept) || b.lookAlikes.includes(a.concept);

/** A pair of concepts, the same name whichever comes first. */
const pairName = (a: string, b: string): string => (a < b ? `${a} ${b}` : `${b} ${a}`);

/**
 * The pairs of look-alike concepts of a round whose questions all stand more than NEAR apart.
 * @example farPairs([a, x, y, z, aLike]) // one: "a a-like"
 */
export function farPairs(order: readonly Idea[]): readonly string[] {
  const far = new Map<string, boolean>();
  for (const [i, a] of order.entries()) {
    for (const [j, b] of order.entries()) {
      if (j <= i || !alike(a, b)) continue;
      const name = pairName(a.concept, b.concept);
      far.set(name, (far.get(name) ?? true) && j - i > NEAR);
    }
  }
  return [...far].filter(([, is]) => is).map(([name]) => name);
}

/** One order, beginning with the question at `first`. */
function from<Item extends Idea>(first: number, all: readonly Item[]): readonly Item[] {
  const left = [...all];
  const order: Item[] = [];
  /** Pairs that have stood near already. */
  const met = new Set<string>();
  const take = (at: number): void => {
    const [one] = left.splice(at, 1) as [Item];
    for (const other of order.slice(-NEAR)) {
      if (alike(one, other)) met.add(pairName(one.concept, other.concept));
    }
    order.push(one);
  };
  /** In how many steps it has to come to stand near one that waits for it; none if none does. */
  const deadline = (one: Item): number => {
    const at = order.findLastIndex(
      (other) => alike(one, other) && !met.has(pairName(one.concept, other.concept)),
    );
    const within = at + NEAR - order.length;
    return at < 0 || within < 0 ? Number.POSITIVE_INFINITY : within;
  };
  take(first);
  while (left.length > 0) {
    const [b, a] = [order.at(-1)?.concept, order.at(-2)?.concept];
    const all = left.map((one, at) => ({ at, concept: one.concept, by: deadline(one) }));
    const allowed = all.filter(({ concept }) => a !== b || concept !== b);
    const open = allowed.length > 0 ? allowed : all;
    take(open.reduce((best, next) => (next.by < best.by ? next : best)).at);
  }
  return order;
}

/**
 * Puts the questions of a round in order.
 * @param ranked the most urgent first
 * @returns the same questions
 */
export function interleave<Item extends Idea>(ranked: readonly Item[]): readonly Item[] {
  if (ranked.length === 0) return [];
  let best = ranked;
  let fewest = Number.POSITIVE_INFINITY;
  for (let first = 0; first < Math.min(TRIES, ranked.length) && fewest > 0; first += 1) {
    const order = from(first, ranked);
    const far = farPairs(order).length;
    if (far < fewest) [best, fewest] = [order, far];
  }
  return best;
}
