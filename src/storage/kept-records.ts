import { computed, signal } from '@preact/signals';
import type { StoreStatus } from './connection.ts';
import type { FileFault, RecordFile } from './kept-file.ts';
import type { Kept, RecordStore } from './record-store.ts';

/** Between the last key and the store. */
const QUIET_MS = 300;

interface Needs<Of extends Kept> {
  readonly store: Pick<RecordStore<Of>, 'read' | 'write' | 'leave' | 'watch'>;
  readonly file: {
    readonly write: (records: readonly Of[]) => string;
    readonly read: RecordFile<Of>['read'];
  };
  readonly merge: (a: Of, b: Of) => Of;
  readonly isDeleted: (record: Of) => boolean;
  readonly withDeleted: (record: Of, now: number, deleted: boolean) => Of;
  readonly now: () => number;
}

/** What came of a file that was to be taken in. */
export type Taken =
  | {
      readonly ok: true;
      readonly added: number;
      readonly changed: number;
      readonly unreadable: number;
    }
  | { readonly ok: false; readonly fault: FileFault };

/** The records of one kind on this device, as this page has them; what it changes is on its way to the store a moment later. */
export function keptRecords<Of extends Kept>(needs: Needs<Of>) {
  const { store, file, merge, isDeleted, withDeleted, now } = needs;
  const all = signal<ReadonlyMap<string, Of>>(new Map());
  const loaded = signal(false);
  const fault = signal<Exclude<StoreStatus, 'ok'> | null>(null);
  const damaged = signal<readonly unknown[]>([]);
  /** Ids of what was deleted in this page, the last one first. */
  const deleted = signal<readonly string[]>([]);
  const dirty = new Set<string>();
  /** What is being written: a page that goes meanwhile takes the half of it along. */
  const onTheWay = new Set<readonly Of[]>();
  let timer: ReturnType<typeof setTimeout> | undefined;

  const told = (status: StoreStatus): void => {
    fault.value = status === 'ok' ? null : status;
  };
  const put = (records: readonly Of[]): void => {
    const next = new Map(all.peek());
    for (const record of records) {
      const there = next.get(record.id);
      next.set(record.id, there ? merge(there, record) : record);
    }
    all.value = next;
  };
  const named = (ids: Iterable<string>): Of[] =>
    [...ids].flatMap((id) => {
      const record = all.peek().get(id);
      return record ? [record] : [];
    });

  async function keep(): Promise<void> {
    clearTimeout(timer);
    timer = undefined;
    const records = named(dirty);
    if (records.length === 0) return;
    dirty.clear();
    onTheWay.add(records);
    const status = await store.write(records);
    onTheWay.delete(records);
    told(status);
    // Tried again with the next change; until then the page has it.
    if (status !== 'ok') for (const { id } of records) dirty.add(id);
  }

  function change(record: Of, at: 'soon' | 'now' = 'soon'): void {
    put([record]);
    dirty.add(record.id);
    clearTimeout(timer);
    if (at === 'now') void keep();
    else timer = setTimeout(() => void keep(), QUIET_MS);
  }

  async function load(): Promise<void> {
    const read = await store.read(now());
    if (read.status === 'ok') {
      put(read.records);
      damaged.value = read.damaged;
    } else told(read.status);
    loaded.value = true;
  }

  /** Takes records in, entry by entry; nothing that is newer here is lost. */
  async function takeIn(records: readonly Of[], unreadable: number): Promise<Taken> {
    const before = all.peek();
    const added = records.filter((one) => !before.has(one.id) && !isDeleted(one)).length;
    put(records);
    const changed = records.filter((one) => {
      const there = before.get(one.id);
      return there && JSON.stringify(there) !== JSON.stringify(all.peek().get(one.id));
    }).length;
    for (const { id } of records) dirty.add(id);
    await keep();
    return { ok: true, added, changed, unreadable };
  }

  return {
    all,
    /** Those that are not deleted. */
    standing: computed(() => [...all.value.values()].filter((record) => !isDeleted(record))),
    loaded,
    fault,
    damaged,
    /** What was deleted in this page and can come back until it is left, the last one first. */
    gone: computed(() => deleted.value.flatMap((id) => all.value.get(id) ?? []).filter(isDeleted)),
    load,
    keep,
    change,
    leave: (): void => {
      const sent = [...onTheWay].flatMap((records) => records.map(({ id }) => id));
      store.leave(named(new Set([...dirty, ...sent])));
    },
    watch: (): (() => void) => store.watch(() => void load()),
    remove: (record: Of): void => {
      deleted.value = [...new Set([record.id, ...deleted.peek()])];
      change(withDeleted(record, now(), true), 'now');
    },
    bringBack: (record: Of): void => change(withDeleted(record, now(), false), 'now'),
    file: (): string => file.write([...all.peek().values()]),
    takeIn,
    /** Takes a file in. */
    take: async (text: string): Promise<Taken> => {
      const read = file.read(text);
      return read.ok ? takeIn(read.records, read.unreadable) : read;
    },
  };
}
