/** Jobs as a file. */
import { recordFile } from '../kept-file.ts';
import type { Job } from './job.ts';
import { readJob } from './job-form.ts';

export const jobFile = recordFile<Job>({
  kind: 'hot-clutch:jobs',
  version: 1,
  place: 'jobs',
  read: readJob,
});
