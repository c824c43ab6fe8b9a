import { expect, test } from './fixtures.ts';
import { addresses } from './pages.ts';

test('the pages that the header names are there', () => {
  for (const address of [
    '/',
    '/course/',
    '/practise/',
    '/measure/',
    '/model/',
    '/glossary/',
    '/sources/',
    '/search/',
  ]) {
    expect(addresses).toContain(address);
  }
});

test('titles and descriptions differ from page to page', async ({ request }) => {
  const heads = await Promise.all(
    addresses.map(async (address) => {
      const html = await (await request.get(address)).text();
      return [/<title>(.+?)<\/title>/, /name="description" content="(.{40,}?)"/].map(
        (pattern) => pattern.exec(html)?.[1],
      );
    }),
  );
  for (const column of [0, 1]) {
    const values = heads.map((head) => head[column]);
    expect(values).not.toContain(undefined);
    expect(new Set(values).size).toBe(values.length);
  }
});

test('an address that leads nowhere says so, with a way on', async ({ page }) => {
  const response = await page.goto('/no-such-page/');
  expect(response?.status()).toBe(404);
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('No such page');
  await page.getByRole('link', { name: 'The course page' }).click();
  await expect(page).toHaveURL(/\/course\/$/);
});

test('headers that a meta tag cannot carry are sent', async ({ request }) => {
  const headers = (await request.get('/')).headers();
  expect(headers['content-security-policy']).toContain("frame-ancestors 'none'");
  expect(headers['x-content-type-options']).toBe('nosniff');
});

test('the font is ours, and its figures are of one width', async ({ page }) => {
  await page.goto('/');
  const widths = await page.evaluate(async () => {
    await document.fonts.ready;
    return Array.from('0123456789', (digit) => {
      const span = document.createElement('span');
      span.textContent = digit;
      document.body.append(span);
      return span.getBoundingClientRect().width;
    });
  });
  expect(
    await page.evaluate(() =>
      [...document.fonts].flatMap(({ family, status }) =>
        family.includes('Atkinson') ? [status] : [],
      ),
    ),
  ).toEqual(['loaded']);
  expect(new Set(widths).size).toBe(1);
});

test('a page with a formula shows it as MathML', async ({ page }) => {
  await page.goto('/model/');
  const formula = page.locator('math[display="block"]').first();
  await expect(formula).toBeVisible();
  const box = await formula.boundingBox();
  expect(box?.height ?? 0).toBeGreaterThan(15);
});

for (const media of ['print', 'forced'] as const) {
  test(`the home page keeps its words in ${media} colours`, async ({ page }) => {
    await page.emulateMedia(media === 'print' ? { media } : { forcedColors: 'active' });
    await page.goto('/');
    for (const words of ['Holds cold.', 'Slips hot.', 'Learn']) {
      await expect(page.getByText(words, { exact: true })).toBeVisible();
    }
    await expect(page.locator('.site-nav')).toBeVisible({ visible: media === 'forced' });
  });
}
