import type { Page } from '@playwright/test';
import { expect, test } from './fixtures.ts';

// A page with both unit systems in its markup, whatever the content of the day is.
async function addBoth(page: Page): Promise<void> {
  await page.evaluate(() => {
    const both = document.createElement('p');
    for (const [name, words] of [
      ['u-si', '414 kPa'],
      ['u-us', '60 psi'],
    ] as const) {
      const span = document.createElement('span');
      span.className = name;
      span.textContent = words;
      both.append(span);
    }
    document.querySelector('main .sheet')?.append(both);
  });
}

test('units change by keyboard, change what is seen, and are remembered', async ({ page }) => {
  await page.goto('/');
  await addBoth(page);
  await expect(page.getByText('60 psi')).toBeVisible();
  await expect(page.getByText('414 kPa')).toBeHidden();
  await page.getByRole('radio', { name: /US units/ }).focus();
  await page.keyboard.press('ArrowRight');
  await expect(page.getByRole('radio', { name: /Metric units/ })).toBeChecked();
  await expect(page.getByText('414 kPa')).toBeVisible();
  await expect(page.getByText('60 psi')).toBeHidden();

  await page.reload();
  await addBoth(page);
  await expect(page.getByText('414 kPa')).toBeVisible();
  await expect(page.getByRole('radio', { name: /Metric units/ })).toBeChecked();
  await page.goto('/course/');
  await expect(page.locator('html')).toHaveAttribute('data-units', 'si');
});

test('a second tab follows', async ({ page, context }) => {
  await page.goto('/');
  const other = await context.newPage();
  await other.goto('/course/');
  await page.getByRole('radio', { name: /Metric units/ }).check();
  await expect(other.locator('html')).toHaveAttribute('data-units', 'si');
  await expect(other.getByRole('radio', { name: /Metric units/ })).toBeChecked();
});

test('a damaged slot or a lost pointer does not lose the choice', async ({ page }) => {
  const metric = page.getByRole('radio', { name: /Metric units/ });
  await page.goto('/');
  // Two writes, so that both slots hold something.
  await page.getByRole('button', { name: 'Dark page' }).click();
  await metric.check();
  await page.evaluate(() => localStorage.removeItem('hot-clutch:settings:slot'));
  await page.reload();
  await expect(metric).toBeChecked();

  await page.getByRole('button', { name: /page$/ }).click();
  await page.evaluate(() => {
    const slot = localStorage.getItem('hot-clutch:settings:slot') ?? '';
    localStorage.setItem(`hot-clutch:settings:${slot}`, '{"v":1,"n":9,"da');
  });
  await page.reload();
  await expect(metric).toBeChecked();
  await expect(page.locator('html')).toHaveAttribute('data-units', 'si');
  // Mended: the next page has it before anything is painted.
  const kept = await page.evaluate(() => {
    const slot = localStorage.getItem('hot-clutch:settings:slot') ?? '';
    return localStorage.getItem(`hot-clutch:settings:${slot}`);
  });
  expect(kept).toContain('"units":"si"');
});

test('the choice is on the page before anything is painted', async ({ page }) => {
  await page.goto('/');
  await page.getByRole('radio', { name: /Metric units/ }).check();
  await page.getByRole('button', { name: 'Dark page' }).click();
  await page.addInitScript(() => {
    new PerformanceObserver(() => {
      const { units, theme } = document.documentElement.dataset;
      sessionStorage.setItem('at-first-paint', `${units} ${theme}`);
    }).observe({ type: 'paint', buffered: true });
    // The parser has read <head> and no more when <body> appears.
    new MutationObserver((_, observer) => {
      if (document.querySelector('body') === null) return;
      const { units, theme } = document.documentElement.dataset;
      sessionStorage.setItem('at-body', `${units} ${theme}`);
      observer.disconnect();
    }).observe(document, { childList: true, subtree: true });
  });
  await page.reload();
  const kept = (key: string) => page.evaluate((name) => sessionStorage.getItem(name), key);
  await expect.poll(() => kept('at-first-paint')).toBe('si dark');
  expect(await kept('at-body')).toBe('si dark');
});

const paper = (page: Page) => page.evaluate(() => getComputedStyle(document.body).backgroundColor);

for (const device of ['light', 'dark'] as const) {
  test(`the theme switches by keyboard on a ${device} device, and back`, async ({ page }) => {
    const other = device === 'light' ? 'Dark' : 'Light';
    const own = device === 'light' ? 'Light' : 'Dark';
    await page.emulateMedia({ colorScheme: device });
    await page.goto('/');
    const before = await paper(page);
    await page.getByRole('button', { name: `${other} page` }).focus();
    await page.keyboard.press('Enter');
    expect(await paper(page)).not.toBe(before);
    await page.reload();
    expect(await paper(page)).not.toBe(before);
    await page.getByRole('button', { name: `${own} page` }).click();
    expect(await paper(page)).toBe(before);
    await expect(page.locator('html')).not.toHaveAttribute('data-theme');
  });
}

test('with storage blocked the switches still work on the page', async ({ page }) => {
  await page.addInitScript(() => {
    Object.defineProperty(window, 'localStorage', {
      get() {
        throw new DOMException('blocked', 'SecurityError');
      },
    });
  });
  await page.goto('/');
  await page.getByRole('radio', { name: /Metric units/ }).check();
  await expect(page.locator('html')).toHaveAttribute('data-units', 'si');
  await page.getByRole('button', { name: 'Dark page' }).click();
  await expect(page.locator('html')).toHaveAttribute('data-theme', 'dark');
});

test('without scripts there is no dead switch', async ({ browser, baseURL }) => {
  const context = await browser.newContext({
    javaScriptEnabled: false,
    ...(baseURL && { baseURL }),
  });
  const page = await context.newPage();
  await page.goto('/');
  await expect(page.locator('#settings')).toBeHidden();
  await expect(page.getByRole('heading', { level: 1 })).toBeVisible();
  await context.close();
});
