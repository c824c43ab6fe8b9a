/**
 * What is kept on a device is made of entries, each with the time of its last change. Two copies are brought together entry by
 * entry, the later one wins: so two tabs, two devices and a file can meet in any order and come to the same.
 */

/** Something, and when it was last changed [ms of Unix time]. */
export interface Dated<Value> {
  readonly at: number;
  readonly value: Value;
}

export const neverDated = <Value>(value: Value): Dated<Value> => ({ at: 0, value });

/** Of two copies of an entry the later one; of two of one time always the same, whichever comes first. */
export function later<Value>(a: Dated<Value>, b: Dated<Value>): Dated<Value> {
  if (a.at !== b.at) return a.at > b.at ? a : b;
  return JSON.stringify(a.value) >= JSON.stringify(b.value) ? a : b;
}

/** Two copies of a list of entries as one, by their names. */
export function laterOfEach<Value>(
  a: Readonly<Record<string, Dated<Value>>>,
  b: Readonly<Record<string, Dated<Value>>>,
): Readonly<Record<string, Dated<Value>>> {
  const names = [...new Set([...Object.keys(a), ...Object.keys(b)])].sort();
  return Object.fromEntries(
    names.flatMap((name) => {
      const [one, other] = [a[name], b[name]];
      const found = one && other ? later(one, other) : (one ?? other);
      return found ? [[name, found]] : [];
    }),
  );
}

/** A change now: later than what it replaces, also where the clock was set back in between. */
export const dated = <Value>(before: Dated<unknown> | undefined, now: number, value: Value) => ({
  at: Math.max(now, (before?.at ?? 0) + 1),
  value,
});

/** An id that sorts by its time: readings of one job stand in the order in which they were taken down. */
export const timedId = (now: number, chance: () => number = Math.random): string =>
  `${now.toString(36).padStart(9, '0')}-${Math.floor(chance() * 36 ** 6)
    .toString(36)
    .padStart(6, '0')}`;
