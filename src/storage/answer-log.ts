/** The log of answers in IndexedDB. Every fault is a status and none is thrown. */
import type { IDBPDatabase } from 'idb';
import { LOG, STORE, steps as ownSteps, type Step, type StoredAnswer } from './answer-steps.ts';
import { connection, type StoreStatus } from './connection.ts';
import { leftBehind } from './left-behind.ts';
import { textOf } from './same.ts';

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
    const all: unknown[] = await transaction.store.getAll();
    const known = new Set(all.map((one) => textOf(one)));
    // A page that was left twice before it had stored an answer has left it twice.
    for (const one of left.flatMap(({ records }) => records)) {
      const text = textOf(one);
      if (!known.has(text)) await transaction.store.add(one);
      known.add(text);
    }
    await transaction.done;
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
