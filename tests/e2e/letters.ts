import type { Locator, Page } from '@playwright/test';
import { expect } from './fixtures.ts';

/** Read from 6 m off a projector, and at arm's length on a phone, upright or on its side: the least letter by the width of the screen [px]. */
const LEAST: Readonly<Record<number, number>> = { 1920: 24, 844: 12, 667: 12, 390: 12 };
/** The screens on which letters are measured, by their width. */
export const readOn = (width: number): boolean => width in LEAST;
/** Rounding of scales. */
const SLACK = 0.05;

/**
 * Every picture in a part of the page, below a simulation too, and the side of a pair that a phone shows only when asked.
 * A part without letters passes: some simulations ask with a list.
 * @param width of the screen; one that `readOn` names
 */
export async function expectReadable(part: Locator, width: number, where: string): Promise<void> {
  const small = () =>
    part.evaluate(
      async (whole, enough) => {
        const found = () => {
          const texts = [...whole.querySelectorAll<SVGTextElement>('svg text')].filter(
            (text) => text.checkVisibility() && text.getBoundingClientRect().width > 0,
          );
          return texts.flatMap((text) => {
            const scale = text.getScreenCTM();
            const px =
              parseFloat(getComputedStyle(text).fontSize) *
              Math.hypot(scale?.c ?? 0, scale?.d ?? 0);
            return px < enough ? [`${text.textContent}: ${px.toFixed(1)} px`] : [];
          });
        };
        const sides = [
          ...whole.querySelectorAll<HTMLElement>('.sim-picture [aria-pressed="false"]'),
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
      },
      (LEAST[width] ?? 0) - SLACK,
    );
  // A chart takes its measure from the page, a frame or two after the page has changed.
  await expect.poll(small, `${where}, ${width} px wide`).toEqual([]);
}

/** The whole page, which holds some picture with letters. */
export async function expectPageReadable(page: Page, width: number): Promise<void> {
  await expect(page.locator('main svg text').first()).toBeAttached();
  await expectReadable(page.locator('main'), width, 'the page');
}
