// The site in a folder of a host, as SITE_BASE=/shop/ builds it: every page and link, the scripts that fetch, the store.
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test as base } from '@playwright/test';
import { brokenLinks } from '../../src/build/links.ts';
import { builtPages } from '../../src/build/pages.ts';
import { filesIn } from '../../src/build/files-in.ts';
import { ownServer, type OwnServer } from './own-server.ts';
import { addresses } from '../e2e/pages.ts';

const BASE = '/shop/';
const test = base.extend<{ trouble: string[] }, { own: OwnServer; at: string }>({
  own: [
    // eslint-disable-next-line no-empty-pattern -- Playwright reads from the pattern what a fixture needs: nothing
    async ({}, use) => {
      const own = await ownServer({ base: BASE });
      await use(own);
      await own.end();
    },
    { scope: 'worker' },
  ],
  at: [({ own }, use) => use(own.origin + BASE), { scope: 'worker' }],
  trouble: async ({ page, at }, use) => {
    const trouble: string[] = [];
    page.on('console', (message) => {
      if (message.type() === 'error') trouble.push(`${message.text()} (${page.url()})`);
    });
    page.on('pageerror', (error) => trouble.push(`${error.message} (${page.url()})`));
    page.on('request', (request) => {
      const url = request.url();
      if (!url.startsWith(at) && !/^(data|blob):/.test(url)) trouble.push(`asked for ${url}`);
    });
    page.on('response', (response) => {
      if (response.status() >= 400) trouble.push(`${response.status()} ${response.url()}`);
    });
    await use(trouble);
  },
});
test.describe.configure({ timeout: 120_000, mode: 'serial' });

test('no address of the site is left as it was, and every link leads to a page', ({ own }) => {
  const host = join(own.folder, '..');
  const pages = builtPages(host).filter(({ address }) => address !== '/404.html');
  expect(pages.length).toBe(addresses.length);
  expect(brokenLinks(pages, host)).toEqual([]);
  const old = /(?:["'`=]|url\()\/(?!shop\/)[a-z_]+\/[^"'`) ]*/g;
  const left = filesIn(own.folder)
    .filter((name) => /\.(html|js|json)$/.test(name) && !/pagefind/.test(name))
    .flatMap((name) =>
      Array.from(readFileSync(join(own.folder, name), 'utf8').matchAll(old), ([found]) => found),
    )
    // Sentences on units and numbers, the root of a drawing's path, an expression: nothing that has a folder of the site.
    .filter((found) =>
      /\/(_astro|es|lessons|practise|questions|measure|model|search|course|glossary|sources|logs|pagefind|whole-car|offline|meetings|proof|icons)\//.test(
        found,
      ),
    );
  expect(left).toEqual([]);
});

test('every page comes, with all that it asks for', async ({ page, at, trouble }) => {
  for (const address of addresses) {
    await page.goto(at + address.slice(1));
    await expect(page.locator('h1').first(), address).toBeVisible();
    await expect(page.locator('astro-island[ssr][client="load"]'), address).toHaveCount(0);
  }
  expect(trouble).toEqual([]);
});

test('search, questions, a case, a log, Spanish', async ({ page, at, trouble }) => {
  await page.goto(`${at}glossary/`);
  await page.getByRole('searchbox', { name: 'Search the site' }).fill('transfer seal');
  await page.keyboard.press('Enter');
  await expect(page.locator('#search-says')).toContainText(/is in \d+ lessons/);
  await page.getByRole('region', { name: 'Lessons' }).locator('h4 a').first().click();
  await expect(page).toHaveURL(/\/shop\/lessons\/[a-z-]+\/#[a-z-]+$/);
  await page.goto(`${at}search/?q=xyzzyx`);
  await page.locator('#main').getByRole('link').first().click();
  await expect(page).toHaveURL(/\/shop\/[a-z]+\/$/);

  await page.goto(`${at}course/`);
  await page.getByRole('link', { name: /^Carry on with lesson \d+$/ }).click();
  await expect(page).toHaveURL(/\/shop\/lessons\/[a-z-]+\/(#[a-z-]+)?$/);
  await expect(page.locator('h1').first()).toBeVisible();

  await page.goto(`${at}practise/sheet/?lessons=all&count=9&units=us&seed=1`);
  await expect(page.locator('.paper-questions > li')).toHaveCount(9);
  await page.goto(`${at}practise/today/`);
  await expect(page.getByRole('button', { name: 'Begin' })).toBeVisible();
  await page.getByRole('link', { name: 'Bring it in' }).click();
  await expect(page).toHaveURL(/\/shop\/practise\/case\/\?/);
  await expect(page.locator('.case-bar')).toBeVisible();

  await page.goto(`${at}practise/case/?case=fine-cold-revs-hot`);
  await page.getByLabel('What is wrong').selectOption('transferSeal');
  await page.getByLabel('Transfer seal and bridge part').check();
  await page.getByRole('button', { name: 'Hand it in' }).click();
  await expect(page.locator('#case-outcome').getByRole('heading').first()).toBeVisible();
  for (const href of await page
    .locator('#case-outcome a')
    .evaluateAll((links) => links.map((link) => (link as HTMLAnchorElement).href)))
    expect(href.startsWith(at), href).toBe(true);

  await page.goto(`${at}measure/log/`);
  await page.getByRole('button', { name: 'Slips in Drive' }).click();
  await expect(page.locator('.log-findings button').first()).toBeVisible();
  await page.goto(`${at}measure/`);
  await expect(page.locator('.next-causes li').first()).toBeVisible();

  await page.goto(`${at}es/lessons/hot-fluid-thin-fluid/`);
  await expect(page.locator('html')).toHaveAttribute('lang', 'es');
  const sim = page.locator('.sim').first();
  await sim.scrollIntoViewIfNeeded();
  await expect(sim).toHaveAttribute('data-ready', 'true');
  expect(trouble).toEqual([]);
});

test('a meeting of one’s own takes links of this folder, and gives them back', async ({
  page,
  at,
  trouble,
}) => {
  await page.goto(`${at}meetings/own/`);
  await expect(page.locator('[data-ready=true]')).toHaveCount(1);
  await page.getByLabel('What it is about').fill('One car');
  await page.getByRole('button', { name: 'Begin' }).click();
  for (const path of [
    'practise/case/?case=fine-cold-revs-hot',
    'lessons/thin-gap-open-hole/?gap-or-hole=1~temp.90#gap-or-hole',
  ]) {
    await page.getByLabel('A link of this site').fill(at + path);
    await page.getByRole('button', { name: 'Add what it leads to' }).click();
    const link = page.locator('.own-scene a').last();
    expect(await link.evaluate((element) => (element as HTMLAnchorElement).href)).toBe(at + path);
  }
  expect(trouble).toEqual([]);
});

test('a miss at any depth has links that lead into the site', async ({ page, at }) => {
  await page.goto(`${at}lessons/none/of/these/`);
  await page.getByRole('link', { name: 'The course page' }).click();
  await expect(page).toHaveURL(`${at}course/`);
});

test.describe('the store', () => {
  test.use({ serviceWorkers: 'allow' });
  test('is of this folder, and works with the server gone', async ({ page, own, at, trouble }) => {
    await page.goto(`${at}offline/`);
    await expect(page.locator('#offline')).toHaveAttribute('data-state', 'ready', {
      timeout: 120_000,
    });
    const scope = await page.evaluate(
      async () => (await navigator.serviceWorker.getRegistration())?.scope,
    );
    expect(scope).toBe(at);
    await own.kill();
    await page.goto(`${at}lessons/live-data/`);
    await expect(page.locator('.lesson h1')).toBeVisible();
    await page.goto(`${at}search/?q=piston`);
    await expect(page.locator('#search-says')).toContainText('is in');
    await page.goto(`${at}es/`);
    await expect(page.locator('h1')).toBeVisible();
    expect(trouble).toEqual([]);
  });
});
