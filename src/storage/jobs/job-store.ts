/** The jobs of a device in IndexedDB. Every fault is a status and none is thrown. */
import { connection, storeStatus, type StoreStatus } from '../connection.ts';
import { isDeleted, markOnly, merge, type Job } from './job.ts';
import { readJob } from './job-form.ts';

const JOBS = 'jobs';
/** What was written in the moment of leaving, when there is no time to look first: merged in at the next look. */
const ASIDE = 'aside';
const NAME = 'hot-clutch:jobs';
/** So long after its deletion only the mark of a job is kept: until then it can be undone. */
const UNDO_MS = 3_600_000;

export interface JobsRead {
  readonly status: StoreStatus;
  /** Marks of deletions as well. */
  readonly jobs: readonly Job[];
  /** What lies there and is no job, as it lies there. It is left alone. */
  readonly damaged: readonly unknown[];
}

export function jobStore(name = NAME) {
  const { database, now, whole, close } = connection({
    name,
    version: 1,
    upgrade: (opened) => {
      opened.createObjectStore(JOBS, { keyPath: 'id' });
      opened.createObjectStore(ASIDE, { autoIncrement: true });
    },
  });
  const channel = typeof BroadcastChannel === 'undefined' ? undefined : new BroadcastChannel(name);

  /** Brings jobs and what lies in the store together, in one transaction: another tab comes before it or after it. */
  async function write(jobs: readonly Job[]): Promise<void> {
    const transaction = (await database()).transaction([JOBS, ASIDE], 'readwrite', {
      durability: 'strict',
    });
    const put = async (job: Job): Promise<void> => {
      const raw: unknown = await transaction.objectStore(JOBS).get(job.id);
      const there = readJob(raw);
      // What cannot be read is never written over: it may be somebody's work.
      if (raw !== undefined && there === undefined) await transaction.objectStore(ASIDE).add(raw);
      await transaction.objectStore(JOBS).put(there ? merge(there, job) : job);
    };
    await Promise.all([...jobs.map(put), transaction.done]);
    channel?.postMessage('changed');
  }

  return {
    async read(at: number): Promise<JobsRead> {
      try {
        const transaction = (await database()).transaction([JOBS, ASIDE], 'readwrite');
        const stored: unknown[] = await transaction.objectStore(JOBS).getAll();
        const aside: unknown[] = await transaction.objectStore(ASIDE).getAll();
        const jobs = new Map<string, Job>();
        const damaged: unknown[] = [];
        for (const one of [...stored, ...aside]) {
          const job = readJob(one);
          if (job === undefined) {
            damaged.push(one);
            continue;
          }
          const there = jobs.get(job.id);
          jobs.set(job.id, there ? merge(there, job) : job);
        }
        for (const [id, job] of jobs) {
          if (isDeleted(job) && job.deleted.at < at - UNDO_MS) jobs.set(id, markOnly(job));
        }
        const changed =
          aside.length > 0 ? [...jobs.values()] : [...jobs.values()].filter(isDeleted);
        await Promise.all(changed.map((job) => transaction.objectStore(JOBS).put(job)));
        for (const key of await transaction.objectStore(ASIDE).getAllKeys()) {
          if (readJob(await transaction.objectStore(ASIDE).get(key)))
            await transaction.objectStore(ASIDE).delete(key);
        }
        await transaction.done;
        return { status: 'ok', jobs: [...jobs.values()], damaged };
      } catch (error) {
        return { status: storeStatus(error), jobs: [], damaged: [] };
      }
    },

    write: (jobs: readonly Job[]): Promise<StoreStatus> => whole(() => write(jobs)),

    /** In the moment of leaving: sent off whole, without waiting for anything. */
    leave(jobs: readonly Job[]): void {
      const open = now();
      if (open === undefined || jobs.length === 0) return;
      try {
        const transaction = open.transaction(ASIDE, 'readwrite', { durability: 'strict' });
        for (const job of jobs) void transaction.store.add(job).catch(() => undefined);
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
export type JobStore = ReturnType<typeof jobStore>;
