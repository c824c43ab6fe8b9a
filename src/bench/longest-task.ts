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

/** How long the page goes on being watched after the simulation says that it is alive [ms]: it is drawn anew for its box. */
const AFTER = 500;

/** The longest task [ms] of the page's main thread while a simulation is scrolled to and comes alive. */
export async function longestTask(browser: Browser, page: Page, sim: string): Promise<number> {
  await browser.startTracing(page, { categories: ['toplevel', 'blink.user_timing'] });
  await page.evaluate(
    ({ id, after }) =>
      new Promise<void>((done) => {
        const root = document.getElementById(id);
        if (!root) throw new Error(`The page has no simulation "${id}".`);
        const watch = new MutationObserver(() => {
          if (root.dataset['ready'] !== 'true') return;
          watch.disconnect();
          setTimeout(() => {
            performance.mark('bench-end');
            done();
          }, after);
        });
        watch.observe(root, { attributes: true });
        // What the call itself costs the page is over by then.
        setTimeout(() => {
          performance.mark('bench-begin');
          root.scrollIntoView();
        }, 300);
      }),
    { id: sim, after: AFTER },
  );
  const { traceEvents } = JSON.parse((await browser.stopTracing()).toString()) as {
    readonly traceEvents: readonly TraceEvent[];
  };
  const mark = (name: string): TraceEvent => {
    const found = traceEvents.find((event) => event.name === name);
    if (!found) throw new Error(`The trace has no mark "${name}".`);
    return found;
  };
  const [begin, end] = [mark('bench-begin'), mark('bench-end')];
  const tasks = traceEvents.filter(
    ({ name, ph, pid, tid, ts }) =>
      ph === 'X' &&
      name.endsWith('RunTask') &&
      pid === begin.pid &&
      tid === begin.tid &&
      ts > begin.ts &&
      ts < end.ts,
  );
  return Math.max(...tasks.map(({ dur = 0 }) => dur / 1e3));
}
