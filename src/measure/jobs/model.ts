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
import { keptRecords, type Taken } from '../../storage/kept-records.ts';
import { bringSheets } from '../../storage/sheets/bring-sheets.ts';
import { isSheetDeleted } from '../../storage/sheets/own-sheet.ts';
import type { SheetStore } from '../../storage/sheets/sheet-store.ts';

interface Needs {
  readonly store: Pick<JobStore, 'read' | 'write' | 'leave' | 'watch'>;
  /** Where the transmissions lie that jobs run on. */
  readonly sheets: Pick<SheetStore, 'read' | 'write'>;
  readonly now?: () => number;
}

const fold = (text: string): string => text.normalize('NFKD').toLocaleLowerCase();

/** The jobs of this device, as this page has them. */
/** What came of the sheets in a file of jobs. */
export interface SheetsTaken {
  readonly added: number;
  readonly damaged: number;
  readonly sameName: readonly string[];
  /** The browser did not keep them. */
  readonly unkept: boolean;
}

const TRAINING: readonly string[] = ['training', 'second'];

export function makeJobs({ store, sheets, now = Date.now }: Needs) {
  const kept = keptRecords<Job>({
    store,
    file: jobFile,
    merge,
    isDeleted,
    withDeleted,
    now,
  });
  const { all, standing, change } = kept;
  const query = signal('');

  return {
    ...kept,
    query,
    job: (id: string): Job | undefined => all.value.get(id),
    /** Those that stand, changed last first; with a search, those that have all its words. */
    listed: computed(() => {
      const words = fold(query.value).split(/\s+/).filter(Boolean);
      return standing.value
        .filter(({ label, complaint, notes, repair }) => {
          const texts = [label, complaint, notes, repair].map(({ value }) => value);
          const text = fold(texts.join(' '));
          return words.every((word) => text.includes(word));
        })
        .sort((a, b) => changedAt(b) - changedAt(a));
    }),
    count: computed(() => standing.value.length),
    add: (label: string): Job => {
      const at = now();
      const job = newJob(timedId(at), at, label);
      change(job, 'now');
      return job;
    },
    /** All jobs as a file, with the sheets that they run on, and how many of those are not here. */
    file: async (): Promise<{ readonly text: string; readonly missing: number }> => {
      const on = new Set(standing.peek().map(({ transmission }) => transmission.value));
      const wanted = [...on].filter((id) => !TRAINING.includes(id));
      const { records } = await sheets.read(now());
      const there = records.filter((sheet) => wanted.includes(sheet.id) && !isSheetDeleted(sheet));
      return {
        text: jobFile.write([...all.peek().values()], there),
        missing: wanted.length - there.length,
      };
    },
    /** Takes a file in, first the sheets and then the jobs that run on them. */
    take: async (text: string): Promise<Taken & { readonly sheets?: SheetsTaken }> => {
      const read = jobFile.read(text);
      if (!read.ok) return read;
      const here = await sheets.read(now());
      const brought = bringSheets(here.records, read.sheets, now());
      const status = brought.sheets.length === 0 ? 'ok' : await sheets.write(brought.sheets);
      const records = read.records.map((job) => {
        const value = brought.instead.get(job.transmission.value);
        return value === undefined ? job : { ...job, transmission: { ...job.transmission, value } };
      });
      const taken = await kept.takeIn(records, read.unreadable);
      return {
        ...taken,
        sheets: {
          added: brought.added,
          damaged: read.damagedSheets,
          sameName: brought.sameName,
          unkept: read.sheets.length > 0 && (status !== 'ok' || here.status !== 'ok'),
        },
      };
    },
    write: (job: Job, entry: TextOf, value: string): void => {
      if (job[entry].value !== value) change({ ...job, [entry]: dated(job[entry], now(), value) });
    },
  };
}
export type JobsModel = ReturnType<typeof makeJobs>;
