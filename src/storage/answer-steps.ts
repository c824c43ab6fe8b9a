import type { IDBPDatabase } from 'idb';

/** The database. */
export const LOG = 'hot-clutch:answers';
export const STORE = 'answers';

/** A record as it lies in the store; its key there is its number. */
export interface StoredAnswer {
  /** The version that wrote it. */
  readonly v: number;
  /** What the device's clock said, in milliseconds of Unix time. */
  readonly at: number;
  readonly answer: unknown;
}

/**
 * From one version to the next. A record is never rewritten: it is read through the steps from the
 * version it was written in, so an upgrade that is cut short has nothing to lose.
 */
export interface Step {
  /** What changes in the database itself. */
  readonly layout?: (database: IDBPDatabase) => void;
  /** From a record of the version before to this one. Kept for ever, with a fixture each. */
  readonly record?: (old: unknown) => unknown;
}

/** The first step makes version 1. A change of layout or record is the next step, added at the end. */
export const steps: readonly Step[] = [
  { layout: (database) => void database.createObjectStore(STORE, { autoIncrement: true }) },
];
