import { expect, test } from './fixtures.ts';

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
  await expect(page.locator('.sim .chart-plot svg').first()).toBeVisible();
  await expect(page.getByText(/^On screen: http/)).toBeVisible();
  const note = await page
    .locator('.sim')
    .first()
    .evaluate((sim) => getComputedStyle(sim, '::after').content);
  expect(note).toContain('#');
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
