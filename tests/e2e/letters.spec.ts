// Pages that hold a simulation are measured on their way through it, in bench.spec.ts.
import { test } from './fixtures.ts';
import { expectPageReadable } from './letters.ts';

test('the letters in the pictures of the home page are large enough', async ({ page }) => {
  await page.goto('/');
  for (const [width, height] of [
    [1920, 1080],
    [844, 390],
    [667, 375],
    [390, 664],
  ] as const) {
    await page.setViewportSize({ width, height });
    await expectPageReadable(page, width);
  }
});
