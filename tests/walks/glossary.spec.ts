// The glossary: narrowed to what is typed, with its letters always in reach.
import type { Page } from '@playwright/test';
import { axeOn } from '../e2e/axe.ts';
import { expect, test } from '../e2e/fixtures.ts';

const PHONE = { width: 390, height: 664 };
const LAPTOP = { width: 1366, height: 768 };

const field = (page: Page) => page.getByRole('searchbox', { name: 'Find a term' });
const says = (page: Page) => page.locator('#find-says');
const terms = (page: Page) => page.locator('.entries > div:visible > dt');
const top = (page: Page, selector: string) =>
  page.locator(selector).evaluate((one) => one.getBoundingClientRect().top);
const barEnds = (page: Page) =>
  page.locator('.find-bar').evaluate((one) => one.getBoundingClientRect().bottom);

test('an abbreviation leaves the one term that goes by it, says so, and Escape brings all back', async ({
  page,
}) => {
  await page.goto('/glossary/');
  const all = await terms(page).count();
  await field(page).pressSequentially('tcc');
  await expect(terms(page)).toHaveText(['Converter clutch']);
  await expect(says(page)).toContainText(`1 of ${all} terms.`);
  await expect(page.getByRole('heading', { level: 2 }).filter({ visible: true })).toContainText([
    'C',
  ]);
  await expect(page).toHaveURL('/glossary/?q=tcc');
  await field(page).press('Escape');
  await expect(terms(page)).toHaveCount(all);
  await expect(says(page)).toContainText(`All ${all} terms.`);
  await expect(field(page)).toBeFocused();
  await expect(page).toHaveURL('/glossary/');
});

test('nothing left says what to do, and hands what was typed on to the search', async ({
  page,
}) => {
  await page.goto('/glossary/');
  await field(page).fill('P0741');
  await expect(says(page)).toContainText('No term here goes by “P0741”.');
  await expect(says(page)).toContainText('type fewer letters');
  await page.getByRole('button', { name: 'Clear' }).click();
  await expect(field(page)).toBeFocused();
  await expect(says(page).getByRole('link')).toBeHidden();
  await field(page).fill('P0741');
  await says(page).getByRole('link').click();
  await expect(page).toHaveURL('/search/?q=P0741');
});

test('back from a lesson the same terms are left', async ({ page }) => {
  await page.goto('/glossary/');
  await field(page).fill('lock-up');
  await page.getByRole('link', { name: 'What the controller calls slip' }).click();
  await expect(page).toHaveURL(/\/lessons\//);
  await page.goBack();
  await expect(field(page)).toHaveValue('lock-up');
  await expect(terms(page)).toHaveText(['Converter clutch']);
});

test('a link to a term that is not among those left brings all back, and itself in sight', async ({
  page,
}) => {
  await page.setViewportSize(PHONE);
  await page.goto('/glossary/?q=tcc');
  await expect(terms(page)).toHaveText(['Converter clutch']);
  await page.getByRole('link', { name: 'Torque converter' }).click();
  await expect(page.locator('#torque-converter')).toBeInViewport();
  expect(await top(page, '#torque-converter')).toBeGreaterThanOrEqual(await barEnds(page));
  await expect(field(page)).toHaveValue('');
  await page.goBack();
  await expect(terms(page)).toHaveText(['Converter clutch']);
  await page.goto('/glossary/?q=tcc#slip');
  await expect(page.locator('#slip')).toBeInViewport();
});

for (const size of [PHONE, LAPTOP, { width: 844, height: 390 }]) {
  test.describe(`at ${size.width} by ${size.height}`, () => {
    test.use({ viewport: size });

    test('a link to an entry arrives below the field, and so does the tab key on its way up', async ({
      page,
    }) => {
      await page.goto('/glossary/#slip');
      expect(await top(page, '#slip dt')).toBeGreaterThanOrEqual(await barEnds(page));
      await page.locator('#slip a').first().focus();
      for (let press = 0; press < 8; press += 1) {
        await page.keyboard.press('Shift+Tab');
        const focused = await page.evaluate(
          () => document.activeElement?.getBoundingClientRect().top ?? 0,
        );
        expect(focused).toBeGreaterThanOrEqual(await barEnds(page));
      }
    });

    test('from the depth of the list what is typed is seen, without a step at each letter', async ({
      page,
    }) => {
      await page.goto('/glossary/#sump');
      await field(page).click();
      await field(page).pressSequentially('se');
      const after = await top(page, '#found-terms');
      await field(page).pressSequentially('al');
      await expect(says(page)).toContainText(/\d of \d+ terms/);
      await expect(terms(page).first()).toBeInViewport();
      expect(await top(page, '#found-terms')).toBe(after);
    });

    test('the letters are never more than a press away', async ({ page }) => {
      await page.goto('/glossary/#sump');
      const letter = page.locator('.letters').getByRole('link', { name: 'B', exact: true });
      const up = page.getByRole('link', { name: 'A–Z up to the letters' });
      if (size === LAPTOP) await expect(up).toBeHidden();
      else await up.click();
      await expect(letter).toBeInViewport({ ratio: 1 });
      await letter.click();
      expect(await top(page, '#letter-B')).toBeGreaterThanOrEqual(await barEnds(page));
      await expect(page.locator('#letter-B')).toBeInViewport();
    });
  });
}

test('what is pressed is 48 px high, on the narrowest phone too', async ({ page }) => {
  await page.setViewportSize({ width: 320, height: 640 });
  await page.goto('/glossary/?q=seal');
  const pressed = page.locator('.find-bar :is(input, button, a):visible, .letters a:visible');
  expect(await pressed.count()).toBeGreaterThan(2);
  for (const one of await pressed.all()) {
    const box = await one.boundingBox();
    expect(box?.height).toBeGreaterThanOrEqual(48);
    expect(box?.width).toBeGreaterThanOrEqual(48);
  }
});

test('on paper every term stands, whatever is left on the screen', async ({ page }) => {
  await page.goto('/glossary/');
  const all = await terms(page).count();
  await field(page).fill('tcc');
  await expect(terms(page)).toHaveCount(1);
  await page.emulateMedia({ media: 'print' });
  await expect(terms(page)).toHaveCount(all);
  await expect(field(page)).toBeHidden();
  await expect(says(page)).toBeHidden();
});

for (const colorScheme of ['light', 'dark'] as const) {
  test(`axe finds nothing on some terms and on none, ${colorScheme}`, async ({ page }) => {
    await page.emulateMedia({ colorScheme });
    await page.setViewportSize({ width: 320, height: 640 });
    for (const [typed, told] of [
      ['seal', 'terms'],
      ['zzq', 'No term'],
    ] as const) {
      await page.goto(`/glossary/?q=${typed}`);
      await expect(says(page)).toContainText(told);
      const { violations } = await axeOn(page, {
        'color-contrast-enhanced': { enabled: true },
      }).analyze();
      expect(violations).toEqual([]);
    }
  });
}

test.describe('without a script', () => {
  test.use({ javaScriptEnabled: false, viewport: PHONE });
  test('there is no field, all terms stand, and the way up to the letters', async ({ page }) => {
    await page.goto('/glossary/#sump');
    await expect(field(page)).toBeHidden();
    await page.getByRole('link', { name: 'A–Z up to the letters' }).click();
    await expect(page.locator('.letters a').first()).toBeInViewport();
    await expect(page.locator('#sump')).toBeVisible();
  });
});
