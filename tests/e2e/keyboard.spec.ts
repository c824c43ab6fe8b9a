// The header of every page is walked in access.spec.ts, on the same visit.
import { expect, test } from './fixtures.ts';
import { focused } from './header.ts';

test('the skip link leads past the header', async ({ page }) => {
  await page.goto('/');
  await page.keyboard.press('Tab');
  await page.keyboard.press('Enter');
  await expect(page.locator('main')).toBeFocused();
  await page.keyboard.press('Tab');
  // The first thing there is the handle of the headline.
  await expect(page.locator('main .home-circuit :focus')).toHaveCount(1);
});

test('the whole tab order of the course page comes round without a trap', async ({ page }) => {
  await page.goto('/course/');
  const count = await page.locator('a[href], button, input').count();
  for (let step = 0; step < count + 2; step += 1) await page.keyboard.press('Tab');
  // Past the last stop the focus leaves the page or starts again; a trap would hold it in one place.
  const first = await focused(page);
  await page.keyboard.press('Tab');
  expect(await focused(page)).not.toEqual(first);
});
