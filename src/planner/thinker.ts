import type { Working } from '../ui/page-worker.ts';
import type { Ask, Think } from './messages.ts';

type Fetched = () => Promise<Think>;

/**
 * Thinks, from the first question on, in a worker, and on the page where no worker can be had or the one there was is lost: the last question is then asked
 * again there. Lost for good, it says so.
 */
export const thinker =
  (worker: Fetched, page: Fetched): Think =>
  (told) => {
    let works: Working<Ask> | undefined;
    let last: Ask | undefined;
    let ended = false;
    const begin = (think: Think, lost: () => void): void => {
      if (ended) return;
      works = think((answer) => {
        if (answer.kind === 'lost') lost();
        else if (!ended) told(answer);
      });
      if (last) works.ask(last);
    };
    const onPage = (): void => {
      if (ended) return;
      works?.stop();
      works = undefined;
      page()
        .then((think) => begin(think, () => undefined))
        .catch(() => ended || told({ kind: 'lost' }));
    };
    let fetched: Promise<void> | undefined;
    return {
      ask: (ask) => {
        if (ask.kind !== 'read') last = ask;
        works?.ask(ask);
        fetched ??= worker()
          .then((think) => begin(think, onPage))
          .catch(onPage);
      },
      stop: () => {
        ended = true;
        works?.stop();
      },
    };
  };

/** As pages think. */
export const think: Think = thinker(
  () => import('./start-worker.ts').then(({ startWorker }) => startWorker),
  () => import('./think-on-page.ts').then(({ thinkOnPage }) => thinkOnPage),
);
