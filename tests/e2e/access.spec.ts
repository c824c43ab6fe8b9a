import AxeBuilder from '@axe-core/playwright';
import type { Page } from '@playwright/test';
import { expect, test } from './fixtures.ts';
import { addresses } from './pages.ts';

/** Scrolls through the page, so that islands that wait to be seen are awake. */
async function wakeIslands(page: Page): Promise<void> {
  const asleep = page.locator('astro-island[ssr]');
  if ((await asleep.count()) === 0) return;
  await page.evaluate(async () => {
    const step = innerHeight / 2;
    for (let top = 0; top < document.documentElement.scrollHeight; top += step) {
      scrollTo(0, top);
      await new Promise((resolve) => requestAnimationFrame(() => setTimeout(resolve, 20)));
    }
  });
  await expect(asleep).toHaveCount(0);
  await page.evaluate(() => scrollTo(0, 0));
}

for (const address of addresses) {
  for (const colorScheme of ['light', 'dark'] as const) {
    test(`axe finds nothing on ${address}, ${colorScheme}`, async ({ page }) => {
      // Axe takes as long as the page is large, and the model page has every table unfolded.
      test.setTimeout(180_000);
      await page.emulateMedia({ colorScheme, reducedMotion: 'reduce' });
      await page.goto(address);
      await wakeIslands(page);
      // What is folded is read by somebody too.
      await page
        .locator('details')
        .evaluateAll((all) => all.forEach((details) => details.setAttribute('open', '')));
      const results = await new AxeBuilder({ page })
        .withTags(['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'])
        .options({ rules: { 'color-contrast-enhanced': { enabled: true } } })
        .analyze();
      const found = results.violations.map(({ id, nodes }) => [
        id,
        ...nodes.slice(0, 3).map(({ html, failureSummary }) => `${html} ${failureSummary ?? ''}`),
      ]);
      expect(found).toEqual([]);
    });
  }

  test(`${address} fits 320 and 390 px without scrolling sideways`, async ({ page }) => {
    for (const width of [390, 320]) {
      await page.setViewportSize({ width, height: 700 });
      await page.goto(address);
      await wakeIslands(page);
      const { scroll, client } = await page.evaluate(() => ({
        scroll: document.documentElement.scrollWidth,
        client: document.documentElement.clientWidth,
      }));
      expect(scroll, `at ${width} px`).toBeLessThanOrEqual(client);
    }
  });
}
