import { expect, test } from './fixtures.ts';

const LESSON = '/lessons/holds-cold-slips-hot/';

test('what follows a run is folded until it has been run, moves nothing above, and stays open', async ({
  page,
}) => {
  await page.setViewportSize({ width: 390, height: 664 });
  await page.emulateMedia({ reducedMotion: 'reduce' });
  await page.goto(LESSON);
  const sim = page.locator('#clutch-pressure');
  const fold = page.locator('details.after-run');
  await sim.scrollIntoViewIfNeeded();
  await expect(sim).toHaveAttribute('data-ready', 'true');
  await expect(fold).not.toHaveAttribute('open');
  await expect(fold.locator('> summary')).toBeVisible();
  await sim.locator('.choice-stack input').first().press('Space');
  await sim.locator('.choice-row input').first().press('Space');
  await sim.locator('button[type="submit"]').press('Enter');
  await expect(sim.locator('.stage-head', { hasText: 'What it did' })).toBeFocused();
  await expect(fold).toHaveAttribute('open');
  // The picture has stayed: what opened lies below it.
  const top = await sim.locator('.sim-picture').evaluate((one) => one.getBoundingClientRect().top);
  expect(top).toBeGreaterThanOrEqual(-1);
  // The place is kept in the history of the tab a moment after all rests.
  await expect
    .poll(() => page.evaluate(() => JSON.stringify(history.state)))
    .toContain('clutch-pressure');
  await page.reload();
  await sim.scrollIntoViewIfNeeded();
  await expect(fold).toHaveAttribute('open');
});

test('it can be opened by hand, and all folds are open on paper', async ({ page }) => {
  await page.goto(LESSON);
  const fold = page.locator('details.after-run');
  await fold.locator('> summary').press('Enter');
  await expect(fold).toHaveAttribute('open');
  const deeper = fold.locator('details.fold').first();
  await page.emulateMedia({ media: 'print' });
  // Closed on the screen, and yet its text has a height on paper.
  await expect(deeper).not.toHaveAttribute('open');
  expect((await deeper.boundingBox())?.height ?? 0).toBeGreaterThan(60);
});
