import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Page } from '@playwright/test';
import { parse } from 'yaml';
import { glossarySchema } from '../../src/lessons/lesson-schema.ts';
import { axeOn } from '../e2e/axe.ts';
import { expect, test } from '../e2e/fixtures.ts';

const says = (page: Page) => page.locator('#search-says');
const field = (page: Page) => page.getByRole('searchbox', { name: 'What are you looking for?' });

test('from the header to a section of a lesson', async ({ page }) => {
  await page.goto('/glossary/');
  await page.getByRole('searchbox', { name: 'Search the site' }).fill('transfer seal');
  await page.keyboard.press('Enter');
  await expect(page).toHaveURL('/search/?q=transfer+seal');
  await expect(field(page)).toHaveValue('transfer seal');
  await expect(says(page)).toContainText(/is in \d+ lessons/);
  const lessons = page.getByRole('region', { name: 'Lessons' });
  const section = lessons.locator('h4 a').first();
  const title = await section.innerText();
  await section.click();
  await expect(page).toHaveURL(/\/lessons\/[a-z-]+\/#[a-z-]+$/);
  await expect(page.locator(':target')).toContainText(title);
});

test('the search runs in its worker, which the policy of the page lets start', async ({ page }) => {
  const worker = page.waitForEvent('worker');
  await page.goto('/search/?q=seal');
  await expect(says(page)).toContainText('is in');
  expect((await worker).url()).toMatch(/\/pagefind\/us\/pagefind-worker\.js$/);
});

test('a glossary entry is a hit of its own, the one of that name first', async ({ page }) => {
  await page.goto('/search/?q=piston');
  const glossary = page.getByRole('region', { name: 'Glossary' });
  await expect(glossary.locator('h3 a').first()).toHaveText('Piston');
  await expect(glossary.locator('h3 a').first()).toHaveAttribute('href', '/glossary/#piston');
  await expect(glossary.locator('li').first()).not.toContainText(/See also|Lesson:/);
});

for (const [typed, term, lesson] of [
  ['TCC', 'Converter clutch', 'What the controller calls slip'],
  ['TCM', 'Controller', 'Pump, regulator and hot idle'],
  ['DTC', 'Fault code', 'Codes are questions'],
  ['OSS', 'Speed sensor', 'What the controller calls slip'],
  ['EPC', 'Pressure control solenoid', 'Pump, regulator and hot idle'],
  ['lock up clutch', 'Converter clutch', 'What the controller calls slip'],
  ['rooster comb', 'Detent plate', 'Two kinds of range selection'],
] as const) {
  test(`“${typed}” brings its entry, ${term}, and right below it the lessons`, async ({ page }) => {
    await page.goto(`/search/?q=${encodeURIComponent(typed)}`);
    await expect(says(page)).toContainText(`“${typed}” or “${term}” is in`);
    const hits = page.locator('#search-results h3 a');
    await expect(hits.first()).toHaveText(term);
    await expect(hits.nth(1)).toHaveAttribute('href', /^\/lessons\//);
    await expect(
      page.getByRole('region', { name: 'Lessons' }).getByRole('link', { name: lesson }),
    ).toBeVisible();
  });
}

test('every abbreviation that the glossary has leads to its entry and to lessons', async ({
  page,
}) => {
  const folder = 'content/en/glossary';
  const short = readdirSync(folder).flatMap((file) => {
    const { also } = glossarySchema.parse(parse(readFileSync(join(folder, file), 'utf8')));
    const id = file.replace('.yaml', '');
    return also
      .flatMap((name) => /^[A-Z]{2,}/.exec(name)?.[0] ?? [])
      .map((typed) => ({ typed, id }));
  });
  expect(short.length).toBeGreaterThan(10);
  await page.goto('/search/');
  for (const { typed, id } of short) {
    await field(page).fill(typed);
    await field(page).press('Enter');
    await expect(says(page)).toContainText(`“${typed}”`);
    const hits = page.locator('#search-results h3 a');
    await expect(hits.and(page.locator(`[href="/glossary/#${id}"]`))).toBeVisible();
    await expect(hits.and(page.locator('[href^="/lessons/"]')).first()).toBeVisible();
  }
});

test('a source is found by its short name', async ({ page }) => {
  await page.goto('/search/?q=ASTM+D341');
  await expect(
    page.getByRole('region', { name: 'Sources and the model' }).getByRole('link').first(),
  ).toBeVisible();
});

test('excerpts print the units that are shown, and follow the switch', async ({ page }) => {
  await page.goto('/search/?q=hot+idle+split');
  await expect(says(page)).toContainText('lesson');
  const found = page.locator('#search-results');
  await expect(found).toContainText(/\d psi/);
  await expect(found).not.toContainText(/\d kPa \d+ psi/);
  await page.getByRole('radio', { name: /Metric units/ }).check({ force: true });
  await expect(found).toContainText(/\d kPa/);
  await expect(found).not.toContainText(/\d psi/);
});

test('typing searches, the address follows, and back brings the words back', async ({ page }) => {
  await page.goto('/search/');
  await field(page).pressSequentially('pump');
  await expect(page).toHaveURL('/search/?q=pump');
  await expect(says(page)).toContainText('“pump” is in');
  await field(page).fill('viscosity');
  await field(page).press('Enter');
  await expect(says(page)).toContainText('“viscosity” is in');
  await page.getByRole('region', { name: 'Lessons' }).getByRole('link').first().press('Enter');
  await expect(page).toHaveURL(/\/lessons\//);
  await page.goBack();
  await expect(field(page)).toHaveValue('viscosity');
  await expect(says(page)).toContainText('“viscosity” is in');
});

test('down and up walk from the field through what was found and back', async ({ page }) => {
  await page.goto('/search/?q=seal');
  await expect(says(page)).toContainText('is in');
  await field(page).focus();
  await page.keyboard.press('ArrowDown');
  const links = page.locator('#search-results a');
  await expect(links.first()).toBeFocused();
  await page.keyboard.press('ArrowDown');
  await expect(links.nth(1)).toBeFocused();
  await page.keyboard.press('ArrowUp');
  await page.keyboard.press('ArrowUp');
  await expect(field(page)).toBeFocused();
});

test('"Show all" shows them, with the focus on the first new one', async ({ page }) => {
  await page.goto('/search/?q=pressure');
  const glossary = page.getByRole('region', { name: 'Glossary' });
  const button = glossary.getByRole('button', { name: /^Show all \d+$/ });
  const all = Number(/\d+/.exec(await button.innerText())?.[0]);
  await button.press('Enter');
  await expect(glossary.locator('.found > li')).toHaveCount(all);
  await expect(button).toBeHidden();
  await expect(glossary.locator('.found > li').nth(5).getByRole('link')).toBeFocused();
});

test('nothing found helps on, and an empty search asks for nothing', async ({ page }) => {
  await page.goto('/search/?q=zzqqx');
  await expect(says(page)).toHaveText('Nothing found for “zzqqx”.');
  await expect(page.locator('#search-help')).toContainText('Check the spelling');
  await expect(
    page.locator('#search-help').getByRole('link', { name: 'the glossary' }),
  ).toBeVisible();
  await field(page).fill('');
  await field(page).press('Enter');
  await expect(says(page)).toBeEmpty();
  await expect(page.locator('#search-help')).toBeHidden();
  await expect(page).toHaveURL('/search/');
});

test('a word that no page has is named, and what the others find is shown', async ({ page }) => {
  await page.goto('/search/?q=zzqqx+seal');
  await expect(says(page)).toContainText('“seal” is in');
  await expect(says(page)).toContainText('No page has “zzqqx”.');
});

test('a word that is nowhere is not counted where its beginning stands', async ({ page }) => {
  await page.goto('/search/?q=p0791');
  await expect(says(page)).toContainText('Nothing found for “p0791”. Close: P07');
  await expect(page.locator('#search-results')).toBeHidden();
  await field(page).fill('airbag');
  await expect(says(page)).toHaveText('Nothing found for “airbag”. Close: Air.');
  await says(page).getByRole('link', { name: 'Air' }).click();
  await expect(page).toHaveURL('/search/?q=Air');
  await expect(says(page)).toContainText('“Air” is in');
});

test('two words spelled wrong are put right together, and lead to what was meant', async ({
  page,
}) => {
  await page.goto('/search/?q=torqe+convertor');
  await expect(says(page)).toHaveText(
    'Nothing found for “torqe convertor”. Did you mean Torque Converter?',
  );
  await says(page).getByRole('link', { name: 'Torque Converter' }).click();
  await expect(says(page)).toContainText('“Torque Converter” is in');
});

test('a word of which only the beginning is typed says so', async ({ page }) => {
  await page.goto('/search/?q=viscos');
  await expect(says(page)).toContainText('“viscos…” is in');
  await field(page).fill('slipping');
  await expect(says(page)).toContainText('“slipping” is in');
});

test('what is typed is never markup', async ({ page }) => {
  await page.goto(`/search/?q=${encodeURIComponent('<img src=x onerror=alert(1)>"\'')}`);
  await expect(field(page)).toHaveValue(/<img/);
  await expect(says(page)).not.toBeEmpty();
  await expect(page.locator('main img')).toHaveCount(0);
});

test('an index that does not load says so, and loads at the next try', async ({
  page,
  trouble,
}) => {
  await page.route('**/pagefind/**', (route) => route.abort());
  await page.goto('/search/?q=seal');
  await expect(says(page)).toHaveText('The search did not load.');
  await expect(page.locator('#search-help')).toContainText('offline');
  await expect(field(page)).toHaveValue('seal');
  // The browser itself reports the request that this test broke off.
  trouble.length = 0;
  await page.unroute('**/pagefind/**');
  await page.getByRole('button', { name: 'Try again' }).click();
  await expect(says(page)).toContainText('“seal” is in');
});

test('only the search page loads the search', async ({ page }) => {
  const asked: string[] = [];
  page.on('request', (request) => asked.push(request.url()));
  for (const address of ['/', '/course/', '/glossary/', '/search/']) {
    await page.goto(address, { waitUntil: 'networkidle' });
  }
  expect(asked.filter((url) => url.includes('/pagefind/'))).toEqual([]);
  await field(page).pressSequentially('pump');
  await expect(says(page)).toContainText('is in');
  expect(asked.some((url) => url.includes('/pagefind/us/'))).toBe(true);
});

for (const colorScheme of ['light', 'dark'] as const) {
  test(`axe finds nothing on results and on none, ${colorScheme}, and both fit a phone`, async ({
    page,
  }) => {
    await page.emulateMedia({ colorScheme });
    await page.setViewportSize({ width: 320, height: 700 });
    for (const words of ['seal', 'zzqqx']) {
      await page.goto(`/search/?q=${words}`);
      await expect(says(page)).toContainText(words);
      const { violations } = await axeOn(page, {
        'color-contrast-enhanced': { enabled: true },
      }).analyze();
      expect(violations).toEqual([]);
      const over = await page.evaluate(
        () => document.documentElement.scrollWidth - document.documentElement.clientWidth,
      );
      expect(over).toBeLessThanOrEqual(0);
    }
  });
}

test.describe('without a script', () => {
  test.use({ javaScriptEnabled: false });
  test('the form leads to the page, and the page says what it needs', async ({ page }) => {
    await page.goto('/course/');
    await page.getByRole('searchbox', { name: 'Search the site' }).fill('seal');
    await page.keyboard.press('Enter');
    await expect(page).toHaveURL('/search/?q=seal');
    await expect(page.getByText('Searching needs a script')).toBeVisible();
    await expect(page.getByRole('link', { name: 'every term' })).toBeVisible();
  });
});
