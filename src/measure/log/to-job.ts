/** Fetched when somebody puts the readings of a log into a job. */
import { readQuestion } from '../../diagnosis/index.ts';
import type { DiagnosisReading } from '../../log/readings.ts';
import {
  isDeleted,
  newJob,
  readingsOf,
  timedId,
  type Dated,
  type Job,
  type JobReading,
} from '../../storage/jobs/job.ts';
import { jobStore } from '../../storage/jobs/job-store.ts';
import type { StoreStatus } from '../../storage/connection.ts';
import { labelOf } from '../jobs/label-of.ts';

/** The readings of a log as a job keeps them. */
export function asKept(readings: readonly DiagnosisReading[]): readonly JobReading[] {
  const read = readQuestion({ readings });
  if ('error' in read) throw new Error(`${read.path}: ${read.error}`);
  return read.readings.map(({ test, value, temperatureC }) => ({
    test: test.id,
    phase: 'before',
    value,
    typed: '',
    units: 'si',
    ...(temperatureC !== undefined && { temperatureC }),
  }));
}

/** What tells that a reading is this one out of a log: nobody typed it. Where it stands in the job since is all the same. */
const markOf = ({ test, value, typed, temperatureC }: JobReading): string =>
  JSON.stringify([test, value, typed, temperatureC]);

/** Those that do not stand in a job yet; of two alike in the log both have to stand there. */
function missingIn(job: Job, kept: readonly JobReading[]): readonly JobReading[] {
  const there = readingsOf(job).map(markOf);
  return kept.filter((one) => {
    const place = there.indexOf(markOf(one));
    if (place >= 0) there.splice(place, 1);
    return place < 0;
  });
}

/** A job of this device, what it is called on a page, and how many readings of the log stand in it. */
export interface Standing {
  readonly job: Job;
  readonly name: string;
  readonly here: number;
}

export const standingOf = (job: Job, kept: readonly JobReading[]): Standing => ({
  job,
  name: labelOf(job),
  here: kept.length - missingIn(job, kept).length,
});

export async function standingJobs(
  readings: readonly DiagnosisReading[],
): Promise<readonly Standing[]> {
  const store = jobStore();
  const { records } = await store.read(Date.now());
  await store.close();
  const kept = asKept(readings);
  return records.filter((job) => !isDeleted(job)).map((job) => standingOf(job, kept));
}

/** A job with the readings of a log added that do not stand in it yet. */
export function withReadings(job: Job, readings: readonly DiagnosisReading[], now: number): Job {
  const entries = missingIn(job, asKept(readings)).map((value, i): [string, Dated<JobReading>] => [
    timedId(now + i),
    { at: now, value },
  ]);
  return { ...job, readings: { ...job.readings, ...Object.fromEntries(entries) } };
}

/** Puts readings into a job of this device, or into a new one of that label. */
export async function putIntoJob(
  into: Job | string,
  readings: readonly DiagnosisReading[],
  now = Date.now(),
): Promise<StoreStatus> {
  const job = typeof into === 'string' ? newJob(timedId(now), now, into) : into;
  const store = jobStore();
  const status = await store.write([withReadings(job, readings, now)]);
  await store.close();
  return status;
}
