// The whole site from the device, its server dead; a newer version; a store that is not whole. Every test has a server, a
// browser profile and a copy of the site of its own.
import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test as base, type Page } from '@playwright/test';
import { storeOffline } from '../../src/build/store-offline.ts';
import { plannedMeetings } from '../../src/lessons/meetings.ts';
import { giveAnswer } from '../e2e/give-answer.ts';
import { ownServer, type OwnServer } from './own-server.ts';
import { addresses } from '../e2e/pages.ts';
import { WALL, walkMeeting } from '../e2e/wall.ts';

const state = (page: Page) => page.locator('#offline');
const says = (page: Page) => page.locator('#offline-says');
const STORED = { timeout: 120_000 };

interface Stored {
  /** Paths that the server answers with a fault from then on. */
  readonly refused: Set<string>;
  readonly own: OwnServer;
  /** A copy without the search, which is half of its files. */
  readonly small: OwnServer;
  readonly trouble: string[];
}

const test = base.extend<Stored>({
  serviceWorkers: 'allow',
  // eslint-disable-next-line no-empty-pattern -- Playwright reads from the pattern what a fixture needs: nothing
  refused: ({}, use) => use(new Set()),
  // eslint-disable-next-line no-empty-pattern -- Playwright reads from the pattern what a fixture needs: nothing
  own: async ({}, use) => {
    const own = await ownServer();
    await use(own);
    await own.end();
  },
  small: async ({ refused }, use) => {
    const refuse = (path: string) => refused.has(path);
    const own = await ownServer({ refuse, without: ['pagefind'] });
    await use(own);
    await own.end();
  },
  trouble: async ({ page }, use) => {
    const trouble: string[] = [];
    page.on('console', (message) => {
      if (message.type() === 'error' || message.type() === 'warning')
        trouble.push(`${message.text()} (${page.url()})`);
    });
    page.on('pageerror', (error) => trouble.push(`${error.message} (${page.url()})`));
    await use(trouble);
  },
});
test.describe.configure({ timeout: 300_000 });

async function ready(page: Page, { origin }: OwnServer): Promise<void> {
  await page.goto(`${origin}/offline/`);
  await expect(state(page)).toHaveAttribute('data-state', 'ready', STORED);
}

/** What a new build changes: a page, and with it the list of files and the service worker. */
async function nextVersion({ folder }: OwnServer, words: string): Promise<void> {
  const at = (name: string) => join(folder, name);
  const page = readFileSync(at('course/index.html'), 'utf8').replace(
    /<h1>[^<]*<\/h1>/,
    `<h1>${words}</h1>`,
  );
  writeFileSync(at('course/index.html'), page);
  expect(await storeOffline(folder)).toEqual([]);
}

test('one visit, then the server is gone: every page, the search, questions, a case, a run', async ({
  page,
  own,
  trouble,
}) => {
  await page.goto(`${own.origin}/`);
  // In the page that was visited, and nothing else of the site opened.
  await expect
    .poll(
      () =>
        page.evaluate(async () => (await navigator.serviceWorker.getRegistration())?.active?.state),
      STORED,
    )
    .toBe('activated');
  await own.kill();
  await expect(fetch(own.origin)).rejects.toThrow();

  await page.goto(`${own.origin}/offline/`);
  await expect(state(page)).toHaveAttribute('data-state', 'ready');
  await expect(says(page)).toHaveText(/^Ready offline: all \d{3,4} files .* \d+\.\d\sMB here/);

  for (const address of addresses) {
    await page.goto(own.origin + address);
    await expect(page.locator('h1').first(), address).toBeVisible();
    // Islands come alive from the store too.
    await expect(page.locator('astro-island[ssr][client="load"]'), address).toHaveCount(0);
  }
  expect(trouble).toEqual([]);

  await page.goto(`${own.origin}/search/?q=transfer+seal`);
  await expect(page.locator('#search-says')).toContainText(/is in \d+ lessons/);
  await page.getByRole('radio', { name: /Metric units/ }).check({ force: true });
  await page.getByRole('region', { name: 'Lessons' }).locator('h4 a').first().click();
  await expect(page).toHaveURL(/\/lessons\/[a-z-]+\/#[a-z-]+$/);

  await page.goto(`${own.origin}/lessons/hot-fluid-thin-fluid/`);
  const start = page.getByRole('button', { name: 'Cover the lesson and start' });
  await start.scrollIntoViewIfNeeded();
  await start.click();
  for (let n = 1; n <= 6; n += 1) {
    await expect(page.getByRole('heading', { name: `Question ${n} of 6` })).toBeVisible();
    await giveAnswer(page);
    await page.getByRole('radio', { name: 'Guessing' }).press('Space');
    await page.getByRole('button', { name: 'Check my answer' }).click();
    await page.getByRole('button', { name: /Next question|See how it went/ }).click();
  }
  await expect(page.getByRole('heading', { name: 'How it went' })).toBeVisible();

  await page.goto(`${own.origin}/practise/case/?case=fine-cold-revs-hot`);
  await page.getByRole('button', { name: 'In which ranges?' }).click();
  await page.getByLabel('What is wrong').selectOption('transferSeal');
  await page.getByLabel('Transfer seal and bridge part').check();
  await page.getByRole('button', { name: 'Hand it in' }).click();
  await expect(page.locator('#case-outcome').getByRole('heading').first()).toBeVisible();

  await page.goto(`${own.origin}/measure/log/`);
  await page.getByRole('button', { name: 'Slips in Drive' }).click();
  await expect(page.locator('.log-findings button').first()).toBeVisible();

  await page.goto(`${own.origin}/lessons/thin-gap-open-hole/`);
  const sim = page.locator('#gap-or-hole');
  await sim.scrollIntoViewIfNeeded();
  await expect(sim).toHaveAttribute('data-ready', 'true');
  await sim.locator('.choice-stack input').first().press('Space');
  await sim.locator('.choice-row input').first().press('Space');
  await sim.locator('button[type="submit"]').press('Enter');
  await expect(sim.locator('.stage-head', { hasText: 'What it did' })).toBeVisible();
  await sim.getByRole('button', { name: 'On to the tasks' }).press('Enter');
  await expect(sim.locator('.stage-head', { hasText: /^Task 1 of/ })).toBeVisible();
  expect(trouble).toEqual([]);

  // Addresses as people type them: no slash at the end, and what somebody hung onto it; one that leads nowhere.
  await page.goto(`${own.origin}/lessons/live-data`);
  await expect(page.locator('.lesson h1')).toBeVisible();
  await page.goto(`${own.origin}/course/?from=mail#main`);
  await expect(page.getByRole('heading', { level: 1, name: 'Course' })).toBeVisible();
  const response = await page.goto(`${own.origin}/no-such-page/`);
  expect(response?.status()).toBe(404);
  await expect(page.getByRole('heading', { level: 1, name: 'No such page' })).toBeVisible();
});

test('every meeting is held to its end with the server gone, its simulations and its cars too', async ({
  page,
  own,
  trouble,
}) => {
  await ready(page, own);
  await own.kill();
  await page.setViewportSize(WALL);
  for (const meeting of plannedMeetings()) {
    await walkMeeting(page, own.origin, meeting, () =>
      expect(page.locator('.stage-scene > h2')).not.toBeEmpty(),
    );
  }
  expect(trouble).toEqual([]);
});

test('a file that cannot be stored: "ready" is not said, and it is once the file came', async ({
  page,
  small: own,
  refused,
}) => {
  const path = '/practise/cases/fine-cold-revs-hot.json';
  refused.add(path);
  await page.goto(`${own.origin}/offline/`);
  await expect(state(page)).toHaveAttribute('data-state', 'broken', STORED);
  await expect(says(page)).toHaveText(/^Not ready: \d+ of \d+ files .* could not be fetched/);
  const [, have, of] = /(\d+) of (\d+)/.exec(await says(page).innerText()) ?? [];
  expect(Number(have)).toBeLessThan(Number(of));

  refused.clear();
  await page.getByRole('button', { name: 'Try again' }).click();
  await expect(state(page)).toHaveAttribute('data-state', 'ready', STORED);

  // Somebody, or the browser, takes one file out of the store: the page asks the store, and tells.
  const gone = await page.evaluate(async (path) => {
    const [name = ''] = (await caches.keys()).filter((one) => one.includes('precache'));
    return (await caches.open(name)).delete(path, { ignoreSearch: true });
  }, path);
  expect(gone).toBe(true);
  await page.reload();
  await expect(state(page)).toHaveAttribute('data-state', 'broken');
  await expect(says(page)).not.toContainText('Ready offline');
  await page.getByRole('button', { name: 'Try again' }).click();
  await expect(state(page)).toHaveAttribute('data-state', 'ready');
});

test('a new version asks, waits while something is open, and comes whole', async ({
  page,
  context,
  small: own,
}) => {
  await ready(page, own);
  await page.goto(`${own.origin}/lessons/live-data/`);
  await page.getByRole('button', { name: 'Mark as done' }).click();
  await nextVersion(own, 'Course, second edition');
  const newer = page.locator('.newer');

  // In the middle of a case nothing is said, and the old version is in force, whole.
  await page.goto(`${own.origin}/practise/case/?case=fine-cold-revs-hot`);
  await page.getByRole('button', { name: 'In which ranges?' }).click();
  await expect(newer).toHaveCount(1, STORED);
  await expect(newer).toBeHidden();

  await page.goto(`${own.origin}/course/`);
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('Course');
  await expect(newer).toBeVisible();

  // A second window would be left between the versions.
  const other = await context.newPage();
  await other.goto(`${own.origin}/practise/today/`);
  await page.bringToFront();
  await page.getByRole('button', { name: 'Reload now' }).click();
  await expect(newer).toContainText('open in another tab');
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('Course');
  await other.close();

  await page.getByRole('button', { name: 'Reload now' }).click();
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('Course, second edition');
  await expect(newer).toHaveCount(0);
  // What was done before is there, and the store has the new version alone.
  await own.kill();
  await page.goto(`${own.origin}/lessons/live-data/`);
  await expect(page.getByRole('button', { name: 'Undo' })).toBeVisible();
  await page.goto(`${own.origin}/offline/`);
  await expect(state(page)).toHaveAttribute('data-state', 'ready');
  const kept = await page.evaluate(async () => {
    const [name = ''] = (await caches.keys()).filter((one) => one.includes('precache'));
    return (await (await caches.open(name)).keys()).map(({ url }) => new URL(url).pathname);
  });
  expect(kept.filter((path) => path === '/course/index.html')).toHaveLength(1);
});

test('a host that is being brought up to date does not mix the versions', async ({
  page,
  small: own,
}) => {
  await ready(page, own);
  const course = join(own.folder, 'course', 'index.html');
  const old = readFileSync(course);
  await nextVersion(own, 'Course, second edition');
  // The new list is there, and this page still the old one.
  writeFileSync(course, old);
  await page.goto(`${own.origin}/glossary/`);
  await page.evaluate(async () => {
    const registration = await navigator.serviceWorker.getRegistration();
    await registration?.update();
    const installing = registration?.installing;
    if (!installing) return;
    await new Promise<void>((done) => {
      installing.addEventListener('statechange', () => {
        if (installing.state === 'redundant' || installing.state === 'installed') done();
      });
    });
  });
  await expect(page.locator('.newer')).toHaveCount(0);
  await own.kill();
  await page.goto(`${own.origin}/course/`);
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('Course');
});

test('who takes the copy away has none, also after the next visit, until it is asked for', async ({
  page,
  small: own,
}) => {
  await ready(page, own);
  await page.getByRole('button', { name: 'Remove the stored site' }).click();
  await expect(state(page)).toHaveAttribute('data-state', 'off');
  await page.goto(`${own.origin}/`);
  await page.waitForLoadState('networkidle');
  const left = () =>
    page.evaluate(async () => ({
      workers: (await navigator.serviceWorker.getRegistrations()).length,
      stores: (await caches.keys()).filter((name) => name.includes('precache')).length,
    }));
  expect(await left()).toEqual({ workers: 0, stores: 0 });
  await page.goto(`${own.origin}/offline/`);
  await expect(says(page)).toHaveText(/^Not stored/);
  await page.getByRole('button', { name: 'Store the site' }).click();
  await expect(state(page)).toHaveAttribute('data-state', 'storing', STORED);
});

test('a browser that has no service workers says why, and so does an address that begins with http://', async ({
  page,
  small: own,
}) => {
  await page.addInitScript(() => {
    delete (Navigator.prototype as { serviceWorker?: unknown }).serviceWorker;
  });
  await page.goto(`${own.origin}/offline/`);
  await expect(says(page)).toHaveText(/^Not possible in this window: .*private window/);
  await page.addInitScript(() => {
    Object.defineProperty(globalThis, 'isSecureContext', { value: false });
  });
  await page.reload();
  await expect(says(page)).toHaveText(/^Not possible at this address: it begins with http:/);
});

test('the manifest makes the site one that can be installed', async ({ page, small: own }) => {
  await page.goto(`${own.origin}/`);
  const href = await page.locator('link[rel="manifest"]').getAttribute('href');
  const address = new URL(href ?? '', own.origin);
  const manifest = (await (await fetch(address)).json()) as {
    name: string;
    display: string;
    start_url: string;
    scope: string;
    icons: readonly { src: string; sizes: string; purpose?: string }[];
  };
  expect(manifest).toMatchObject({ name: 'Slips When Hot', display: 'standalone' });
  const scope = new URL(manifest.scope, address).href;
  expect(new URL(manifest.start_url, address).href.startsWith(scope)).toBe(true);
  // Two sizes and a maskable one: what browsers ask of a site before they offer to install it (web.dev, "Install criteria",
  // from memory).
  for (const { src, sizes } of manifest.icons.filter(({ src }) => src.endsWith('.png'))) {
    const size = await page.evaluate(async (src) => {
      const image = new Image();
      image.src = src;
      await image.decode();
      return `${image.naturalWidth}x${image.naturalHeight}`;
    }, new URL(src, address).href);
    expect(size).toBe(sizes);
  }
  expect(manifest.icons.some(({ purpose }) => purpose === 'maskable')).toBe(true);
});
