// What the benches of the page do in a browser.
import type { Browser, CDPSession, Page } from '@playwright/test';

/** How many times a phone is slower than this machine. */
export const SLOWED = 4;
// Storing the site beside the page would be timed with it.
const PHONE = { viewport: { width: 390, height: 664 }, serviceWorkers: 'block' } as const;

/** Nothing is stored from any page before it. */
export async function onFreshPage<T>(
  browser: Browser,
  work: (page: Page) => Promise<T>,
): Promise<T> {
  const context = await browser.newContext(PHONE);
  try {
    return await work(await context.newPage());
  } finally {
    await context.close();
  }
}

export async function slow(page: Page, rate: number): Promise<void> {
  const browser = await page.context().newCDPSession(page);
  await browser.send('Emulation.setCPUThrottlingRate', { rate });
}

/** 1.6 Mbit/s and 150 ms. */
export async function slowNetwork(page: Page): Promise<void> {
  const network = await page.context().newCDPSession(page);
  await network.send('Network.enable');
  await network.send('Network.emulateNetworkConditions', {
    offline: false,
    latency: 150,
    downloadThroughput: 200_000,
    uploadThroughput: 200_000,
  });
}

/** How far things have jumped since the page was asked for, and while it is read to its end (layout shift). */
export function shiftWhileRead(page: Page): Promise<number> {
  return page.evaluate(async () => {
    let sum = 0;
    new PerformanceObserver((list) => {
      for (const entry of list.getEntries() as (PerformanceEntry & {
        readonly value: number;
        readonly hadRecentInput: boolean;
      })[]) {
        if (!entry.hadRecentInput) sum += entry.value;
      }
    }).observe({ type: 'layout-shift', buffered: true });
    // The face of the page comes after its text and takes the place of another.
    await document.fonts.load('1em "Atkinson Hyperlegible Next Variable"');
    for (let y = 0; y < document.documentElement.scrollHeight; y += innerHeight * 0.8) {
      scrollTo(0, y);
      await new Promise((done) => setTimeout(done, 150));
    }
    await new Promise((done) => setTimeout(done, 300));
    return sum;
  });
}

/** What each of the works gave, done in turn and that many times over: on a shared machine only such can be compared. */
export async function inTurn(
  times: number,
  works: readonly (() => Promise<number>)[],
): Promise<readonly (readonly number[])[]> {
  const taken = works.map((): number[] => []);
  for (let turn = 0; turn < times; turn += 1) {
    for (const [i, work] of works.entries()) taken[i]?.push(await work());
  }
  return taken;
}

export interface Move {
  /** From the input event to the changed DOM: model and drawing [ms]. */
  readonly dom: number;
  /** The same with the browser's layout after it [ms]. The aim is held against this, the stricter one. */
  readonly laidOut: number;
}

/** Moves one slider as a finger would, one input event at a time. Painting is the browser's own and not in it. */
export async function moves(
  page: Page,
  simulation: string,
  slider: string,
  count: number,
): Promise<readonly Move[]> {
  return page.evaluate(
    async ({ sim, key, total }) => {
      const root = document.getElementById(sim);
      const range = root?.querySelector<HTMLInputElement>(`#${sim}-${key}`);
      if (!root || !range) throw new Error(`The page has no slider "${key}".`);
      const [min, max, step] = [range.min, range.max, range.step].map(Number) as [
        number,
        number,
        number,
      ];
      const stops = Math.round((max - min) / step);
      let at = Math.round((range.valueAsNumber - min) / step);
      let way = 1;
      const times: { dom: number; laidOut: number }[] = [];
      for (let i = 0; i < total; i += 1) {
        if (at + way < 0 || at + way > stops) way = -way;
        at += way;
        const told = (): string | null => range.getAttribute('aria-valuetext');
        const before = told();
        // The timeline keeps every entry, and would pass for growth of the page's heap.
        performance.clearMeasures();
        performance.clearMarks();
        performance.mark('moved');
        range.value = String(min + at * step);
        range.dispatchEvent(new Event('input', { bubbles: true }));
        // Preact renders in a microtask.
        for (let turn = 0; turn < 20 && told() === before; turn += 1) {
          await Promise.resolve();
        }
        const dom = performance.measure('dom', 'moved').duration;
        root.getBoundingClientRect();
        times.push({ dom, laidOut: performance.measure('laid out', 'moved').duration });
        if (told() === before) throw new Error(`Moving ${key} changed nothing.`);
        await new Promise((done) => requestAnimationFrame(() => setTimeout(done)));
      }
      return times;
    },
    { sim: simulation, key: slider, total: count },
  );
}

export async function heapMB(cdp: CDPSession): Promise<number> {
  await cdp.send('HeapProfiler.collectGarbage');
  const { usedSize } = await cdp.send('Runtime.getHeapUsage');
  return usedSize / 1e6;
}

export async function openFreePlay(
  page: Page,
  address: string,
  simulation: string,
  shown: readonly string[],
): Promise<void> {
  await page.goto(address);
  const sim = page.locator(`#${simulation}`);
  await sim.scrollIntoViewIfNeeded();
  await page.locator(`#${simulation}[data-ready="true"]`).waitFor();
  await sim.getByRole('button', { name: 'Your controls' }).click();
  for (const part of shown) await page.locator(`#${simulation}-${part}`).waitFor();
}
