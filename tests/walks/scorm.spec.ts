// The course package as a platform plays it: an open run-time (scorm-again) above, the package in a folder of its own.
import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { expect, test, type FrameLocator, type Page } from '@playwright/test';
import { mime } from '../scorm/mime.ts';
import { packageOf } from '../../src/scorm/pack.ts';
import { dist } from '../../src/build/pages.ts';

const platform = 'https://platform.test';
const folder = `${platform}/files/course-7/`;
const files = packageOf(dist);
const runtime = readFileSync(createRequire(import.meta.url).resolve('scorm-again/scorm12'), 'utf8');

interface Core {
  readonly lesson_status: string;
  readonly exit: string;
  readonly session_time: string;
  readonly score: { readonly raw: string; readonly min: string; readonly max: string };
}
interface Cmi {
  readonly core: Core;
  readonly suspend_data: string;
}

/** A platform with nothing on it but the run-time and the frame. Whatever goes wrong in the package is kept. */
async function open(page: Page, kept?: Cmi): Promise<string[]> {
  const trouble: string[] = [];
  page.on('console', (message) => {
    if (message.type() === 'error') trouble.push(message.text());
  });
  page.on('pageerror', (error) => trouble.push(error.message));
  await page.route(`${platform}/**`, (route) => {
    const address = route
      .request()
      .url()
      .replace(/[?#].*$/, '');
    const name = decodeURI(address.slice(folder.length));
    const bytes = address.startsWith(folder) ? files[name] : undefined;
    if (bytes !== undefined) {
      return route.fulfill({ body: Buffer.from(bytes), contentType: mime(name) });
    }
    if (address === `${platform}/`) {
      return route.fulfill({
        contentType: 'text/html',
        body: '<!doctype html><title>Platform</title>',
      });
    }
    trouble.push(`asked for ${address}`);
    return route.fulfill({ status: 404, body: '' });
  });
  await page.goto(`${platform}/`);
  await page.addScriptTag({ content: runtime });
  await page.evaluate(
    ({ kept, launch }) => {
      const { Scorm12API } = window as unknown as { Scorm12API: new (settings: object) => Api };
      interface Api {
        loadFromJSON(json: object, at: string): void;
        on(name: string, call: () => void): void;
        readonly cmi: object;
      }
      const api = new Scorm12API({ autocommit: false, logLevel: 4 });
      if (kept !== undefined) api.loadFromJSON(kept, 'cmi');
      const all = { API: api, finished: 0 };
      api.on('LMSFinish', () => ((window as unknown as typeof all).finished += 1));
      Object.assign(window, all);
      const frame = document.createElement('iframe');
      frame.src = launch;
      frame.width = '1200';
      frame.height = '700';
      document.body.append(frame);
    },
    {
      kept: kept && { core: kept.core, suspend_data: kept.suspend_data },
      launch: `${folder}index.html`,
    },
  );
  return trouble;
}

const cmi = (page: Page): Promise<Cmi> =>
  page.evaluate(
    () => JSON.parse(JSON.stringify((window as unknown as { API: { cmi: Cmi } }).API.cmi)) as Cmi,
  );
const course = (page: Page): FrameLocator => page.frameLocator('iframe').frameLocator('iframe');

test('progress and score reach the platform, come back on another device, and the visit is closed', async ({
  browser,
  page,
}) => {
  test.setTimeout(120_000);
  const trouble = await open(page);
  const site = course(page);
  await expect(site.getByRole('heading', { level: 1, name: 'Course' })).toBeVisible();
  await expect.poll(async () => (await cmi(page)).core.lesson_status).toBe('incomplete');

  await site.getByRole('link', { name: 'Thin gap, open hole' }).first().click();
  await expect(site.getByRole('heading', { level: 1, name: 'Thin gap, open hole' })).toBeVisible();
  const start = site.getByRole('button', { name: 'Cover the lesson and start' });
  await start.scrollIntoViewIfNeeded();
  await start.click();
  for (let n = 1; n <= 6; n += 1) {
    await expect(site.getByRole('heading', { name: `Question ${n} of 6` })).toBeVisible();
    const field = site.getByRole('textbox', { name: /Your answer/ });
    if ((await field.count()) > 0) await field.fill('5');
    else await site.locator('.retrieval-options input').first().check();
    await site.getByRole('radio', { name: 'Guessing' }).check();
    await site.getByRole('button', { name: 'Check my answer' }).click();
    await site.getByRole('button', { name: /Next question|See how it went/ }).click();
  }
  const said = await site.getByText(/of 6 right/).innerText();
  const right = Number(/(\d) of 6 right/.exec(said)?.[1]);
  // Of 25 lessons one was asked: its share of right answers, a twenty-fifth of 100 for the whole.
  const score = String(Math.round((100 * right) / 6 / 25));
  await expect
    .poll(async () => (await cmi(page)).suspend_data.split(';')[2]?.match(/[01]/g)?.length)
    .toBe(6);
  expect((await cmi(page)).core.score).toMatchObject({ raw: score, min: '0', max: '100' });

  await site.getByRole('button', { name: 'Mark as done' }).click();
  await expect.poll(async () => (await cmi(page)).suspend_data.split(';')[1]).toContain('1');
  expect((await cmi(page)).core.lesson_status).toBe('incomplete');

  await page.evaluate(() => document.querySelector('iframe')?.remove());
  await expect
    .poll(() => page.evaluate(() => (window as unknown as { finished: number }).finished))
    .toBe(1);
  const left = await cmi(page);
  expect(left.core.session_time).toMatch(/^\d{2,4}:\d{2}:\d{2}$/);
  expect(left.suspend_data.length).toBeLessThanOrEqual(4096);
  expect(trouble).toEqual([]);

  const elsewhere = await (await browser.newContext()).newPage();
  const more = await open(elsewhere, left);
  const again = course(elsewhere);
  await expect(again.locator('[data-lesson="thin-gap-open-hole"] .done')).toBeVisible();
  await expect(again.locator('[data-lesson="live-data"] .done')).toBeHidden();
  await expect.poll(async () => (await cmi(elsewhere)).suspend_data).toBe(left.suspend_data);
  expect((await cmi(elsewhere)).core.score.raw).toBe(score);
  expect(more).toEqual([]);
});

test('what a page fetches is found in the folder too', async ({ page }) => {
  const trouble = await open(page);
  const visit = (at: string) => page.goto(`${folder}site/${at}`);
  await visit('practise/sheet/index.html?lessons=all&count=9&units=us&seed=1');
  await expect(page.locator('.paper-questions > li')).toHaveCount(9);
  await visit('practise/today/index.html');
  await expect(page.getByRole('button', { name: 'Begin' })).toBeVisible();
  await page.getByRole('link', { name: 'Bring it in' }).click();
  await expect(page.getByRole('heading', { level: 2 }).first()).toBeVisible();
  await visit('measure/log/index.html');
  await page.getByRole('button', { name: 'Slips in Drive' }).click();
  await expect(page.getByRole('button', { name: 'Put these into a job' })).toBeVisible();
  await visit('measure/index.html');
  await expect(page.locator('.next-causes li').first()).toBeVisible({ timeout: 20_000 });
  // What the search finds stands in its index by the root of a host.
  await page.goto(`${folder}index.html`);
  const site = page.frameLocator('iframe');
  await site.getByRole('searchbox').first().fill('seal');
  await site.getByRole('searchbox').first().press('Enter');
  await site.locator('#search-results a').first().click();
  await expect(site.getByRole('heading', { level: 1 })).not.toHaveText('Search');
  expect(trouble).toEqual([]);
});

test('without a platform the course works the same', async ({ page }) => {
  const trouble = await open(page);
  await page.goto(`${folder}index.html`);
  await expect(
    page.frameLocator('iframe').getByRole('heading', { level: 1, name: 'Course' }),
  ).toBeVisible();
  expect(trouble).toEqual([]);
});
