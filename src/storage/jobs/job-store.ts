/** The jobs of a device. */
import type { StoreStatus } from '../connection.ts';
import { recordStore } from '../record-store.ts';
import { isDeleted, markOnly, merge, type Job } from './job.ts';
import { readJob } from './job-form.ts';

const NAME = 'hot-clutch:jobs';

export interface JobsRead {
  readonly status: StoreStatus;
  /** Marks of deletions as well. */
  readonly jobs: readonly Job[];
  /** What lies there and is no job, as it lies there. It is left alone. */
  readonly damaged: readonly unknown[];
}

export function jobStore(name = NAME) {
  const store = recordStore<Job>(name, {
    place: 'jobs',
    read: readJob,
    merge,
    isDeleted,
    markOnly,
  });
  return {
    ...store,
    async read(at: number): Promise<JobsRead> {
      const { status, records, damaged } = await store.read(at);
      return { status, jobs: records, damaged };
    },
  };
}
export type JobStore = ReturnType<typeof jobStore>;
