/** The log of answers in IndexedDB, by the library `idb`. Every fault is a status and none is thrown. */
import { openDB, type IDBPDatabase } from 'idb';
import { STORE, steps as ownSteps, type Step, type StoredAnswer } from './answer-steps.ts';

/**
 * `full`: no room. `blocked`: the browser keeps nothing for this site. `newer`: a later version of
 * the site has been here. `busy`: another tab holds the log and does not let go. `failed`: the rest.
 */
export type LogStatus = 'ok' | 'full' | 'blocked' | 'newer' | 'busy' | 'failed';

/** Opening can hang without a word, behind a tab that is frozen or a browser's own fault. */
const PATIENCE_MS = 8000;
class Busy extends Error {}

export function answerLog(steps: readonly Step[] = ownSteps, name = 'hot-clutch:answers') {
  let opening: Promise<IDBPDatabase> | undefined;
  const forget = (): void => {
    opening = undefined;
  };

  function connect(): Promise<IDBPDatabase> {
    return new Promise((resolve, reject) => {
      let waiting = true;
      const giveUp = (): void => {
        waiting = false;
        reject(new Busy());
      };
      const timer = setTimeout(giveUp, PATIENCE_MS);
      openDB(name, steps.length, {
        upgrade: (database, from) => {
          for (const { layout } of steps.slice(from)) layout?.(database);
        },
        blocked: giveUp,
        // A newer tab wants to upgrade: out of its way. The next answer here finds out by itself.
        blocking: (_from, _to, event) => {
          (event.target as IDBDatabase).close();
          forget();
        },
        terminated: forget,
      })
        .then(
          (database) => {
            if (waiting) resolve(database);
            else database.close();
          },
          (error: unknown) => {
            reject(error instanceof Error ? error : new Error(String(error)));
          },
        )
        .finally(() => clearTimeout(timer));
    });
  }

  function database(): Promise<IDBPDatabase> {
    opening ??= connect().catch((error: unknown) => {
      forget();
      throw error;
    });
    return opening;
  }

  /** A transaction of its own and forced to the disk: a kill in the middle loses this answer and no other. */
  async function add(record: StoredAnswer): Promise<void> {
    const transaction = (await database()).transaction(STORE, 'readwrite', {
      durability: 'strict',
    });
    await Promise.all([transaction.store.add(record), transaction.done]);
  }

  return {
    database,
    async append({ at, answer }: Omit<StoredAnswer, 'v'>): Promise<LogStatus> {
      const record = { v: steps.length, at, answer };
      try {
        await add(record).catch((error: unknown) => {
          // The browser closed the connection behind our back, and nothing was written.
          if (nameOf(error) !== 'InvalidStateError') throw error;
          forget();
          return add(record);
        });
        return 'ok';
      } catch (error) {
        return logStatus(error);
      }
    },
    async close(): Promise<void> {
      const open = await opening?.catch(() => undefined);
      forget();
      open?.close();
    },
  };
}

export type AnswerLog = ReturnType<typeof answerLog>;

const nameOf = (error: unknown): string => (error instanceof Error ? error.name : '');

const byName: Readonly<Record<string, LogStatus>> = {
  QuotaExceededError: 'full',
  VersionError: 'newer',
  SecurityError: 'blocked',
  // A private window of some browsers; and where there is no IndexedDB at all.
  InvalidStateError: 'blocked',
  ReferenceError: 'blocked',
  TypeError: 'blocked',
};

export function logStatus(error: unknown): LogStatus {
  return error instanceof Busy ? 'busy' : (byName[nameOf(error)] ?? 'failed');
}
