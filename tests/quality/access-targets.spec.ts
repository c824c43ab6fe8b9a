// What is pressed with a glove: 44 px or more either way, which is WCAG 2.2, 2.5.5 (AAA), and 48 px where nothing forbids it; links in
// a line of text excepted, as there. And whatever is dragged has a slider beside it that moves the same (2.5.7).
import type { Page } from '@playwright/test';
import { expect, test } from '../e2e/fixtures.ts';
import { addresses, simulationPages } from '../e2e/pages.ts';
import { keepFigures, looked, none, type Figure } from './figures.ts';
import { openFolds, openOwnControls, wakeIslands } from './stages.ts';

const LEAST = 44;
const OURS = 48;

/** Everything that is pressed in a page, by how small its shorter side is [px]. */
const targets = (page: Page) =>
  page.evaluate(() => {
    const all = document.querySelectorAll<HTMLElement>(
      'a[href], button, input:not([type="hidden"]), select, textarea, summary, [role="slider"]',
    );
    return [...all].flatMap((one) => {
      if (
        !one.checkVisibility({ visibilityProperty: true }) ||
        one.closest('[inert], .visually-hidden, [aria-hidden="true"]')
      )
        return [];
      const label = one.matches('input') ? one.closest('label') : null;
      const target = label ?? one;
      const box = target.getBoundingClientRect();
      if (box.width < 2 || box.height < 2) return [];
      const inline =
        getComputedStyle(one).display.startsWith('inline') &&
        one.closest('p, li, dd, td, th, figcaption, h1, h2, h3, h4') !== null;
      const line =
        inline &&
        one.closest('p, li, dd, td, th, figcaption')?.textContent.trim() !== one.textContent.trim();
      // The range itself is as high as its track; its row is what a finger meets.
      return [
        {
          words: `${one.tagName.toLowerCase()}.${(one.getAttribute('class') ?? '').split(' ')[0] ?? ''} ${(one.getAttribute('aria-label') ?? target.textContent).trim().slice(0, 40)}`,
          width: box.width,
          height: box.height,
          // A lesson’s disc in the drawn path is small; its own row below leads there as well.
          line: line || one.matches('.term, .cited, .skip, .path-node'),
        },
      ];
    });
  });

test('targets are a glove wide', async ({ page }) => {
  test.setTimeout(900_000);
  const small: string[] = [];
  let [all, ours] = [0, 0];
  await page.setViewportSize({ width: 390, height: 664 });
  const count = async (where: string) => {
    for (const { words, width, height, line } of await targets(page)) {
      if (line) continue;
      all += 1;
      if (Math.min(width, height) >= OURS - 0.5) ours += 1;
      if (Math.min(width, height) < LEAST - 0.5)
        small.push(`${where}: ${words} ${Math.round(width)} x ${Math.round(height)}`);
    }
  };
  for (const address of addresses) {
    await page.goto(address);
    await wakeIslands(page);
    await openFolds(page.locator('body'));
    await count(address);
  }
  for (const { address, ids } of simulationPages) {
    await page.goto(address);
    for (const id of ids) await openOwnControls(page, id);
    await count(`${address} your controls`);
  }
  const share = (100 * ours) / all;
  const figures: Figure[] = [
    looked('targets measured on a phone, links in a line of text apart', all, 2000),
    none('targets under 44 px either way', small),
    {
      what: 'targets of 48 px or more either way, in percent',
      value: Number(share.toFixed(1)),
      bar: '90 or more',
      met: share >= 90,
    },
  ];
  keepFigures('access-targets', figures);
  expect(small).toEqual([]);
  expect(share).toBeGreaterThanOrEqual(90);
});

test('every handle in a picture has a slider that moves with it', async ({ page }) => {
  test.setTimeout(600_000);
  const wrong: string[] = [];
  let handles = 0;
  await page.setViewportSize({ width: 1280, height: 900 });
  for (const { address, ids } of simulationPages) {
    await page.goto(address);
    for (const id of ids) {
      const sim = await openOwnControls(page, id);
      const grips = sim.locator(
        '.sim-picture :is(.chart-grip, .dw-grip):visible, .sim-below .dw-grip:visible',
      );
      const values = () =>
        sim
          .locator('input[type="range"]')
          .evaluateAll((all) => all.map((one) => (one as HTMLInputElement).value).join(' '));
      for (let i = 0; i < (await grips.count()); i += 1) {
        handles += 1;
        const grip = grips.nth(i);
        await grip.scrollIntoViewIfNeeded();
        const before = await values();
        for (const [dx, dy] of [
          [-40, -30],
          [40, 30],
        ] as const) {
          const box = await grip.boundingBox();
          if (!box) continue;
          await page.mouse.move(box.x + box.width / 2, box.y + box.height / 2);
          await page.mouse.down();
          await page.mouse.move(box.x + box.width / 2 + dx, box.y + box.height / 2 + dy, {
            steps: 5,
          });
          await page.mouse.up();
          if ((await values()) !== before) break;
        }
        if ((await values()) === before) wrong.push(`${id}: handle ${i + 1} moves no slider`);
      }
    }
  }
  keepFigures('access-handles', [
    looked('handles dragged in pictures', handles, 12),
    none('handles without a slider that moves with them', wrong),
  ]);
  expect(wrong).toEqual([]);
});
