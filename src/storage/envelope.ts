/**
 * How anything is kept in the browser: a versioned envelope in one of two slots.
 *
 * A write goes whole into the slot not in use; only then does the pointer move. So a write cut
 * short by a full disk or a closed tab leaves the last good state standing. What cannot be read is
 * copied aside and never overwritten: it may be somebody's months of reviews. The order of writes
 * is counted, not timed, because clocks get set back.
 */
import { slots, type SlotsOptions } from './slots.ts';

export type { Area } from './slots.ts';

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
  /**
   * Reads afresh first, so that a second tab's change is built on and not undone. Two tabs within
   * milliseconds need more than that: see in-turn.ts.
   */
  update(change: (current: T) => T): WriteStatus;
  /** Calls back when another tab wrote. Returns the way to stop. */
  watch(listener: () => void): () => void;
}

export interface KeeperOptions<T> extends SlotsOptions<T> {
  readonly empty: T;
}

export function keeper<T>(options: KeeperOptions<T>): Keeper<T> {
  const { empty } = options;
  const { look, write, keepAside, concerns } = slots(options);

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
      write(store, target, (base?.serial ?? 0) + 1, data);
      return 'ok';
    } catch (error) {
      return isQuota(error) ? 'full' : 'blocked';
    }
  }

  return {
    read,
    update,
    watch(listener) {
      const onStorage = (event: StorageEvent): void => {
        if (concerns(event.key)) listener();
      };
      globalThis.addEventListener('storage', onStorage);
      return () => globalThis.removeEventListener('storage', onStorage);
    },
  };
}

function isQuota(error: unknown): boolean {
  return error instanceof Error && /quota/i.test(`${error.name} ${error.message}`);
}
