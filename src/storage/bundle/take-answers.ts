/** Puts answers of a file into the log: all that are missing or none, without doubles, and takes them out again. */
import type { AnswerLog } from '../answer-log.ts';
import { STORE, steps, type StoredAnswer } from '../answer-steps.ts';
import type { StoreStatus } from '../connection.ts';
import { readAnswers } from '../read-answers.ts';
import type { DatedAnswer } from './bundle.ts';
import { missingFrom, numbersFor } from './missing-answers.ts';

export interface AnswersTaken {
  readonly status: StoreStatus;
  /** Numbers of those that were added. */
  readonly added: readonly number[];
}

/** Another tab may write between the look and the write, but not each time. */
const TRIES = 10;
class Changed extends Error {}

function abort(transaction: { abort: () => void }): void {
  try {
    transaction.abort();
  } catch {
    // It is over already.
  }
}

async function takeOnce(
  log: AnswerLog,
  file: readonly DatedAnswer[],
  rehearsals: ReadonlySet<number>,
): Promise<number[]> {
  const read = await readAnswers(log);
  const seen = [...read.answers, ...read.damaged].map(({ n }) => n).sort((a, b) => a - b);
  const missing = missingFrom(read.answers, file, rehearsals);
  const numbers = numbersFor(read.answers, seen, missing);
  const transaction = (await log.database()).transaction(STORE, 'readwrite', {
    durability: 'strict',
  });
  const { store, done } = transaction;
  // A fault on the way is told by the request that it came from.
  done.catch(() => undefined);
  const keys = await store.getAllKeys();
  if (keys.length !== seen.length || keys.some((key, i) => key !== seen[i])) {
    await done;
    throw new Changed();
  }
  const adding: Promise<IDBValidKey>[] = [];
  try {
    for (const [i, { at, answer }] of missing.entries()) {
      const record: StoredAnswer = { v: steps.length, at, answer };
      adding.push(store.add(record, numbers[i]));
    }
    const [added] = await Promise.all([Promise.all(adding), done]);
    return added.map(Number);
  } catch (error) {
    // All or none, also where the browser refuses one before it has looked at the next.
    for (const one of adding) one.catch(() => undefined);
    abort(transaction);
    throw error;
  }
}

export async function takeAnswers(
  log: AnswerLog,
  file: readonly DatedAnswer[],
  rehearsals: ReadonlySet<number>,
): Promise<AnswersTaken> {
  let added: readonly number[] = [];
  const status = await log.whole(async () => {
    for (let left = TRIES; ; left -= 1) {
      try {
        added = await takeOnce(log, file, rehearsals);
        return;
      } catch (error) {
        if (!(error instanceof Changed) || left === 0) throw error;
      }
    }
  });
  return { status, added: status === 'ok' ? added : [] };
}

/** Takes out what a file brought a moment ago, and nothing else ever. */
export const takeBack = (log: AnswerLog, added: readonly number[]): Promise<StoreStatus> =>
  log.whole(async () => {
    const transaction = (await log.database()).transaction(STORE, 'readwrite', {
      durability: 'strict',
    });
    await Promise.all([...added.map((n) => transaction.store.delete(n)), transaction.done]);
  });
