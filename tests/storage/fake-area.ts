import type { Area } from '../../src/storage/envelope.ts';

export interface FakeArea extends Area, Pick<Storage, 'length' | 'key'> {
  readonly kept: Map<string, string>;
  /** Writes to keys that match fail as a full or blocked browser fails. */
  failWrites: { readonly on: RegExp; readonly as: 'QuotaExceededError' | 'SecurityError' } | null;
}

/** Browser storage in memory, with the ways it fails. */
export function fakeArea(): FakeArea {
  const kept = new Map<string, string>();
  const area: FakeArea = {
    kept,
    failWrites: null,
    get length() {
      return kept.size;
    },
    key: (i) => [...kept.keys()][i] ?? null,
    getItem: (key) => kept.get(key) ?? null,
    setItem(key, value) {
      if (area.failWrites?.on.test(key) === true) {
        throw new DOMException('refused by the test', area.failWrites.as);
      }
      kept.set(key, value);
    },
    removeItem: (key) => void kept.delete(key),
  };
  return area;
}
