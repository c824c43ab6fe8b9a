import type { Page } from '@playwright/test';
import { expect, test } from './fixtures.ts';
import { simulationPages } from './pages.ts';

/** Read from 6 m off a projector, and at arm's length on a phone, upright or on its side [px]. */
const SCREENS = [
  { width: 1920, height: 1080, least: 24 },
  { width: 844, height: 390, least: 12 },
  { width: 667, height: 375, least: 12 },
  { width: 390, height: 664, least: 12 },
];
/** The last of them, where the page stands after one round: the other stages are looked at there alone, to save time. */
const UPRIGHT = SCREENS.slice(-1);
/** Rounding of scales. */
const SLACK = 0.05;

/** Every picture on the page, below a simulation too, and the side of a pair that a phone shows only when asked. */
async function expectReadable(page: Page, where: string, screens = SCREENS): Promise<void> {
  for (const { width, height, least } of screens) {
    await page.setViewportSize({ width, height });
    const small = () =>
      page.evaluate(async (enough) => {
        const found = () => {
          const texts = [...document.querySelectorAll<SVGTextElement>('main svg text')].filter(
            (text) => text.checkVisibility() && text.getBoundingClientRect().width > 0,
          );
          if (texts.length === 0) return ['no picture with letters was found'];
          return texts.flatMap((text) => {
            const scale = text.getScreenCTM();
            const px =
              parseFloat(getComputedStyle(text).fontSize) *
              Math.hypot(scale?.c ?? 0, scale?.d ?? 0);
            return px < enough ? [`${text.textContent}: ${px.toFixed(1)} px`] : [];
          });
        };
        const sides = [
          ...document.querySelectorAll<HTMLElement>('main .sim-picture [aria-pressed="false"]'),
        ].filter((one) => one.getClientRects().length > 0);
        const all = found();
        for (const side of sides) {
          const back = side.parentElement?.querySelector<HTMLElement>('[aria-pressed="true"]');
          side.click();
          await new Promise((done) => setTimeout(done));
          all.push(...found());
          back?.click();
        }
        return all;
      }, least - SLACK);
    // A chart takes its measure from the page, a frame or two after the page has changed.
    await expect.poll(small, `${where}, ${width} px wide`).toEqual([]);
  }
}

for (const { address, ids } of [...simulationPages, { address: '/', ids: [] as string[] }]) {
  test(`the letters in the pictures of ${address} are large enough, in every stage`, async ({
    page,
  }) => {
    test.setTimeout(60_000);
    await page.goto(address);
    const sims = ids.map((id) => page.locator(`#${id}`));
    const each = async (step: (sim: (typeof sims)[number]) => Promise<void>) => {
      for (const sim of sims) await step(sim);
    };
    await each(async (sim) => {
      await sim.evaluate((section) => section.scrollIntoView({ block: 'start' }));
      await expect(sim).toHaveAttribute('data-ready', 'true');
    });
    await expectReadable(page, 'predict');
    if (sims.length === 0) return;
    await each(async (sim) => {
      await sim.locator('.choice-stack input').first().press('Space');
      await sim.locator('.choice-row input').first().press('Space');
      await sim.locator('button[type="submit"]').press('Enter');
      await sim.getByRole('button', { name: 'On to the tasks' }).waitFor();
      // The pictures below are fetched with the answer.
      await expect(sim.locator('.sim-below > .sim-stage')).toHaveCount(0);
    });
    await expectReadable(page, 'compare', UPRIGHT);
    await each(async (sim) => {
      await sim.getByRole('button', { name: 'On to the tasks' }).press('Enter');
    });
    await expectReadable(page, 'tasks', UPRIGHT);
    await each(async (sim) => {
      await sim.getByRole('button', { name: 'Your controls' }).press('Enter');
    });
    await expectReadable(page, 'your controls', SCREENS.toReversed());
  });
}
