import type { Page } from '@playwright/test';
import { expect, test } from './fixtures.ts';

/** WCAG 2.2, "contrast ratio" and "relative luminance". */
function contrast(one: number[], other: number[]): number {
  const luminance = (rgb: number[]): number => {
    const [r = 0, g = 0, b = 0] = rgb.map((channel) => {
      const c = channel / 255;
      return c <= 0.04045 ? c / 12.92 : ((c + 0.055) / 1.055) ** 2.4;
    });
    return 0.2126 * r + 0.7152 * g + 0.0722 * b;
  };
  const [dark = 0, light = 0] = [luminance(one), luminance(other)].sort((a, b) => a - b);
  return (light + 0.05) / (dark + 0.05);
}

const token = (page: Page, name: string) =>
  page.evaluate((property) => {
    const probe = document.createElement('i');
    probe.style.color = `var(${property})`;
    document.body.append(probe);
    return (getComputedStyle(probe).color.match(/\d+/g) ?? []).map(Number);
  }, name);

test('the contrast formula gives the published extremes', () => {
  // WCAG 2.2: black on white is 21, a colour on itself 1.
  expect(contrast([0, 0, 0], [255, 255, 255])).toBeCloseTo(21, 9);
  expect(contrast([10, 74, 146], [10, 74, 146])).toBe(1);
});

for (const colorScheme of ['light', 'dark'] as const) {
  test(`tokens keep their contrast in ${colorScheme}`, async ({ page }) => {
    await page.emulateMedia({ colorScheme });
    await page.goto('/');
    for (const paper of ['--paper', '--paper-2']) {
      for (const ink of ['--ink', '--ink-2', '--cold', '--hot']) {
        const ratio = contrast(await token(page, ink), await token(page, paper));
        expect(ratio, `${ink} on ${paper}`).toBeGreaterThanOrEqual(7);
      }
      const edge = contrast(await token(page, '--edge'), await token(page, paper));
      expect(edge, `--edge on ${paper}`).toBeGreaterThanOrEqual(3);
    }
  });
}

test('a chosen theme has the very colours of a device’s', async ({ page }) => {
  const names = [
    '--paper',
    '--paper-2',
    '--ink',
    '--ink-2',
    '--edge',
    '--rule',
    '--cold',
    '--hot',
    '--focus',
  ];
  const all = async () => Promise.all(names.map((name) => token(page, name)));
  await page.emulateMedia({ colorScheme: 'dark' });
  await page.goto('/');
  const device = await all();
  await page.emulateMedia({ colorScheme: 'light' });
  await page.getByRole('button', { name: 'Dark page' }).click();
  expect(await all()).toEqual(device);
});

test('the header’s row on a phone shows which page one is on', async ({ page }) => {
  await page.setViewportSize({ width: 390, height: 664 });
  for (const address of ['/glossary/', '/sources/', '/practise/today/']) {
    await page.goto(address);
    await expect(page.locator('.site-nav [aria-current]')).toBeInViewport({ ratio: 1 });
  }
});

test('targets in the header are 48 px high, on a phone and a projector', async ({ page }) => {
  for (const width of [390, 1920]) {
    await page.setViewportSize({ width, height: 800 });
    await page.goto('/');
    const targets = page.locator('header :is(a, label, button, input[type="search"])');
    for (const target of await targets.all()) {
      // The search is a form on the projector and a link on the phone.
      if (!(await target.isVisible())) continue;
      const box = await target.boundingBox();
      expect(box?.height ?? 0, await target.innerText()).toBeGreaterThanOrEqual(48);
      expect(box?.width ?? 0, await target.innerText()).toBeGreaterThanOrEqual(44);
    }
  }
});
