/** Two slots in browser storage, a pointer to the one in force, and a place aside for what cannot be read. */
import { isCount, readVersioned, type Form } from './versioned.ts';

export type Area = Pick<Storage, 'getItem' | 'setItem' | 'removeItem'>;

export interface SlotsOptions<T> extends Form<T> {
  readonly area?: Area | undefined;
}

export type Slot = 'a' | 'b';
export interface Good<T> {
  readonly kind: 'good';
  readonly data: T;
  /** Counts the writes; the order of things, where clocks get set back. */
  readonly serial: number;
}
export type SlotState<T> =
  | Good<T>
  | { readonly kind: 'empty' }
  | { readonly kind: 'newer' }
  | { readonly kind: 'bad'; readonly text: string };

const prefixOf = (name: string): string => `hot-clutch:${name}:`;
const asideKey = (prefix: string, index: number): string => `${prefix}aside:${index}`;

/** Texts that could not be read, for download. */
export function textsAside(name: string, area?: Area): string[] {
  const texts: string[] = [];
  try {
    const store = area ?? globalThis.localStorage;
    for (;;) {
      const text = store.getItem(asideKey(prefixOf(name), texts.length));
      if (text === null) return texts;
      texts.push(text);
    }
  } catch {
    return texts;
  }
}

export function slots<T>({ area, ...form }: SlotsOptions<T>) {
  const { name, version } = form;
  const prefix = prefixOf(name);
  const pointerKey = `${prefix}slot`;

  function decode(text: string | null): SlotState<T> {
    if (text === null) return { kind: 'empty' };
    const bad = { kind: 'bad', text } as const;
    try {
      const { v, n, data } = JSON.parse(text) as Readonly<Record<string, unknown>>;
      if (!isCount(v) || !isCount(n)) return bad;
      const read = readVersioned(form, v, data);
      if (read.kind === 'good') return { ...read, serial: n };
      return read.kind === 'newer' ? read : bad;
    } catch {
      return bad;
    }
  }

  /** Throws where the browser blocks storage: asking for localStorage itself does, so it is asked for each time. */
  function look() {
    const store = area ?? globalThis.localStorage;
    const at = (slot: Slot): SlotState<T> => decode(store.getItem(prefix + slot));
    const states = { a: at('a'), b: at('b') };
    const serial = (state: SlotState<T>): number => (state.kind === 'good' ? state.serial : -1);
    const pointer = store.getItem(pointerKey);
    // Without a pointer the later write is the one in force.
    const named = pointer === 'a' || pointer === 'b';
    const isB = named ? pointer === 'b' : serial(states.b) > serial(states.a);
    const [current, other]: readonly [Slot, Slot] = isB ? ['b', 'a'] : ['a', 'b'];
    return { store, current, other, now: states[current], before: states[other] };
  }

  return {
    look,

    /** Whole into the slot; only then does the pointer move. */
    write: (store: Area, slot: Slot, serial: number, data: T): void => {
      store.setItem(prefix + slot, JSON.stringify({ v: version, n: serial, data }));
      store.setItem(pointerKey, slot);
    },

    /** True if the text is safe elsewhere, so that its slot may be written over. As many as there is room for. */
    keepAside: (store: Area, text: string): boolean => {
      for (let index = 0; ; index += 1) {
        const there = store.getItem(asideKey(prefix, index));
        if (there === text) return true;
        if (there !== null) continue;
        try {
          store.setItem(asideKey(prefix, index), text);
          return store.getItem(asideKey(prefix, index)) === text;
        } catch {
          return false;
        }
      }
    },

    /** Whether a `storage` event is about one of the slots. A cleared storage has no key. */
    concerns: (key: string | null): boolean =>
      key === null || (key.startsWith(prefix) && !key.includes(':aside:')),
  };
}
