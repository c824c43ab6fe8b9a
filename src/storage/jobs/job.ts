/** A job is a handful of entries. Whatever changes a job writes entries and never the whole; see dated.ts. */
import { later, laterOfEach, neverDated, type Dated } from '../dated.ts';

export { dated, timedId, type Dated } from '../dated.ts';

/** A reading of a job, as it was typed and as it was understood. */
export interface JobReading {
  readonly test: string;
  readonly phase: 'before' | 'after';
  /** Metric; null: the turbine did not stop. Or what was seen, or the codes stored. */
  readonly value: number | null | string | readonly string[];
  /** As typed, with the units that the page had then; empty where nothing was typed. */
  readonly typed: string;
  readonly units: 'us' | 'si';
  /** Of the fluid, where it was read [°C]. */
  readonly temperatureC?: number;
}

/** What stands in the form, unfinished. */
export interface JobDraft {
  readonly test: string;
  readonly text: string;
  readonly temperature: string;
  readonly never: boolean;
  readonly codes: readonly string[];
  readonly outcome: string;
  readonly phase: 'before' | 'after';
  /** The reading that is being changed; empty for a new one. */
  readonly of: string;
}

export interface Job {
  readonly id: string;
  /** [ms of Unix time] */
  readonly created: number;
  readonly label: Dated<string>;
  /** What the car is here for, in the customer's words. */
  readonly complaint: Dated<string>;
  readonly notes: Dated<string>;
  readonly repair: Dated<string>;
  readonly draft: Dated<JobDraft | null>;
  /** Which transmission the planner reasons about: the id of a sheet of one's own, or the name of a training one. */
  readonly transmission: Dated<string>;
  /** By id; null: taken out. */
  readonly readings: Readonly<Record<string, Dated<JobReading | null>>>;
  /** True: deleted; the mark stays so that an older copy does not bring it back. */
  readonly deleted: Dated<boolean>;
}

/** Text entries of a job. */
export type TextOf = 'label' | 'complaint' | 'notes' | 'repair';

export function newJob(id: string, at: number, label: string): Job {
  return {
    id,
    created: at,
    label: { at, value: label },
    complaint: neverDated(''),
    notes: neverDated(''),
    repair: neverDated(''),
    draft: neverDated(null),
    transmission: neverDated('training'),
    readings: {},
    deleted: neverDated(false),
  };
}

/** When anything of it was last changed, its deletion apart. What stands unfinished in the form counts. */
export const changedAt = ({
  label,
  complaint,
  notes,
  repair,
  draft,
  transmission,
  readings,
}: Job): number =>
  Math.max(
    label.at,
    complaint.at,
    notes.at,
    repair.at,
    draft.at,
    transmission.at,
    ...Object.values(readings).map(({ at }) => at),
  );

/** A change after the deletion, in another tab or on another device, brings a job back: nobody loses work. */
export const isDeleted = (job: Job): boolean =>
  job.deleted.value && job.deleted.at >= changedAt(job);

/** Two copies of one job as one. */
export function merge(a: Job, b: Job): Job {
  return {
    id: a.id,
    created: Math.min(a.created, b.created),
    label: later(a.label, b.label),
    complaint: later(a.complaint, b.complaint),
    notes: later(a.notes, b.notes),
    repair: later(a.repair, b.repair),
    draft: later(a.draft, b.draft),
    readings: laterOfEach(a.readings, b.readings),
    transmission: later(a.transmission, b.transmission),
    deleted: later(a.deleted, b.deleted),
  };
}

/** With the mark of a deletion, later than every change. */
export const withDeleted = (job: Job, now: number, value: boolean): Job => ({
  ...job,
  deleted: {
    at: Math.max(now, changedAt(job) + 1, job.deleted.at + 1),
    value,
  },
});

/** Of a deleted job nothing is kept but that it is. */
export const markOnly = ({ id, created, deleted }: Job): Job => ({
  ...newJob(id, created, ''),
  label: neverDated(''),
  deleted,
});

/** Readings that stand, in the order in which they were added: an id begins with its time. */
export const readingsOf = (job: Job): readonly (JobReading & { readonly id: string })[] =>
  Object.entries(job.readings)
    .flatMap(([id, { value }]) => (value === null ? [] : [{ ...value, id }]))
    .sort((a, b) => (a.id < b.id ? -1 : 1));

/** When a reading was entered [ms of Unix time], which its id begins with; undefined for an id from elsewhere that does not. */
export const enteredAt = (id: string): number | undefined =>
  /^[0-9a-z]{9}-/.test(id) ? Number.parseInt(id.slice(0, 9), 36) : undefined;
