/**
 * What a page leaves behind in the moment it goes. Browser storage is written at once; a transaction
 * of IndexedDB that waits behind another goes with the page. Each leaving has a key of its own: two
 * tabs that go together do not write over each other.
 */
interface Left {
  readonly key: string;
  /** As they lie there; a text that is no list is one record that cannot be read. */
  readonly records: readonly unknown[];
}

function recordsIn(text: string): readonly unknown[] {
  try {
    const records: unknown = JSON.parse(text);
    return Array.isArray(records) ? records : [text];
  } catch {
    return [text];
  }
}

/** Where the browser blocks storage, asking for it throws. */
const quietly = <R>(work: () => R, refused: R): R => {
  try {
    return work();
  } catch {
    return refused;
  }
};

export function leftBehind(name: string) {
  const prefix = `${name}:left:`;
  return {
    /** Whether there was room, and leave. */
    put: (records: readonly unknown[]): boolean =>
      quietly(() => {
        localStorage.setItem(prefix + String(Math.random()), JSON.stringify(records));
        return true;
      }, false),

    look: (): readonly Left[] =>
      quietly(
        () =>
          Array.from({ length: localStorage.length }, (_, i) => localStorage.key(i) ?? '')
            .filter((key) => key.startsWith(prefix))
            .map((key) => ({ key, records: recordsIn(localStorage.getItem(key) ?? '[]') })),
        [],
      ),

    /** They have been stored. */
    clear: (left: readonly Left[]): void => {
      for (const { key } of left) localStorage.removeItem(key);
    },
  };
}
export type LeftBehind = ReturnType<typeof leftBehind>;
