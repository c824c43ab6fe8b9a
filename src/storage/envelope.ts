/**
 * How anything is kept in the browser: a versioned envelope in one of two slots.
 *
 * A write goes whole into the slot not in use; only then does the pointer move. So a write cut
 * short by a full disk or a closed tab leaves the last good state standing. What cannot be read is
 * copied aside and never overwritten: it may be somebody's months of reviews. The order of writes
 * is counted, not timed, because clocks get set back.
 */

export type Area = Pick<Storage, 'getItem' | 'setItem' | 'removeItem'>;

export interface Kept<T> {
  readonly data: T;
  /**
   * `recovered`: the newest could not be read, the one before it could. `unreadable`: neither.
   * `newer`: a later version of the site wrote it; it is left alone. `blocked`: the browser says no.
   */
  readonly status: 'ok' | 'nothing' | 'recovered' | 'unreadable' | 'newer' | 'blocked';
}
export type WriteStatus = 'ok' | 'full' | 'blocked' | 'newer';

export interface Keeper<T> {
  read(): Kept<T>;
  /** Reads afresh first, so that a second tab's change is built on and not undone. */
  update(change: (current: T) => T): WriteStatus;
  /** Texts that could not be read, for download. */
  aside(): string[];
  /** Calls back when another tab wrote. Returns the way to stop. */
  watch(listener: () => void): () => void;
}

export interface KeeperOptions<T> {
  readonly name: string;
  readonly version: number;
  readonly empty: T;
  /** Throws on data that is not T. Everything read goes through it. */
  readonly parse: (data: unknown) => T;
  /** From version n to n + 1, by n. Kept for ever, with a fixture each. */
  readonly upgrade?: Readonly<Record<number, (old: unknown) => unknown>>;
  readonly area?: Area | undefined;
}

type Slot = 'a' | 'b';
type SlotState<T> =
  | { readonly kind: 'empty' }
  | { readonly kind: 'good'; readonly data: T; readonly serial: number }
  | { readonly kind: 'newer' }
  | { readonly kind: 'bad'; readonly text: string };

const asideLimit = 5;

export function keeper<T>(options: KeeperOptions<T>): Keeper<T> {
  const { name, version, empty, parse, upgrade = {} } = options;
  const prefix = `hot-clutch:${name}:`;
  const pointerKey = `${prefix}slot`;

  // Asking for localStorage itself throws where it is blocked, so it is asked for each time.
  const area = (): Area => options.area ?? globalThis.localStorage;

  function decode(text: string | null): SlotState<T> {
    if (text === null) return { kind: 'empty' };
    try {
      const envelope: unknown = JSON.parse(text);
      if (typeof envelope !== 'object' || envelope === null) return { kind: 'bad', text };
      const { v, n, data } = envelope as Record<string, unknown>;
      if (!isCount(v) || !isCount(n)) return { kind: 'bad', text };
      if (v > version) return { kind: 'newer' };
      let now: unknown = data;
      for (let from = v; from < version; from += 1) {
        const step = upgrade[from];
        if (step === undefined) return { kind: 'bad', text };
        now = step(now);
      }
      return { kind: 'good', data: parse(now), serial: n };
    } catch {
      return { kind: 'bad', text };
    }
  }

  function look() {
    const store = area();
    const pointer = store.getItem(pointerKey);
    const current: Slot = pointer === 'b' ? 'b' : 'a';
    const other: Slot = current === 'a' ? 'b' : 'a';
    return {
      store,
      current,
      other,
      now: decode(store.getItem(prefix + current)),
      before: decode(store.getItem(prefix + other)),
    };
  }

  function asideKeys(store: Area): string[] {
    const keys = Array.from({ length: asideLimit }, (_, index) => `${prefix}aside:${index}`);
    return keys.filter((key) => store.getItem(key) !== null);
  }

  /** True if the text is safe elsewhere, so that its slot may be written over. */
  function keepAside(store: Area, text: string): boolean {
    for (let index = 0; index < asideLimit; index += 1) {
      const key = `${prefix}aside:${index}`;
      const there = store.getItem(key);
      if (there === text) return true;
      if (there !== null) continue;
      try {
        store.setItem(key, text);
        return store.getItem(key) === text;
      } catch {
        return false;
      }
    }
    return false;
  }

  function read(): Kept<T> {
    try {
      const { store, now, before } = look();
      for (const state of [now, before]) if (state.kind === 'bad') keepAside(store, state.text);
      if (now.kind === 'newer' || before.kind === 'newer') return { data: empty, status: 'newer' };
      if (now.kind === 'good') return { data: now.data, status: 'ok' };
      if (before.kind === 'good') return { data: before.data, status: 'recovered' };
      const nothing = now.kind === 'empty' && before.kind === 'empty';
      return { data: empty, status: nothing ? 'nothing' : 'unreadable' };
    } catch {
      return { data: empty, status: 'blocked' };
    }
  }

  function update(change: (current: T) => T): WriteStatus {
    let looked;
    try {
      looked = look();
    } catch {
      return 'blocked';
    }
    const { store, current, other, now, before } = looked;
    if (now.kind === 'newer' || before.kind === 'newer') return 'newer';
    if (before.kind === 'bad' && !keepAside(store, before.text)) return 'full';
    const base = now.kind === 'good' ? now : before.kind === 'good' ? before : undefined;
    const data = change(base === undefined ? empty : base.data);
    // The only good state stays where it is; with a bad current slot that is the other one.
    const target = now.kind === 'bad' && before.kind === 'good' ? current : other;
    if (target === current && now.kind === 'bad' && !keepAside(store, now.text)) return 'full';
    try {
      const text = JSON.stringify({ v: version, n: (base?.serial ?? 0) + 1, data });
      store.setItem(prefix + target, text);
      store.setItem(pointerKey, target);
      return 'ok';
    } catch (error) {
      return isQuota(error) ? 'full' : 'blocked';
    }
  }

  return {
    read,
    update,
    aside() {
      try {
        const store = area();
        return asideKeys(store).map((key) => store.getItem(key) ?? '');
      } catch {
        return [];
      }
    },
    watch(listener) {
      const onStorage = (event: StorageEvent): void => {
        if (event.key === null || event.key === pointerKey) listener();
      };
      globalThis.addEventListener('storage', onStorage);
      return () => globalThis.removeEventListener('storage', onStorage);
    },
  };
}

function isCount(value: unknown): value is number {
  return typeof value === 'number' && Number.isInteger(value) && value >= 0;
}

function isQuota(error: unknown): boolean {
  return error instanceof Error && /quota/i.test(`${error.name} ${error.message}`);
}
