/** Records of one kind in IndexedDB, one each. Every fault is a status and none is thrown. */
import { connection, storeStatus, type StoreStatus } from './connection.ts';
import type { Dated } from './dated.ts';
import { leftBehind } from './left-behind.ts';
import { isSame } from './same.ts';

/** What could not be read; and what was left behind where browser storage was full: merged in at the next look. */
const ASIDE = 'aside';
/** So long after its deletion only the mark of a record is kept: until then it can be undone. */
const UNDO_MS = 3_600_000;

export interface Kept {
  readonly id: string;
  readonly deleted: Dated<boolean>;
}
/** How records of a kind are read and brought together. */
export interface RecordKind<Of extends Kept> {
  /** Of the place in the database where they lie. */
  readonly place: string;
  /** Undefined for what is none. */
  readonly read: (given: unknown) => Of | undefined;
  readonly merge: (a: Of, b: Of) => Of;
  readonly isDeleted: (record: Of) => boolean;
  /** Of a deleted one nothing is kept but that it is. */
  readonly markOnly: (record: Of) => Of;
}

/** A record that was written, and what stood in its place. */
export interface Written<Of extends Kept> {
  readonly was: Of | undefined;
  readonly wrote: Of;
}

export interface RecordsRead<Of> {
  readonly status: StoreStatus;
  /** Marks of deletions as well. */
  readonly records: readonly Of[];
  /** What lies there and is no record, as it lies there. It is left alone. */
  readonly damaged: readonly unknown[];
}

export function recordStore<Of extends Kept>(name: string, kind: RecordKind<Of>) {
  const { place, read: readOne, merge, isDeleted, markOnly } = kind;
  const { database, now, whole, close } = connection({
    name,
    version: 1,
    upgrade: (opened) => {
      opened.createObjectStore(place, { keyPath: 'id' });
      opened.createObjectStore(ASIDE, { autoIncrement: true });
    },
  });
  const behind = leftBehind(name);
  const channel = typeof BroadcastChannel === 'undefined' ? undefined : new BroadcastChannel(name);

  /** Brings records and what lies in the store together, in one transaction: another tab comes before it or after it. */
  async function write(records: readonly Of[]): Promise<void> {
    const transaction = (await database()).transaction([place, ASIDE], 'readwrite', {
      durability: 'strict',
    });
    const put = async (record: Of): Promise<void> => {
      const raw: unknown = await transaction.objectStore(place).get(record.id);
      const there = readOne(raw);
      // What cannot be read is never written over: it may be somebody's work.
      if (raw !== undefined && there === undefined) await transaction.objectStore(ASIDE).add(raw);
      await transaction.objectStore(place).put(there ? merge(there, record) : record);
    };
    await Promise.all([...records.map(put), transaction.done]);
    channel?.postMessage('changed');
  }

  /** Takes a write back, of each record that nobody has changed since. */
  async function restore(written: readonly Written<Of>[]): Promise<void> {
    const transaction = (await database()).transaction(place, 'readwrite', {
      durability: 'strict',
    });
    const putBack = async ({ was, wrote }: Written<Of>): Promise<void> => {
      const there = readOne(await transaction.store.get(wrote.id));
      if (!isSame(there, was ? merge(was, wrote) : wrote)) return;
      await (was ? transaction.store.put(was) : transaction.store.delete(wrote.id));
    };
    await Promise.all([...written.map(putBack), transaction.done]);
    channel?.postMessage('changed');
  }

  return {
    async read(at: number): Promise<RecordsRead<Of>> {
      try {
        const transaction = (await database()).transaction([place, ASIDE], 'readwrite');
        // A fault on the way is told by the request that it came from.
        transaction.done.catch(() => undefined);
        const stored: unknown[] = await transaction.objectStore(place).getAll();
        const aside: unknown[] = await transaction.objectStore(ASIDE).getAll();
        const left = behind.look();
        const late = [...aside, ...left.flatMap((one) => one.records)];
        const records = new Map<string, Of>();
        const damaged: unknown[] = [];
        for (const one of [...stored, ...late]) {
          const record = readOne(one);
          if (record === undefined) {
            damaged.push(one);
            continue;
          }
          const there = records.get(record.id);
          records.set(record.id, there ? merge(there, record) : record);
        }
        const marks: Of[] = [];
        for (const [id, record] of records) {
          if (!isDeleted(record) || record.deleted.at >= at - UNDO_MS) continue;
          const mark = markOnly(record);
          if (isSame(mark, record)) continue;
          records.set(id, mark);
          marks.push(mark);
        }
        const changed = late.length > 0 ? [...records.values()] : marks;
        await Promise.all(changed.map((record) => transaction.objectStore(place).put(record)));
        for (const key of await transaction.objectStore(ASIDE).getAllKeys()) {
          if (readOne(await transaction.objectStore(ASIDE).get(key)))
            await transaction.objectStore(ASIDE).delete(key);
        }
        await transaction.done;
        behind.clear(left.filter((one) => one.records.every(readOne)));
        return { status: 'ok', records: [...records.values()], damaged };
      } catch (error) {
        return { status: storeStatus(error), records: [], damaged: [] };
      }
    },

    write: (records: readonly Of[]): Promise<StoreStatus> => whole(() => write(records)),
    restore: (written: readonly Written<Of>[]): Promise<StoreStatus> =>
      whole(() => restore(written)),

    /** In the moment of leaving: without waiting for anything. */
    leave(records: readonly Of[]): void {
      if (records.length === 0 || behind.put(records)) return;
      const open = now();
      if (open === undefined) return;
      try {
        const transaction = open.transaction(ASIDE, 'readwrite', { durability: 'strict' });
        for (const record of records) void transaction.store.add(record).catch(() => undefined);
        transaction.commit();
        transaction.done.catch(() => undefined);
      } catch {
        // The page is going; what was stored a moment ago stands.
      }
    },

    /** Calls back when another tab has written. */
    watch(listener: () => void): () => void {
      channel?.addEventListener('message', listener);
      return () => channel?.removeEventListener('message', listener);
    },

    async close(): Promise<void> {
      await close();
      channel?.close();
    },
  };
}
export type RecordStore<Of extends Kept> = ReturnType<typeof recordStore<Of>>;
