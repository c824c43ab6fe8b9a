/** The jobs of a device. */
import { recordStore } from '../record-store.ts';
import { isDeleted, markOnly, merge, type Job } from './job.ts';
import { readJob } from './job-form.ts';

const NAME = 'hot-clutch:jobs';

export const jobStore = (name = NAME) =>
  recordStore<Job>(name, { place: 'jobs', read: readJob, merge, isDeleted, markOnly });
export type JobStore = ReturnType<typeof jobStore>;
