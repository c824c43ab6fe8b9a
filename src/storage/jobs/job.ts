/**
 * A job is a handful of entries, each with the time of its last change. Whatever changes a job writes entries and never the
 * whole; two copies are brought together entry by entry, the later one wins. So two tabs, two devices and a file
 * can meet in any order and come to the same.
 */

/** Something, and when it was last changed [ms of Unix time]. */
export interface Dated<Value> {
  readonly at: number;
  readonly value: Value;
}

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
  readonly notes: Dated<string>;
  readonly repair: Dated<string>;
  readonly draft: Dated<JobDraft | null>;
  /** By id; null: taken out. */
  readonly readings: Readonly<Record<string, Dated<JobReading | null>>>;
  /** True: deleted; the mark stays so that an older copy does not bring it back. */
  readonly deleted: Dated<boolean>;
}

/** Text entries of a job. */
export type TextOf = 'label' | 'notes' | 'repair';

const never = <Value>(value: Value): Dated<Value> => ({ at: 0, value });

export function newJob(id: string, at: number, label: string): Job {
  return {
    id,
    created: at,
    label: { at, value: label },
    notes: never(''),
    repair: never(''),
    draft: never(null),
    readings: {},
    deleted: never(false),
  };
}

/** When anything of it was last changed, its deletion apart. What stands unfinished in the form counts. */
export const changedAt = ({ label, notes, repair, draft, readings }: Job): number =>
  Math.max(label.at, notes.at, repair.at, draft.at, ...Object.values(readings).map(({ at }) => at));

/** A change after the deletion, in another tab or on another device, brings a job back: nobody loses work. */
export const isDeleted = (job: Job): boolean =>
  job.deleted.value && job.deleted.at >= changedAt(job);

/** Of two copies of an entry the later one; of two of one time always the same, whichever comes first. */
function later<Value>(a: Dated<Value>, b: Dated<Value>): Dated<Value> {
  if (a.at !== b.at) return a.at > b.at ? a : b;
  return JSON.stringify(a.value) >= JSON.stringify(b.value) ? a : b;
}

/** Two copies of one job as one. */
export function merge(a: Job, b: Job): Job {
  const ids = [...new Set([...Object.keys(a.readings), ...Object.keys(b.readings)])].sort();
  const reading = (id: string) => {
    const [one, other] = [a.readings[id], b.readings[id]];
    return one && other ? later(one, other) : (one ?? other);
  };
  return {
    id: a.id,
    created: Math.min(a.created, b.created),
    label: later(a.label, b.label),
    notes: later(a.notes, b.notes),
    repair: later(a.repair, b.repair),
    draft: later(a.draft, b.draft),
    readings: Object.fromEntries(
      ids.flatMap((id) => {
        const found = reading(id);
        return found ? [[id, found]] : [];
      }),
    ),
    deleted: later(a.deleted, b.deleted),
  };
}

/** A change now: later than what it replaces, also where the clock was set back in between. */
export const dated = <Value>(before: Dated<unknown> | undefined, now: number, value: Value) => ({
  at: Math.max(now, (before?.at ?? 0) + 1),
  value,
});

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
  label: never(''),
  deleted,
});

/** Readings that stand, in the order in which they were added: an id begins with its time. */
export const readingsOf = (job: Job): readonly (JobReading & { readonly id: string })[] =>
  Object.entries(job.readings)
    .flatMap(([id, { value }]) => (value === null ? [] : [{ ...value, id }]))
    .sort((a, b) => (a.id < b.id ? -1 : 1));

/** An id that sorts by its time: readings of one job stand in the order in which they were taken down. */
export const timedId = (now: number, chance: () => number = Math.random): string =>
  `${now.toString(36).padStart(9, '0')}-${Math.floor(chance() * 36 ** 6)
    .toString(36)
    .padStart(6, '0')}`;
