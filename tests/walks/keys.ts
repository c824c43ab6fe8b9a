import type { Locator, Page } from '@playwright/test';
import { expect } from '../e2e/fixtures.ts';

/** Tab until something with these words has the focus; the keyboard is the only tool. */
export async function tabTo(page: Page, words: RegExp, key = 'Tab', most = 40): Promise<void> {
  for (let step = 0; step < most; step += 1) {
    const now = await page.evaluate(() => {
      const one = document.activeElement;
      const label = one?.getAttribute('aria-label') ?? one?.closest('label')?.textContent;
      return label ?? one?.textContent ?? '';
    });
    if (words.test(now)) return;
    await page.keyboard.press(key);
  }
  throw new Error(`${most} presses of ${key} did not reach ${String(words)}.`);
}

/** From the first answer to Run, which waits for both. */
export async function predictByKeys(page: Page, sim: Locator): Promise<void> {
  const run = sim.locator('button[type="submit"]');
  await expect(run).toBeDisabled();
  await sim.locator('.choice-stack input').first().focus();
  await page.keyboard.press('Space');
  await expect(run).toBeDisabled();
  await page.keyboard.press('Tab');
  await page.keyboard.press('Space');
  await expect(run).toBeEnabled();
  await page.keyboard.press('Tab');
  await expect(run).toBeFocused();
  await page.keyboard.press('Enter');
}
