import type { AxeBuilder } from '@axe-core/playwright';
import type { Page } from '@playwright/test';
import { axeOn, ENHANCED } from '../e2e/axe.ts';
import { expect, test } from '../e2e/fixtures.ts';
import { walkHeader } from '../e2e/header.ts';
import { addresses } from '../e2e/pages.ts';

/** Scrolls through the page, so that islands that wait to be seen are awake. */
async function wakeIslands(page: Page): Promise<void> {
  const asleep = page.locator('astro-island[ssr]');
  if ((await asleep.count()) === 0) return;
  await page.evaluate(async () => {
    // An island wakes 400 px before it is seen.
    const step = innerHeight;
    for (let top = 0; top < document.documentElement.scrollHeight; top += step) {
      scrollTo(0, top);
      await new Promise((resolve) => requestAnimationFrame(() => setTimeout(resolve, 20)));
    }
  });
  await expect(asleep).toHaveCount(0);
  await page.evaluate(() => scrollTo(0, 0));
}

/** How long a page may take to wake before it is opened once more [ms]: one that has stopped drawing never would. */
const PATIENCE = 30_000;

/** Opens a page with its islands awake; see keepDrawing in fixtures.ts. */
async function openAwake(page: Page, address: string): Promise<void> {
  await page.goto(address);
  const awake = wakeIslands(page).then(
    () => true,
    () => false,
  );
  const late = new Promise<false>((done) => setTimeout(() => done(false), PATIENCE));
  if (await Promise.race([awake, late])) return;
  await page.goto(address);
  await wakeIslands(page);
}

const TAGS = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'];

/** What axe finds, each finding with the markup it is about. */
async function found(axe: AxeBuilder): Promise<unknown[]> {
  const { violations } = await axe.analyze();
  return violations.map(({ id, nodes }) => [
    id,
    ...nodes.slice(0, 3).map(({ html, failureSummary }) => `${html} ${failureSummary ?? ''}`),
  ]);
}

// One visit a page: it is opening the page and waking its simulations that takes the time.
for (const address of addresses) {
  test(`${address}: the tab key walks its header, axe finds nothing in light and dark, and it fits 320 px and text at 200 %`, async ({
    page,
  }) => {
    // Axe takes as long as the page is large, and the model page has every table unfolded.
    test.setTimeout(180_000);
    await page.emulateMedia({ colorScheme: 'light' });
    await openAwake(page, address);
    // The speaker's window has its room for the notes.
    const headed = address !== '/meetings/notes/';
    await expect(page.locator('.site-header')).toBeVisible({ visible: headed });
    if (headed) await walkHeader(page, address);
    // As it is, on the narrowest phone, and with text twice as large.
    for (const [width, text] of [
      [390, ''],
      [320, ''],
      [390, '225%'],
    ] as const) {
      await page.setViewportSize({ width, height: 700 });
      await page.evaluate((size) => (document.documentElement.style.fontSize = size), text);
      const { scroll, client } = await page.evaluate(() => ({
        scroll: document.documentElement.scrollWidth,
        client: document.documentElement.clientWidth,
      }));
      expect(scroll, `at ${width} px ${text}`).toBeLessThanOrEqual(client);
    }
    await page.evaluate(() => (document.documentElement.style.fontSize = ''));
    await page.setViewportSize({ width: 1280, height: 720 });
    // What is folded is read by somebody too.
    await page
      .locator('details')
      .evaluateAll((all) => all.forEach((details) => details.setAttribute('open', '')));
    const light = axeOn(page, ENHANCED).withTags(TAGS);
    expect(await found(light), 'light').toEqual([]);
    // Only colours differ in the dark.
    await page.emulateMedia({ colorScheme: 'dark' });
    const dark = axeOn(page).withRules(['color-contrast-enhanced']);
    expect(await found(dark), 'dark').toEqual([]);
  });
}

/** WCAG 2.2, 2.5.8 asks for 24 px and lets links in a line off; a finger in a glove wants more [px]. */
const FINGER = { line: 34, mark: 48, alone: 44 };

test('what stands in a line of text is pressed a finger high', async ({ page }) => {
  await page.setViewportSize({ width: 390, height: 664 });
  await page.goto('/lessons/hot-fluid-thin-fluid/');
  const low = await page.evaluate((least) => {
    /** How far up and down from its middle it is still the one that is pressed. */
    const reach = (one: Element) => {
      one.scrollIntoView({ block: 'center' });
      const box = one.getClientRects()[0] ?? new DOMRect();
      const [x, y] = [box.left + Math.min(box.width / 2, 30), box.top + box.height / 2];
      const pressed = (down: number) => {
        const hit = document.elementFromPoint(x, y + down);
        return hit !== null && (hit === one || one.contains(hit));
      };
      const far = (way: number) => {
        let px = 0;
        while (px < 40 && pressed(way * (px + 1))) px += 1;
        return px;
      };
      return far(-1) + far(1) + 1;
    };
    const all: readonly (readonly [string, number])[] = [
      ['main .term', least.line],
      ['main .cited', least.mark],
      ['main p.muted > a', least.line],
      ['main .facts > a', least.alone],
    ];
    return all.flatMap(([selector, px]) => {
      const found = [...document.querySelectorAll(selector)].filter((one) => one.checkVisibility());
      if (found.length === 0) return [`there is no ${selector}`];
      return found
        .filter((one) => reach(one) < px)
        .map((one) => `${selector} ${one.textContent}: ${reach(one)} px`);
    });
  }, FINGER);
  expect(low).toEqual([]);
});
