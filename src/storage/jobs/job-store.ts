/** The jobs of a device in IndexedDB, by the library `idb`. Every fault is a status and none is thrown. */
import { openDB, type IDBPDatabase } from 'idb';
import { logStatus, type LogStatus } from '../answer-log.ts';
import { isDeleted, markOnly, merge, type Job } from './job.ts';
import { readJob } from './job-form.ts';

const JOBS = 'jobs';
/** What was written in the moment of leaving, when there is no time to look first: merged in at the next look. */
const ASIDE = 'aside';
const NAME = 'hot-clutch:jobs';
const PATIENCE_MS = 8000;
/** So long after its deletion only the mark of a job is kept: until then it can be undone. */
const UNDO_MS = 3_600_000;

export interface JobsRead {
  readonly status: LogStatus;
  /** Marks of deletions as well. */
  readonly jobs: readonly Job[];
  /** What lies there and is no job, as it lies there. It is left alone. */
  readonly damaged: readonly unknown[];
}

class Late extends Error {
  // What logStatus calls a log that another tab holds.
  override name = 'Busy';
}

export function jobStore(name = NAME) {
  let opening: Promise<IDBPDatabase> | undefined;
  let open: IDBPDatabase | undefined;
  const channel = typeof BroadcastChannel === 'undefined' ? undefined : new BroadcastChannel(name);

  const forget = (): void => {
    opening = undefined;
    open = undefined;
  };
  async function connect(): Promise<IDBPDatabase> {
    const opened = openDB(name, 1, {
      upgrade: (database) => {
        database.createObjectStore(JOBS, { keyPath: 'id' });
        database.createObjectStore(ASIDE, { autoIncrement: true });
      },
      // A newer tab wants to upgrade: out of its way.
      blocking: (_from, _to, event) => {
        (event.target as IDBDatabase).close();
        forget();
      },
      terminated: forget,
    }).then((database) => {
      open = database;
      return database;
    });
    // After the opening, which a browser without a store refuses at once: nothing is then left to be late.
    let timer: ReturnType<typeof setTimeout> | undefined;
    const late = new Promise<never>((_done, fail) => {
      timer = setTimeout(() => fail(new Late()), PATIENCE_MS);
    });
    try {
      return await Promise.race([opened, late]);
    } finally {
      clearTimeout(timer);
    }
  }
  function database(): Promise<IDBPDatabase> {
    opening ??= connect().catch((error: unknown) => {
      forget();
      throw error;
    });
    return opening;
  }

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
    async read(now: number): Promise<JobsRead> {
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
          if (isDeleted(job) && job.deleted.at < now - UNDO_MS) jobs.set(id, markOnly(job));
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
        return { status: statusOf(error), jobs: [], damaged: [] };
      }
    },

    async write(jobs: readonly Job[]): Promise<LogStatus> {
      try {
        await write(jobs).catch(async (error: unknown) => {
          // The browser closed the connection behind our back, and nothing was written.
          if (!(error instanceof Error) || error.name !== 'InvalidStateError') throw error;
          forget();
          await write(jobs);
        });
        return 'ok';
      } catch (error) {
        return statusOf(error);
      }
    },

    /** In the moment of leaving: sent off whole, without waiting for anything. */
    leave(jobs: readonly Job[]): void {
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
      const opened = await opening?.catch(() => undefined);
      forget();
      opened?.close();
      channel?.close();
    },
  };
}
export type JobStore = ReturnType<typeof jobStore>;

const statusOf = (error: unknown): LogStatus => (error instanceof Late ? 'busy' : logStatus(error));
