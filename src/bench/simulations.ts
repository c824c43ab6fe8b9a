// `npm run bench -- simulations`: what each simulation, or each that is named behind it, asks of a slow phone (Chromium,
// CPU slowed four times). With the folder of another build behind it (`-- simulations ../before/dist`) that build is
// measured in turn with this one, and a second figure follows each: on a shared machine only what was measured side by
// side can be compared. Two minutes for each simulation and build.
import type { Browser, Page } from '@playwright/test';
import { simulations } from '../lessons/simulations.ts';
import { launchChromium } from '../build/launch-chromium.ts';
import { heapMB, inTurn, moves, onFreshPage, openFreePlay, slow, SLOWED } from './browser.ts';
import { whileComingAlive } from './longest-task.ts';
import { percentile, type Row } from './row.ts';
import { pageWith, serve } from './site.ts';

/** What is measured, with what to aim at and how often it is done again; the middle of all is kept. */
const KINDS = {
  alive: { what: 'longest task while it comes alive', aim: 50, unit: 'ms', times: 7 },
  press: { what: 'press to your controls', aim: 100, unit: 'ms', times: 7 },
  move: { what: 'slowest slider, p95 with layout', aim: 12, unit: 'ms', times: 1 },
  heap: { what: 'heap after 500 moves', aim: 0.1, unit: 'MB', times: 1 },
} as const;
type Kind = keyof typeof KINDS;

/** One that stands at the top of its page came alive with it. */
const comesAlive = (browser: Browser, address: string, sim: string): Promise<number> =>
  onFreshPage(browser, async (page) => {
    await page.goto(address);
    await page.waitForTimeout(300);
    await slow(page, SLOWED);
    return whileComingAlive(browser, page, sim);
  });

/** From the press on "Your controls", whose script the first touch has fetched, to the frame that shows them [ms]. */
const toNextStage = (browser: Browser, address: string, sim: string): Promise<number> =>
  onFreshPage(browser, async (page) => {
    await page.goto(address);
    const root = page.locator(`#${sim}`);
    await root.scrollIntoViewIfNeeded();
    await page.locator(`#${sim}[data-ready="true"]`).waitFor();
    await root.dispatchEvent('pointerdown');
    await page.waitForLoadState('networkidle');
    await slow(page, SLOWED);
    const button = root.getByRole('button', { name: 'Your controls' });
    return button.evaluate(async (element) => {
      const began = performance.now();
      (element as HTMLButtonElement).click();
      await new Promise((done) => requestAnimationFrame(() => setTimeout(done)));
      return performance.now() - began;
    });
  });

async function slidersOf(page: Page, address: string, sim: string): Promise<readonly string[]> {
  await openFreePlay(page, address, sim, []);
  await page.locator(`#${sim} .stage-head`).waitFor();
  const ranges = page.locator(`#${sim} .sim-controls input[type="range"]`);
  return ranges.evaluateAll((all, from) => all.map(({ id }) => id.slice(from)), sim.length + 1);
}

/** One move of the slowest slider, with layout [ms]. */
const slowestMove = (browser: Browser, address: string, sim: string): Promise<number> =>
  onFreshPage(browser, async (page) => {
    let slowest = 0;
    for (const key of await slidersOf(page, address, sim)) {
      await slow(page, 1);
      // The first moves run code that is not compiled yet.
      await moves(page, sim, key, 40);
      await slow(page, SLOWED);
      const all = (await moves(page, sim, key, 60)).map(({ laidOut }) => laidOut);
      slowest = Math.max(slowest, percentile(all, 0.95));
    }
    return slowest;
  });

/** What 500 moves leave behind [MB]. */
const leftBehind = (browser: Browser, address: string, sim: string): Promise<number> =>
  onFreshPage(browser, async (page) => {
    const [key] = await slidersOf(page, address, sim);
    if (key === undefined) return 0;
    const session = await page.context().newCDPSession(page);
    await moves(page, sim, key, 300);
    const before = await heapMB(session);
    await moves(page, sim, key, 500);
    return (await heapMB(session)) - before;
  });

const MEASURE = {
  alive: comesAlive,
  press: toNextStage,
  move: slowestMove,
  heap: leftBehind,
} satisfies Record<Kind, unknown>;

/** A row for each simulation and kind of figure. */
export async function benchSimulations(asked: readonly string[]): Promise<readonly Row[]> {
  const all = Object.values(simulations).map(({ id }) => id);
  const named = all.filter((id) => asked.includes(id));
  const before = asked.find((word) => !all.includes(word));
  const browser = await launchChromium();
  const sites = await Promise.all([serve(), ...(before === undefined ? [] : [serve(before)])]);
  const rows: Row[] = [];
  try {
    for (const id of named.length > 0 ? named : all) {
      const path = pageWith(id);
      if (path === undefined) continue;
      for (const [kind, { what, aim, unit, times }] of Object.entries(KINDS)) {
        const measure = MEASURE[kind as Kind];
        const taken = await inTurn(
          times,
          sites.map(
            ({ origin }) =>
              () =>
                measure(browser, `${origin}${path}`, id),
          ),
        );
        const [now = Number.NaN, then] = taken.map((one) => percentile(one, 0.5));
        const least = Math.min(...(taken[0] ?? []));
        const figures = [
          `${now.toFixed(1)} ${unit}`,
          ...(times > 1 ? [`least ${least.toFixed(1)}`] : []),
          ...(then === undefined
            ? []
            : [`before ${then.toFixed(1)}`, `ratio ${(now / then).toFixed(2)}`]),
        ];
        rows.push({
          what: `${id}: ${what}`,
          aim: `${aim} ${unit}`,
          measured: figures.join(', '),
          met: now <= aim,
        });
      }
    }
  } finally {
    for (const site of sites) site.stop();
    await browser.close();
  }
  return rows;
}
