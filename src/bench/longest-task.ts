import type { Browser, Page } from '@playwright/test';

interface TraceEvent {
  readonly name: string;
  readonly ph: string;
  readonly pid: number;
  readonly tid: number;
  /** Begin and length [us]. */
  readonly ts: number;
  readonly dur?: number;
}

/** How long the page goes on being watched [ms]: a simulation is drawn anew for its box once it is alive. */
const AFTER = 700;

/** The longest task [ms] of the page's main thread from a mark of that name to the mark "bench-end", which `act` sets. */
async function longest(
  browser: Browser,
  page: Page,
  from: string,
  act: () => Promise<unknown>,
): Promise<number> {
  // The tasks of "toplevel" end before their microtasks, where a promise goes on and Preact draws.
  const categories = ['disabled-by-default-devtools.timeline', 'blink.user_timing'];
  await browser.startTracing(page, { categories });
  await act();
  const { traceEvents } = JSON.parse((await browser.stopTracing()).toString()) as {
    readonly traceEvents: readonly TraceEvent[];
  };
  const end = traceEvents.find(({ name }) => name === 'bench-end');
  if (!end) throw new Error('The trace has no end.');
  const mine = traceEvents.filter(({ pid, tid }) => pid === end.pid && tid === end.tid);
  const begin = mine.findLast(({ name, ts }) => name === from && ts < end.ts);
  if (!begin) throw new Error(`The trace has no mark "${from}".`);
  const tasks = mine.filter(
    ({ name, ph, ts }) => ph === 'X' && name === 'RunTask' && ts > begin.ts && ts < end.ts,
  );
  return Math.max(...tasks.map(({ dur = 0 }) => dur / 1e3));
}

/** While a page loads and stands at its top. */
export const whileLoading = (browser: Browser, page: Page, address: string): Promise<number> =>
  longest(browser, page, 'navigationStart', async () => {
    await page.goto(address);
    await page.evaluate(
      (after) =>
        new Promise<void>((done) =>
          setTimeout(() => {
            performance.mark('bench-end');
            done();
          }, after),
        ),
      AFTER,
    );
  });

/** While a simulation is scrolled to and comes alive. */
export const whileComingAlive = (browser: Browser, page: Page, sim: string): Promise<number> =>
  longest(browser, page, 'bench-begin', () =>
    page.evaluate(
      ({ id, after }) =>
        new Promise<void>((done) => {
          const root = document.getElementById(id);
          if (!root) throw new Error(`The page has no simulation "${id}".`);
          const watch = new MutationObserver(() => look());
          const look = () => {
            if (root.dataset['ready'] !== 'true') return;
            watch.disconnect();
            setTimeout(() => {
              performance.mark('bench-end');
              done();
            }, after);
          };
          watch.observe(root, { attributes: true });
          // What the call itself costs the page is over by then.
          setTimeout(() => {
            performance.mark('bench-begin');
            root.scrollIntoView();
            look();
          }, 300);
        }),
      { id: sim, after: AFTER },
    ),
  );
