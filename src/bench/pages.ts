// `npm run bench -- pages`: what the home page and each lesson ask of a slow phone on a slow network before anybody has touched them, the
// largest paint in turn with an empty page of a theme for documentation. A folder behind it (`-- pages ../theme/dist`) is taken
// for that page instead of building one. A quarter of an hour.
import type { Browser, Page } from '@playwright/test';
import { builtPages } from '../build/pages.ts';
import { launchChromium } from '../build/launch-chromium.ts';
import { inTurn, onFreshPage, shiftWhileRead, slow, SLOWED, slowNetwork } from './browser.ts';
import { whileLoading } from './longest-task.ts';
import { percentile, type Row } from './row.ts';
import { serve } from './site.ts';
import { buildThemePage } from './theme-page.ts';

/** How much later than the theme's page ours may be painted. */
const LATER = 1.05;
const PAINTS = 3;

async function openSlowly(page: Page, address: string): Promise<void> {
  await slowNetwork(page);
  await slow(page, SLOWED);
  await page.goto(address);
}

/** When the largest thing in sight was painted [ms after the request]. */
const largestPaint = (browser: Browser, address: string): Promise<number> =>
  onFreshPage(browser, async (page) => {
    await openSlowly(page, address);
    return page.evaluate(
      () =>
        new Promise<number>((done) => {
          let at = 0;
          new PerformanceObserver((list) => {
            at = list.getEntries().at(-1)?.startTime ?? at;
          }).observe({ type: 'largest-contentful-paint', buffered: true });
          setTimeout(() => done(at), 500);
        }),
    );
  });

/** How far things jumped while it loaded and was read to its end. */
const shift = (browser: Browser, address: string): Promise<number> =>
  onFreshPage(browser, async (page) => {
    await openSlowly(page, address);
    return shiftWhileRead(page);
  });

/** What the page works while nobody touches it, once all that flows by itself has come to rest [ms a second]. */
const idle = (browser: Browser, address: string): Promise<number> =>
  onFreshPage(browser, async (page) => {
    await slow(page, SLOWED);
    await page.emulateMedia({ reducedMotion: 'no-preference' });
    await page.goto(address);
    const session = await page.context().newCDPSession(page);
    await session.send('Performance.enable');
    const worked = async (): Promise<number> => {
      const { metrics } = await session.send('Performance.getMetrics');
      return metrics.find(({ name }) => name === 'TaskDuration')?.value ?? Number.NaN;
    };
    await page.waitForTimeout(8000);
    const before = await worked();
    await page.waitForTimeout(4000);
    return ((await worked()) - before) * (1000 / 4);
  });

const firstTask = (browser: Browser, address: string): Promise<number> =>
  onFreshPage(browser, async (page) => {
    await slow(page, SLOWED);
    return whileLoading(browser, page, address);
  });

/** What is measured of a page by itself, with what to aim at and how often it is done again; the middle of all is kept. */
const KINDS = [
  {
    what: 'layout shift, loaded slowly and read to its end',
    aim: 0.01,
    unit: '',
    times: 1,
    measure: shift,
  },
  {
    what: 'longest task while it loads',
    aim: 100,
    unit: ' ms',
    times: 3,
    measure: firstTask,
  },
  {
    what: 'work while nobody touches it',
    aim: 5,
    unit: ' ms a second',
    times: 1,
    measure: idle,
  },
] as const;

const middle = (taken: readonly number[] = []): number => percentile(taken, 0.5);

async function paintRow(
  browser: Browser,
  name: string,
  address: string,
  theme: string,
): Promise<Row> {
  const [theirs, ours] = (
    await inTurn(PAINTS, [() => largestPaint(browser, theme), () => largestPaint(browser, address)])
  ).map(middle) as [number, number];
  const ratio = ours / theirs;
  return {
    what: `${name}: largest paint over that of an empty page of a theme`,
    aim: `${LATER}`,
    measured: `${ratio.toFixed(2)}, ${ours.toFixed(0)} ms against ${theirs.toFixed(0)} ms`,
    met: ratio <= LATER,
  };
}

const measuredPages = (): readonly string[] =>
  builtPages()
    .map(({ address }) => address)
    .filter((address) => ['/', '/whole-car/'].includes(address) || /^\/lessons\/./u.test(address));

/** Four rows for each page. */
export async function benchPages([theme]: readonly string[]): Promise<readonly Row[]> {
  // First, for it can fail, and nothing would stop what was started before.
  const beside = theme ?? buildThemePage();
  const browser = await launchChromium();
  const [ours, theirs] = await Promise.all([serve(), serve(beside)]);
  const rows: Row[] = [];
  try {
    for (const path of measuredPages()) {
      const address = `${ours.origin}${path}`;
      const name = path === '/' ? 'home' : (path.split('/').at(-2) ?? path);
      rows.push(await paintRow(browser, name, address, `${theirs.origin}/`));
      for (const { what, aim, unit, times, measure } of KINDS) {
        const [taken] = await inTurn(times, [() => measure(browser, address)]);
        const value = middle(taken);
        rows.push({
          what: `${name}: ${what}`,
          aim: `${aim}${unit}`,
          measured: `${value.toFixed(unit === '' ? 4 : 1)}${unit}`,
          met: value <= aim,
        });
      }
    }
  } finally {
    for (const site of [ours, theirs]) site.stop();
    await browser.close();
  }
  return rows;
}
