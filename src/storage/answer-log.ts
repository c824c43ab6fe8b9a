/** The log of answers in IndexedDB. Every fault is a status and none is thrown. */
import { STORE, steps as ownSteps, type Step, type StoredAnswer } from './answer-steps.ts';
import { connection, type StoreStatus } from './connection.ts';

export function answerLog(steps: readonly Step[] = ownSteps, name = 'hot-clutch:answers') {
  const { database, whole, close } = connection({
    name,
    version: steps.length,
    upgrade: (opened, from) => {
      for (const { layout } of steps.slice(from)) layout?.(opened);
    },
  });

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
