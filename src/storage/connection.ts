/** A connection to a database of IndexedDB, by the library `idb`: opened when it is first asked for, and again when it was lost. */
import { openDB, type IDBPDatabase } from 'idb';

/**
 * `full`: no room. `blocked`: the browser keeps nothing for this site. `newer`: a later version of
 * the site has been here. `busy`: another tab holds the database and does not let go. `failed`: the rest.
 */
export type StoreStatus = 'ok' | 'full' | 'blocked' | 'newer' | 'busy' | 'failed';

/** Opening can hang without a word, behind a tab that is frozen or a browser's own fault. */
const PATIENCE_MS = 8000;
class Busy extends Error {}

const nameOf = (error: unknown): string => (error instanceof Error ? error.name : '');

const byName: Readonly<Record<string, StoreStatus>> = {
  QuotaExceededError: 'full',
  VersionError: 'newer',
  SecurityError: 'blocked',
  // A private window of some browsers; and where there is no IndexedDB at all.
  InvalidStateError: 'blocked',
  ReferenceError: 'blocked',
  TypeError: 'blocked',
};

export const storeStatus = (error: unknown): StoreStatus =>
  error instanceof Busy ? 'busy' : (byName[nameOf(error)] ?? 'failed');

interface Needs {
  readonly name: string;
  readonly version: number;
  readonly upgrade: (database: IDBPDatabase, from: number) => void;
}

export function connection({ name, version, upgrade }: Needs) {
  let opening: Promise<IDBPDatabase> | undefined;
  let open: IDBPDatabase | undefined;
  const forget = (): void => {
    opening = undefined;
    open = undefined;
  };

  function connect(): Promise<IDBPDatabase> {
    return new Promise((resolve, reject) => {
      let waiting = true;
      const giveUp = (): void => {
        waiting = false;
        reject(new Busy());
      };
      const timer = setTimeout(giveUp, PATIENCE_MS);
      openDB(name, version, {
        upgrade,
        blocked: giveUp,
        // A newer tab wants to upgrade: out of its way. The next use here finds out by itself.
        blocking: (_from, _to, event) => {
          (event.target as IDBDatabase).close();
          forget();
        },
        terminated: forget,
      })
        .then(
          (database) => {
            if (waiting) resolve((open = database));
            else database.close();
          },
          (error: unknown) => {
            reject(error instanceof Error ? error : new Error(String(error)));
          },
        )
        .finally(() => clearTimeout(timer));
    });
  }

  return {
    /** The database; rejects with a fault that `storeStatus` names. */
    database: (): Promise<IDBPDatabase> => {
      opening ??= connect().catch((error: unknown) => {
        forget();
        throw error;
      });
      return opening;
    },

    /** The database if it is open, for who cannot wait. */
    now: (): IDBPDatabase | undefined => open,

    /** Does the work; once more where the browser had closed the connection behind our back, and nothing was written. */
    whole: async (work: () => Promise<void>): Promise<StoreStatus> => {
      try {
        await work().catch((error: unknown) => {
          if (nameOf(error) !== 'InvalidStateError') throw error;
          forget();
          return work();
        });
        return 'ok';
      } catch (error) {
        return storeStatus(error);
      }
    },

    close: async (): Promise<void> => {
      const opened = await opening?.catch(() => undefined);
      forget();
      opened?.close();
    },
  };
}
