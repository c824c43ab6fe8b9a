import { computed, signal } from '@preact/signals';
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
import { jobFile } from '../../storage/jobs/job-file.ts';
import type { JobStore } from '../../storage/jobs/job-store.ts';
import { keptRecords } from '../../storage/kept-records.ts';

interface Needs {
  readonly store: Pick<JobStore, 'read' | 'write' | 'leave' | 'watch'>;
  readonly now?: () => number;
}

const fold = (text: string): string => text.normalize('NFKD').toLocaleLowerCase();

/** The jobs of this device, as this page has them. */
export function makeJobs({ store, now = Date.now }: Needs) {
  const kept = keptRecords<Job>({
    store,
    file: jobFile,
    merge,
    isDeleted,
    withDeleted,
    now,
  });
  const { all, standing, undo, change } = kept;
  const query = signal('');

  return {
    ...kept,
    query,
    job: (id: string): Job | undefined => all.value.get(id),
    /** Those that stand, changed last first; with a search, those that have all its words. */
    listed: computed(() => {
      const words = fold(query.value).split(/\s+/).filter(Boolean);
      return standing.value
        .filter(({ label, notes, repair }) => {
          const text = fold(`${label.value} ${notes.value} ${repair.value}`);
          return words.every((word) => text.includes(word));
        })
        .sort((a, b) => changedAt(b) - changedAt(a));
    }),
    count: computed(() => standing.value.length),
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
  };
}
export type JobsModel = ReturnType<typeof makeJobs>;
