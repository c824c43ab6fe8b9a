/**
 * The log of what a learner answered, for practice to read: an entry for each answer, in the order
 * given, never changed and never taken out. It is kept in IndexedDB, because the browser storage
 * that the rest uses is rewritten whole at each write and full at a few thousand answers.
 *
 * This file is the door to it and costs a page next to nothing. What is behind is loaded when the
 * first answer is kept or read.
 */
import type { Answer } from './answer.ts';
import type * as Log from './answer-log.ts';
import { LOG, steps, type StoredAnswer } from './answer-steps.ts';
import type { StoreStatus } from './connection.ts';
import { leftBehind, type LeftBehind } from './left-behind.ts';
import type { AnswersRead } from './read-answers.ts';

/** `unloaded`: the part that keeps answers could not be fetched. The rest: connection.ts. */
export type KeepStatus = StoreStatus | 'unloaded';

interface KeeperOptions {
  readonly load?: () => Promise<Pick<typeof Log, 'answerLog'>>;
  readonly now?: () => number;
  readonly behind?: Pick<LeftBehind, 'put'>;
  /** Calls back when the page goes. */
  readonly leaving?: (listener: () => void) => void;
}

export function answerKeeper({
  load = () => import('./answer-log.ts'),
  now = Date.now,
  behind = leftBehind(LOG),
  leaving = (listener) => globalThis.addEventListener('pagehide', listener),
}: KeeperOptions = {}) {
  let log: ReturnType<typeof open> | undefined;
  const open = async () => (await load()).answerLog();
  // One after the other, so that the order kept is the order given even while the first one loads.
  let last: Promise<unknown> = Promise.resolve();
  /** Given and not stored yet: a page that goes meanwhile leaves them behind. */
  const onTheWay = new Set<StoredAnswer>();
  let watching = false;

  async function append(answer: Answer, at: number): Promise<KeepStatus> {
    log ??= open();
    let opened;
    try {
      opened = await log;
    } catch {
      log = undefined;
      return 'unloaded';
    }
    return await opened.append({ at, answer });
  }

  function watch(): void {
    if (watching) return;
    watching = true;
    leaving(() => {
      if (onTheWay.size > 0) behind.put([...onTheWay]);
    });
  }

  return (answer: Answer): Promise<KeepStatus> => {
    const at = now();
    const record = { v: steps.length, at, answer };
    watch();
    onTheWay.add(record);
    const kept = last.then(() => append(answer, at)).finally(() => onTheWay.delete(record));
    last = kept;
    return kept;
  };
}

/** Never throws and never waits for ever: the lesson goes on, whatever comes back. */
export const keepAnswer = answerKeeper();

/** All answers, in the order given. */
export async function readAnswers(): Promise<AnswersRead> {
  const { readAnswers: read } = await import('./read-answers.ts');
  return await read();
}
