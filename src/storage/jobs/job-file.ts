/** Jobs as a file, with the sheets of one's own that they run on: without those another device cannot work on them. */
import { recordFile, type RecordsInFile } from '../kept-file.ts';
import type { OwnSheet } from '../sheets/own-sheet.ts';
import { readOwnSheet } from '../sheets/sheet-form.ts';
import type { Job } from './job.ts';
import { readJob } from './job-form.ts';

const jobs = recordFile<Job>({
  kind: 'hot-clutch:jobs',
  // 2: with the complaint.
  version: 2,
  place: 'jobs',
  read: readJob,
});
/** A site that does not know of it reads past it. */
const SHEETS = 'transmissions';

export interface SheetsInFile {
  readonly sheets: readonly OwnSheet[];
  /** How many could not be read. */
  readonly damagedSheets: number;
}

function sheetsIn(text: string): SheetsInFile {
  const { [SHEETS]: list = [] } = JSON.parse(text) as Readonly<Record<string, unknown>>;
  if (!Array.isArray(list)) return { sheets: [], damagedSheets: 1 };
  const all = (list as unknown[]).map(readOwnSheet);
  const sheets = all.filter((sheet) => sheet !== undefined);
  return { sheets, damagedSheets: all.length - sheets.length };
}

export const jobFile = {
  write: (records: readonly Job[], sheets: readonly OwnSheet[] = []): string =>
    jobs.write(records, sheets.length === 0 ? {} : { [SHEETS]: sheets }),
  read: (
    text: string,
  ): (RecordsInFile<Job> & { ok: false }) | (RecordsInFile<Job> & { ok: true } & SheetsInFile) => {
    const read = jobs.read(text);
    return read.ok ? { ...read, ...sheetsIn(text.replace(/^\ufeff/, '')) } : read;
  },
};
