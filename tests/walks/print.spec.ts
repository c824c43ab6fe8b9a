import { writeFileSync } from 'node:fs';
import type { Page } from '@playwright/test';
import { expect, test } from '../e2e/fixtures.ts';
import { BETWEEN, faultsOnPaper } from '../e2e/on-paper.ts';
import { pagesOf, wordsOn } from './pdf-text.ts';

const papers = ['Letter', 'A4'] as const;
/** One of each kind of page, and lessons with every kind of picture. */
const kinds = [
  '/',
  '/course/',
  '/lessons/pump-and-regulator/',
  '/lessons/codes-are-questions/',
  '/lessons/pressures-hot-and-cold/',
  '/lessons/what-slip-is/',
  '/lessons/putting-back/',
  '/glossary/',
  '/model/',
  '/sources/',
  '/whole-car/',
  '/measure/',
  '/measure/accuracy/',
  '/practise/',
  '/practise/cases/',
  '/practise/record/',
  '/es/lessons/hot-fluid-thin-fluid/',
];

test('on paper a lesson is words, still pictures and questions, with the way back', async ({
  page,
}) => {
  await page.goto('/lessons/pump-and-regulator/');
  // Chosen dark on screen is still black on white on paper.
  await page.getByRole('button', { name: 'Dark page' }).click();
  await page.emulateMedia({ media: 'print' });
  await expect(
    page.locator('.sim-controls, .sim-nav, .site-nav, .lesson-ends').first(),
  ).toBeHidden();
  const ran = page.locator('.sim-ran').first();
  await expect(ran.locator('.chart-plot svg:visible')).toHaveCount(1);
  await expect(page.getByText(/^On screen: http/)).toBeVisible();
  await expect(ran).toContainText('printed at the end of its run');
  await expect(page.locator('section.sim').first()).toBeHidden();
  await expect(page.locator('.retrieval-plain > li').first()).toBeVisible();
  await expect(page.locator('.retrieval-plain details').first()).toBeHidden();
  const solution = page.locator('.solution').first();
  expect((await solution.boundingBox())?.height ?? 0).toBeGreaterThan(60);
  const colours = await page.evaluate(() => {
    const { color, backgroundColor } = getComputedStyle(document.body);
    return [color, backgroundColor];
  });
  expect(colours).toEqual(['rgb(0, 0, 0)', 'rgb(255, 255, 255)']);
});

/** What the printer gets of a page, in one line. */
async function printed(page: Page): Promise<string> {
  const file = test.info().outputPath('page.pdf');
  writeFileSync(file, await page.pdf({ format: 'Letter' }));
  return pagesOf(file).join(' ').replace(/\s+/gu, ' ');
}

test('a simulation that nobody has run prints at the end of its run, with or without a script', async ({
  page,
  browser,
}) => {
  await page.goto('/lessons/thin-gap-open-hole/');
  const still = await (await browser.newContext({ javaScriptEnabled: false })).newPage();
  await still.goto(page.url());
  for (const one of [page, still]) {
    const text = await printed(one);
    expect(text).toContain('At 212 °F and 58 psi the crack leaks');
    expect(text).toContain('Run with Fluid temperature: 212 °F;');
    expect(text).toContain('printed at the end of its run');
  }
  await still.context().close();
  await page.locator('#settings input[value="si"]').check({ force: true });
  expect(await printed(page)).toContain('At 100 °C and 400 kPa the crack leaks');
});

test('one that somebody has run prints as it stands', async ({ page }) => {
  await page.goto('/lessons/thin-gap-open-hole/?gap-or-hole=1~temp.60#gap-or-hole');
  await expect(page.locator('#gap-or-hole .stage-head')).toHaveText('Your controls');
  const text = await printed(page);
  expect(text).toContain('At 140 °F and');
  expect(text).toContain('A simulation, printed as it stood.');
  expect(text).not.toContain('Run with');
});

test('nothing is cut off at the side of a page, and nothing prints over another', async ({
  page,
}) => {
  await page.goto('/lessons/regulator-to-clutch/');
  await page.emulateMedia({ media: 'print' });
  // The printable width of a Letter sheet at 96 to the inch, with margins of 15 mm.
  await page.setViewportSize({ width: 702, height: 942 });
  const faults = await page.evaluate(() => {
    const blocks = [...document.querySelectorAll<HTMLElement>('.sheet, .sheet-section')];
    const grids = blocks.filter((block) => getComputedStyle(block).display === 'grid').length;
    const wide = [...document.querySelectorAll<HTMLElement>('main *')].filter((element) => {
      const { right, width } = element.getBoundingClientRect();
      return width > 0 && right > innerWidth + 1 && element.closest('.visually-hidden') === null;
    });
    // Chromium prints the parts of a broken grid over one another.
    return { grids, wide: wide.map(({ className, tagName }) => `${tagName}.${className}`) };
  });
  expect(faults).toEqual({ grids: 0, wide: [] });
});

for (const paper of papers) {
  test(`on ${paper} no hue, no letter too small, nothing wider than the sheet, in both unit systems`, async ({
    page,
  }) => {
    test.slow();
    for (const address of kinds) {
      await page.emulateMedia({ media: 'screen', colorScheme: 'dark' });
      await page.goto(address);
      if (paper === 'A4') await page.locator('#settings input[value="si"]').check({ force: true });
      expect(await faultsOnPaper(page, BETWEEN[paper]), address).toEqual([]);
    }
  });
}

test('in the file that goes to the printer words keep to the sheet and headings to what they head', async ({
  page,
}) => {
  test.slow();
  await page.emulateMedia({ colorScheme: 'dark' });
  for (const address of [
    '/lessons/pump-and-regulator/',
    '/lessons/the-next-best-test/',
    '/model/',
  ]) {
    await page.goto(address);
    const headings = await page.locator('main :is(h2, h3, h4, summary)').allInnerTexts();
    for (const paper of papers) {
      const file = test.info().outputPath(`${paper}.pdf`);
      writeFileSync(file, await page.pdf({ format: paper, preferCSSPageSize: false }));
      const { sheets, words } = wordsOn(file);
      const [sheet = { width: 0, height: 0 }] = sheets;
      // 15 mm are 42.5 points; a label of a picture may reach out by a letter.
      const out = words.filter(
        ({ left, top, right, bottom }) =>
          left < 38 || top < 38 || right > sheet.width - 38 || bottom > sheet.height - 38,
      );
      expect(out, `${address} on ${paper}`).toEqual([]);
      const heads = new Set(headings.map((text) => text.replace(/\s+/gu, ' ').trim()));
      const alone = pagesOf(file).flatMap((text) => {
        const last = text.trim().split('\n').at(-1)?.replace(/\s+/gu, ' ').trim() ?? '';
        return heads.has(last) ? [last] : [];
      });
      expect(alone, `${address} on ${paper}`).toEqual([]);
    }
  }
});

test('on paper a link says where it leads, if the address can be typed', async ({ page }) => {
  await page.goto('/measure/');
  await page.emulateMedia({ media: 'print' });
  const after = (text: string) =>
    page
      .getByRole('link', { name: text })
      .first()
      .evaluate((link) => getComputedStyle(link, '::after').content);
  expect(await after('Open the job sheets')).toContain('/measure/jobs/');
  await page.goto('/practise/cases/');
  expect(await after('Fine cold, revs up hot')).toBe('none');
  await page.goto('/sources/');
  await expect(page.getByText('doi.org/10.1287/mnsc.12.5.391')).toBeVisible();
  await expect(page.getByText('machinedesign.com')).toHaveCount(0);
});

test('a short case on paper has its readings, and every choice its number', async ({ page }) => {
  await page.goto('/lessons/pump-and-regulator/');
  await page.emulateMedia({ media: 'print' });
  const question = page
    .locator('.retrieval-plain > li', { has: page.locator('> details + details, > details + ul') })
    .first();
  await expect(question.locator('> details > summary').first()).toBeVisible();
  await expect(question.locator('> details > p').first()).toBeVisible();
  await expect(question.locator('> details').last()).toBeHidden();
  const mark = await page
    .locator('.retrieval-plain > li > ul')
    .first()
    .evaluate((list) => getComputedStyle(list).listStyleType);
  expect(mark).toBe('decimal');
});
