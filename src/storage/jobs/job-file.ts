/** Jobs as a file. */
import { recordFile, type FileFault } from '../kept-file.ts';
import type { Job } from './job.ts';
import { readJob } from './job-form.ts';

export type { FileFault } from '../kept-file.ts';
export type FileRead =
  | { readonly ok: true; readonly jobs: readonly Job[]; readonly unreadable: number }
  | { readonly ok: false; readonly fault: FileFault };

const file = recordFile<Job>({
  kind: 'hot-clutch:jobs',
  version: 1,
  place: 'jobs',
  read: readJob,
});

export const fileOf = file.write;

export function readFile(given: string): FileRead {
  const read = file.read(given);
  return read.ok ? { ok: true, jobs: read.records, unreadable: read.unreadable } : read;
}
