/** Fetched when somebody puts the readings of a log into a job. */
import { readQuestion } from '../../diagnosis/index.ts';
import type { DiagnosisReading } from '../../log/readings.ts';
import {
  isDeleted,
  newJob,
  timedId,
  type Dated,
  type Job,
  type JobReading,
} from '../../storage/jobs/job.ts';
import { jobStore } from '../../storage/jobs/job-store.ts';
import type { StoreStatus } from '../../storage/connection.ts';
import { labelOf } from '../jobs/label-of.ts';

/** A job of this device, and what it is called on a page. */
export interface NamedJob {
  readonly job: Job;
  readonly name: string;
}

export async function standingJobs(): Promise<readonly NamedJob[]> {
  const store = jobStore();
  const { records } = await store.read(Date.now());
  await store.close();
  return records.filter((job) => !isDeleted(job)).map((job) => ({ job, name: labelOf(job) }));
}

/** A job with the readings of a log added, each once for each time. */
export function withReadings(job: Job, readings: readonly DiagnosisReading[], now: number): Job {
  const read = readQuestion({ readings });
  if ('error' in read) throw new Error(`${read.path}: ${read.error}`);
  const entries = read.readings.map(
    ({ test, value, temperatureC }, i): [string, Dated<JobReading>] => [
      timedId(now + i),
      {
        at: now,
        value: {
          test: test.id,
          phase: 'before',
          value,
          typed: '',
          units: 'si',
          ...(temperatureC !== undefined && { temperatureC }),
        },
      },
    ],
  );
  return { ...job, readings: { ...job.readings, ...Object.fromEntries(entries) } };
}

/** Puts readings into a job of this device, or into a new one of that label. */
export async function putIntoJob(
  into: Job | string,
  readings: readonly DiagnosisReading[],
  now = Date.now(),
): Promise<{ readonly status: StoreStatus; readonly id: string }> {
  const job = typeof into === 'string' ? newJob(timedId(now), now, into) : into;
  const store = jobStore();
  const status = await store.write([withReadings(job, readings, now)]);
  await store.close();
  return { status, id: job.id };
}
