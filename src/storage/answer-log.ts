/** The log of answers in IndexedDB. Every fault is a status and none is thrown. */
import type { IDBPDatabase } from 'idb';
import { LOG, STORE, steps as ownSteps, type Step, type StoredAnswer } from './answer-steps.ts';
import { connection, type StoreStatus } from './connection.ts';
import { leftBehind } from './left-behind.ts';
import { textOf } from './same.ts';

/** Whatever lies there, a record or not. */
const identity = (raw: unknown): string => {
  const { at, answer } = (raw ?? {}) as Partial<StoredAnswer>;
  return textOf([at ?? null, answer ?? null]);
};

export function answerLog(steps: readonly Step[] = ownSteps, name = LOG) {
  const behind = leftBehind(name);
  const {
    database: opened,
    whole,
    close,
  } = connection({
    name,
    version: steps.length,
    upgrade: (made, from) => {
      for (const { layout } of steps.slice(from)) layout?.(made);
    },
  });

  /** What was on its way when a page went: what did not arrive after all goes to the end. */
  async function takeBack(to: IDBPDatabase): Promise<void> {
    const left = behind.look();
    if (left.length === 0) return;
    const transaction = to.transaction(STORE, 'readwrite', { durability: 'strict' });
    transaction.done.catch(() => undefined);
    const there = new Set((await transaction.store.getAll()).map(identity));
    const missing = left
      .flatMap(({ records }) => records)
      .filter((one) => !there.has(identity(one)));
    await Promise.all([...missing.map((one) => transaction.store.add(one)), transaction.done]);
    behind.clear(left);
  }

  let takingBack: Promise<void> | undefined;
  async function database(): Promise<IDBPDatabase> {
    const now = await opened();
    // What cannot be taken back now lies there at the next time, and holds nothing up.
    await (takingBack ??= takeBack(now).catch(() => undefined));
    return now;
  }

  /** A transaction of its own and forced to the disk: a kill in the middle loses this answer and no other. */
  async function add(record: StoredAnswer): Promise<void> {
    const transaction = (await database()).transaction(STORE, 'readwrite', {
      durability: 'strict',
    });
    // A fault on the way is told by the request that it came from.
    transaction.done.catch(() => undefined);
    await Promise.all([transaction.store.add(record), transaction.done]);
  }

  return {
    database,
    whole,
    append: ({ at, answer }: Omit<StoredAnswer, 'v'>): Promise<StoreStatus> =>
      whole(() => add({ v: steps.length, at, answer })),
    close,
  };
}

export type AnswerLog = ReturnType<typeof answerLog>;
