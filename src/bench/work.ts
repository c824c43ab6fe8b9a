// `npm run bench -- work`: how long practice, planner, job sheet, one's own sheet and log reader let somebody wait, in the built site
// in Chromium; what says "slow phone" on a CPU slowed four times, at 1.6 Mbit/s and 150 ms. Three minutes.
import type { Browser, Page } from '@playwright/test';
import { launchChromium } from '../build/launch-chromium.ts';
import { packed, pageCost } from '../build/budgets.ts';
import { builtPages, dist } from '../build/pages.ts';
import { keptTable } from '../diagnosis/kept-table.ts';
import { knownFrom, type Answered } from '../quiz/schedule/schedule.ts';
import { roundOf, waiting } from '../quiz/schedule/round.ts';
import { seededRandom } from '../quiz/seeded-order.ts';
import { onFreshPage, slow, SLOWED, slowNetwork } from './browser.ts';
import { longLog } from './log.ts';
import { timed, type Row } from './row.ts';
import { serve } from './site.ts';

const CARDS = 5000;
const ANSWERS = 50_000;
const TIMES = 7;

/** A round out of all answers, as the page of today works it out when it is opened. */
function schedule(): Row {
  const random = seededRandom(5);
  const items = Array.from({ length: CARDS }, (_, n) => ({
    id: `q-${n}`,
    concept: `idea-${n % 400}`,
    lookAlikes: [`idea-${(n + 1) % 400}`],
  }));
  const answers = Array.from({ length: ANSWERS }, (_, n): Answered => ({
    item: `q-${Math.floor(random() * CARDS)}`,
    day: Math.floor((n * 120) / ANSWERS),
    result: random() < 0.7 ? 'right' : 'wrong',
    certainty: random() < 0.5 ? 3 : 2,
  }));
  const taken = Array.from({ length: TIMES + 2 }, () => {
    const begun = performance.now();
    const known = knownFrom(answers);
    const round = roundOf(waiting(items, known, { today: 120, exam: 150 }), known, 26);
    if (round.length !== 26) throw new Error(`The round has ${round.length} questions.`);
    return performance.now() - begun;
  });
  return timed('a round of 26 out of 5,000 questions and 50,000 answers', taken.slice(2), 'ms', {
    at: 'p95',
    most: 100,
  });
}

const sized = (what: string, bytes: number, most: number): Row => ({
  what,
  aim: `${most} kB`,
  measured: `${(bytes / 1000).toFixed(1)} kB`,
  met: bytes <= most * 1000,
});

function sizes(): readonly Row[] {
  const costs = builtPages()
    .filter(({ address }) => address.startsWith('/practise/'))
    .map((page) => pageCost(page, dist))
    .sort((a, b) => b.script - a.script);
  const [most] = costs;
  if (most === undefined) throw new Error('No page of practice is built.');
  return [
    sized(
      `script of ${most.address}, the heaviest of ${costs.length} pages of practice`,
      most.script,
      60,
    ),
    sized('the planner’s table of a transmission', packed(keptTable), 60),
  ];
}

/** From a press to a heading that has the focus [ms]. */
async function untilHead(page: Page, button: string, head: string): Promise<number> {
  const at = page.getByRole('button', { name: button, exact: true });
  await at.waitFor();
  await page.waitForFunction((name) => {
    const all = [...document.querySelectorAll('button')];
    return all.some(({ textContent, disabled }) => textContent.trim() === name && !disabled);
  }, button);
  return page.evaluate(
    ({ pressed, wanted }) =>
      new Promise<number>((done) => {
        const begun = performance.now();
        const look = (): void => {
          const { activeElement: on } = document;
          if (on?.textContent.trim() === wanted) done(performance.now() - begun);
          else requestAnimationFrame(look);
        };
        const all = [...document.querySelectorAll('button')];
        all.find(({ textContent }) => textContent.trim() === pressed)?.click();
        look();
      }),
    { pressed: button, wanted: head },
  );
}

const FIRST_QUESTIONS = [
  ['a rehearsal', '/practise/rehearsal/', 'Begin', 'Question 1 of 50'],
  ['a round of today', '/practise/today/', 'Begin', 'Question 1 of 6'],
  [
    'the questions of a lesson',
    '/lessons/hot-fluid-thin-fluid/',
    'Cover the lesson and start',
    'Question 1 of 6',
  ],
] as const;

/** Somebody reads the offer for two seconds, then presses. */
async function firstQuestions(browser: Browser, origin: string): Promise<readonly Row[]> {
  const rows: Row[] = [];
  for (const [what, path, button, head] of FIRST_QUESTIONS) {
    const taken: number[] = [];
    for (let time = 0; time < TIMES; time += 1) {
      taken.push(
        await onFreshPage(browser, async (page) => {
          await slowNetwork(page);
          await slow(page, SLOWED);
          await page.goto(`${origin}${path}`);
          await page.getByRole('button', { name: button, exact: true }).scrollIntoViewIfNeeded();
          await page.waitForTimeout(2000);
          return untilHead(page, button, head);
        }),
      );
    }
    rows.push(
      timed(`slow phone: first question of ${what}, after the press`, taken, 'ms', {
        at: 'p50',
        most: 1000,
      }),
    );
  }
  return rows;
}

const READINGS = [
  ['clutch.forward.700.hot', '25'],
  ['clutch.reverse.700.hot', '193 kPa'],
  ['clutch.high.700.hot', '57 psi'],
  ['line.reverse.700.hot', '60 psi'],
  ['clutch.forward.700.cold', '55 psi'],
  ['clutch.reverse.700.cold', '55 psi'],
] as const;

async function beginJob(page: Page, origin: string): Promise<void> {
  await page.goto(`${origin}/measure/jobs/`);
  await page.locator('#jobs[data-ready="true"]').waitFor();
  await page.getByLabel('Short label').fill('Bay 3');
  await page.keyboard.press('Enter');
  await page.locator('.next-tests > ol > li').first().waitFor();
}

/** From Enter to the last change of the causes and of the next tests [ms]. */
async function enter(page: Page, test: string, reading: string): Promise<[number, number]> {
  await page.getByLabel('Test', { exact: true }).selectOption(test);
  await page.getByLabel('It read').fill(reading);
  await page.evaluate(() => {
    const at = { begun: 0, causes: 0, tests: 0 };
    Object.assign(globalThis, { benchAt: at });
    addEventListener('keydown', () => (at.begun = performance.now()), {
      capture: true,
      once: true,
    });
    const watch = (part: string, told: () => void): void => {
      const frame = document.querySelector(part);
      if (frame)
        new MutationObserver(told).observe(frame, {
          subtree: true,
          childList: true,
          characterData: true,
        });
    };
    watch('.next-causes', () => (at.causes = performance.now()));
    watch('.next-tests', () => (at.tests = performance.now()));
  });
  await page.keyboard.press('Enter');
  await page.waitForTimeout(1200);
  const at = await page.evaluate(
    () =>
      (globalThis as unknown as { benchAt: { begun: number; causes: number; tests: number } })
        .benchAt,
  );
  if (at.causes < at.begun || at.tests < at.begun) throw new Error(`${test} changed nothing.`);
  return [at.causes - at.begun, at.tests - at.begun];
}

/** A job with a reading more each time. The first fetches the planner and is told by itself. */
async function planner(browser: Browser, origin: string): Promise<readonly Row[]> {
  const causes: number[] = [];
  const tests: number[] = [];
  for (let time = 0; time < 2; time += 1) {
    await onFreshPage(browser, async (page) => {
      await beginJob(page, origin);
      for (const [test, reading] of READINGS) {
        const [list, next] = await enter(page, test, reading);
        causes.push(list);
        tests.push(next);
      }
    });
  }
  const aim = { at: 'p50', most: 100 } as const;
  return [
    timed('job: a reading entered, until the causes are weighed', causes, 'ms', aim),
    timed('job: the same, until the next test is named', tests, 'ms', aim),
  ];
}

/** By a script, which does not think: what the page itself takes of the two minutes. */
async function wholeJob(browser: Browser, origin: string): Promise<Row> {
  const taken = await onFreshPage(browser, async (page) => {
    await slow(page, SLOWED);
    await page.addInitScript(() => {
      globalThis.print = () => undefined;
    });
    const begun = performance.now();
    await beginJob(page, origin);
    for (const [test, reading] of READINGS.slice(0, 3)) {
      await page.getByLabel('Test', { exact: true }).selectOption(test);
      await page.getByLabel('It read').fill(reading);
      await page.keyboard.press('Enter');
    }
    await page.locator('.next-causes li', { hasText: 'Split transfer seal' }).first().waitFor();
    await page.getByRole('button', { name: 'Print both pages' }).click();
    return (performance.now() - begun) / 1000;
  });
  return {
    what: 'slow phone: new job, three readings, what next, print, by a script',
    aim: '120 s',
    measured: `${taken.toFixed(1)} s`,
    met: taken <= 120,
  };
}

async function ownTable(browser: Browser, origin: string): Promise<Row> {
  const taken = await onFreshPage(browser, async (page) => {
    await page.goto(`${origin}/measure/transmission/`);
    await page.locator('#own-sheets[data-ready="true"]').waitFor();
    await page.getByLabel('Name of the sheet').fill('Van');
    await page.keyboard.press('Enter');
    await page.getByLabel('First gear ratio').fill('3.9');
    const panel = page.locator('.sheet-planner');
    const begun = performance.now();
    await panel.getByRole('button', { name: 'Make the table' }).click();
    await panel.locator('progress').waitFor();
    await panel.locator('progress').waitFor({ state: 'detached', timeout: 180_000 });
    return (performance.now() - begun) / 1000;
  });
  return {
    what: 'the planner’s table of a sheet of one’s own, in its worker',
    aim: '60 s',
    measured: `${taken.toFixed(1)} s`,
    met: taken <= 60,
  };
}

/** From the choice of a file to its findings on the page; the first in a fresh page, and the next one [ms]. */
async function logs(browser: Browser, origin: string): Promise<readonly Row[]> {
  const buffer = Buffer.from(longLog(200_000));
  const first: number[] = [];
  const next: number[] = [];
  for (let time = 0; time < 3; time += 1) {
    await onFreshPage(browser, async (page) => {
      await page.goto(`${origin}/measure/log/`);
      await page.locator('#log-reader[data-ready="true"]').waitFor();
      for (const taken of [first, next]) {
        await page.evaluate(() => {
          const at = { begun: 0, shown: 0 };
          Object.assign(globalThis, { benchAt: at });
          addEventListener('change', () => (at.begun = performance.now()), {
            capture: true,
            once: true,
          });
          const seen = new MutationObserver(() => {
            const reading = document.querySelector('progress');
            if (reading === null && document.querySelector('.log-findings button'))
              at.shown = performance.now();
          });
          seen.observe(document.body, { subtree: true, childList: true });
        });
        await page
          .getByLabel('Choose a log file')
          .setInputFiles({ name: 'long.csv', mimeType: 'text/csv', buffer });
        await page.waitForTimeout(500);
        await page.locator('progress').waitFor({ state: 'detached' });
        await page.locator('.log-findings button').first().waitFor();
        await page.waitForTimeout(500);
        const at = await page.evaluate(
          () => (globalThis as unknown as { benchAt: { begun: number; shown: number } }).benchAt,
        );
        taken.push(at.shown - at.begun);
      }
    });
  }
  const aim = { at: 'p50', most: 1000 } as const;
  return [
    timed('a log of 200,000 rows, from its choice to its findings: the first', first, 'ms', aim),
    timed('the same: a further one', next, 'ms', aim),
  ];
}

export async function benchWork(): Promise<readonly Row[]> {
  const rows = [schedule(), ...sizes()];
  const browser = await launchChromium();
  const { origin, stop } = await serve();
  try {
    rows.push(
      ...(await firstQuestions(browser, origin)),
      ...(await planner(browser, origin)),
      await wholeJob(browser, origin),
      await ownTable(browser, origin),
      ...(await logs(browser, origin)),
    );
  } finally {
    stop();
    await browser.close();
  }
  return rows;
}
