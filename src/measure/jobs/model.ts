import { computed, signal } from '@preact/signals';
import type { StoreStatus } from '../../storage/connection.ts';
import {
  changedAt,
  dated,
  isDeleted,
  merge,
  newJob,
  timedId,
  withDeleted,
  type Job,
  type TextOf,
} from '../../storage/jobs/job.ts';
import { fileOf, readFile, type FileFault } from '../../storage/jobs/job-file.ts';
import type { JobStore } from '../../storage/jobs/job-store.ts';

/** Between the last key and the store. */
const QUIET_MS = 300;

export type Taken =
  | {
      readonly ok: true;
      readonly added: number;
      readonly changed: number;
      readonly unreadable: number;
    }
  | { readonly ok: false; readonly fault: FileFault };

interface Needs {
  readonly store: Pick<JobStore, 'read' | 'write' | 'leave' | 'watch'>;
  readonly now?: () => number;
}

const fold = (text: string): string => text.normalize('NFKD').toLocaleLowerCase();

/** The jobs of this device, as this page has them; what it changes is on its way to the store a moment later. */
export function makeJobs({ store, now = Date.now }: Needs) {
  const all = signal<ReadonlyMap<string, Job>>(new Map());
  const loaded = signal(false);
  const fault = signal<Exclude<StoreStatus, 'ok'> | null>(null);
  const damaged = signal<readonly unknown[]>([]);
  const query = signal('');
  /** Deleted in this page a moment ago: what undo brings back. */
  const undo = signal<Job | null>(null);
  const dirty = new Set<string>();
  let timer: ReturnType<typeof setTimeout> | undefined;

  const told = (status: StoreStatus): void => {
    fault.value = status === 'ok' ? null : status;
  };
  const put = (jobs: readonly Job[]): void => {
    const next = new Map(all.peek());
    for (const job of jobs) {
      const there = next.get(job.id);
      next.set(job.id, there ? merge(there, job) : job);
    }
    all.value = next;
  };
  const waiting = (): Job[] =>
    [...dirty].flatMap((id) => {
      const job = all.peek().get(id);
      return job ? [job] : [];
    });

  async function keep(): Promise<void> {
    clearTimeout(timer);
    timer = undefined;
    const jobs = waiting();
    if (jobs.length === 0) return;
    dirty.clear();
    const status = await store.write(jobs);
    told(status);
    // Tried again with the next change; until then the page has it.
    if (status !== 'ok') for (const { id } of jobs) dirty.add(id);
  }

  function change(job: Job, at: 'soon' | 'now' = 'soon'): void {
    put([job]);
    dirty.add(job.id);
    clearTimeout(timer);
    if (at === 'now') void keep();
    else timer = setTimeout(() => void keep(), QUIET_MS);
  }

  async function load(): Promise<void> {
    const read = await store.read(now());
    if (read.status === 'ok') {
      put(read.jobs);
      damaged.value = read.damaged;
    } else told(read.status);
    loaded.value = true;
  }

  return {
    loaded,
    fault,
    damaged,
    query,
    undo,
    load,
    keep,
    leave: (): void => store.leave(waiting()),
    watch: (): (() => void) => store.watch(() => void load()),
    job: (id: string): Job | undefined => all.value.get(id),
    /** Those that stand, changed last first; with a search, those that have all its words. */
    listed: computed(() => {
      const words = fold(query.value).split(/\s+/).filter(Boolean);
      return [...all.value.values()]
        .filter((job) => !isDeleted(job))
        .filter(({ label, notes, repair }) => {
          const text = fold(`${label.value} ${notes.value} ${repair.value}`);
          return words.every((word) => text.includes(word));
        })
        .sort((a, b) => changedAt(b) - changedAt(a));
    }),
    count: computed(() => [...all.value.values()].filter((job) => !isDeleted(job)).length),
    change,
    add: (label: string): Job => {
      const at = now();
      const job = newJob(timedId(at), at, label);
      undo.value = null;
      change(job, 'now');
      return job;
    },
    write: (job: Job, entry: TextOf, value: string): void => {
      if (job[entry].value !== value) change({ ...job, [entry]: dated(job[entry], now(), value) });
    },
    remove: (job: Job): void => {
      undo.value = job;
      change(withDeleted(job, now(), true), 'now');
    },
    bringBack: (): void => {
      const job = all.peek().get(undo.peek()?.id ?? '');
      undo.value = null;
      if (job) change(withDeleted(job, now(), false), 'now');
    },
    file: (): string => fileOf([...all.peek().values()]),
    /** Takes a file in, entry by entry; nothing that is newer here is lost. */
    take: async (text: string): Promise<Taken> => {
      const read = readFile(text);
      if (!read.ok) return read;
      const { jobs, unreadable } = read;
      const before = all.peek();
      const added = jobs.filter((job) => !before.has(job.id) && !isDeleted(job)).length;
      put(jobs);
      const changed = jobs.filter((job) => {
        const there = before.get(job.id);
        return there && JSON.stringify(there) !== JSON.stringify(all.peek().get(job.id));
      }).length;
      for (const { id } of jobs) dirty.add(id);
      await keep();
      return { ok: true, added, changed, unreadable };
    },
  };
}
export type JobsModel = ReturnType<typeof makeJobs>;
