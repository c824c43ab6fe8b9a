import { expect, test } from '../e2e/fixtures.ts';

test('the page names its parts at the top, in their order, with how many figures reach their bar', async ({
  page,
}) => {
  await page.setViewportSize({ width: 390, height: 664 });
  await page.goto('/proof/');
  const links = page.getByRole('navigation', { name: /What was asked/ }).getByRole('link');
  const heads = page.getByRole('heading', { level: 2 }).and(page.locator('main h2'));
  expect(await links.allInnerTexts()).toEqual(await heads.allInnerTexts());
  const notes = await page.locator('.parts .muted').allInnerTexts();
  const rows = await page
    .locator('.proof-table tbody')
    .evaluateAll((all) =>
      all.map((one) => [
        one.querySelectorAll('tr:not(.is-short)').length,
        one.querySelectorAll('tr').length,
      ]),
    );
  expect(notes).toEqual(rows.map(([met, all]) => `${met} of ${all}`));
  for (const link of await links.all()) {
    expect((await link.boundingBox())?.height).toBeGreaterThanOrEqual(48);
  }
  await links.last().click();
  await expect(heads.last()).toBeInViewport();
});
