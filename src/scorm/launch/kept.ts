/** What the course keeps on this device, read from the frame round it. */

interface Entry {
  readonly answer?: { readonly kind?: unknown; readonly item?: unknown; readonly result?: unknown };
}

/** All entries of the log of answers, the oldest first; none where the course has kept none yet. */
export function entriesKept(): Promise<readonly Entry[]> {
  return new Promise((resolve) => {
    const none = (): void => resolve([]);
    try {
      const opening = indexedDB.open('hot-clutch:answers');
      // Opening makes an empty one where there is none, which the course could not use.
      opening.onupgradeneeded = () => opening.transaction?.abort();
      opening.onerror = none;
      opening.onblocked = none;
      opening.onsuccess = () => {
        const { result: base } = opening;
        const all = base.transaction('answers').objectStore('answers').getAll();
        all.onsuccess = () => resolve(all.result as readonly Entry[]);
        all.onerror = none;
        base.close();
      };
    } catch {
      none();
    }
  });
}

/** Questions answered from an entry on, and whether they were right the last time. */
export function rightIn(
  entries: readonly Entry[],
  from: number,
): readonly (readonly [string, boolean])[] {
  return entries
    .slice(from)
    .flatMap(({ answer }) =>
      answer?.kind === 'retrieval' && typeof answer.item === 'string'
        ? [[answer.item, answer.result === 'right'] as const]
        : [],
    );
}
