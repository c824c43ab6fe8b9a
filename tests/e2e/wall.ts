/** What is asked of a meeting on a projector, measured in the page. */
import { expect, type Page } from '@playwright/test';
import type { PlannedMeeting } from '../../src/lessons/meetings.ts';
import { hashOf, stepsOf } from '../../src/meeting/steps.ts';

export const WALL = { width: 1920, height: 1080 };
/** Read from 6 m off a projector [px]. */
const LEAST = 24;

export const wall = (page: Page) => page.locator('.stage');

/** Letters on the wall that are smaller than they may be, those of pictures after scaling. */
export const tooSmall = (page: Page) =>
  wall(page).evaluate((stage, least) => {
    const found: string[] = [];
    for (const element of stage.querySelectorAll<HTMLElement | SVGElement>('*')) {
      const own = [...element.childNodes].some(
        (node) => node.nodeType === Node.TEXT_NODE && (node.textContent ?? '').trim() !== '',
      );
      if (!own && !element.matches('input, select')) continue;
      if (!element.checkVisibility() || element.closest('.visually-hidden, title, desc')) continue;
      const box = element.getBoundingClientRect();
      if (box.width < 2 || box.height < 2) continue;
      const matrix = element instanceof SVGGraphicsElement ? element.getScreenCTM() : null;
      const scale = matrix ? Math.hypot(matrix.c, matrix.d) : 1;
      const px = parseFloat(getComputedStyle(element).fontSize) * scale;
      if (px < least - 0.05) found.push(`${px.toFixed(1)}: ${element.textContent.slice(0, 40)}`);
    }
    return found;
  }, LEAST);

/** How far what stands on the wall goes on under its foot or beside it [px]; nothing if all is in sight. */
export const outOfSight = (page: Page) =>
  page.locator('.stage-wall').evaluate((box) => ({
    below: Math.max(0, box.scrollHeight - box.clientHeight - 1),
    beside: Math.max(0, box.scrollWidth - box.clientWidth - 1),
  }));

/** Goes through every step of a meeting by the key of a clicker, a hand raised for each option of a vote. */
export async function walkMeeting(
  page: Page,
  origin: string,
  { id, scenes }: PlannedMeeting,
  seen: (hash: string) => Promise<void>,
): Promise<void> {
  await page.goto(`${origin}/meetings/${id}/#stage-1-1`);
  await expect(wall(page)).toBeVisible();
  for (const [scene, one] of scenes.entries())
    for (const step of stepsOf(one).keys()) {
      const hash = hashOf({ scene, step });
      await expect(page).toHaveURL(new RegExp(`${hash}$`, 'u'));
      if (one.kind === 'simulation')
        await expect(page.locator('.stage-simulation .sim:not(.sim-asking)')).toBeVisible();
      if (one.kind === 'case' && step === 1)
        await expect(page.locator('.stage-car .case-bar')).toBeVisible();
      if (one.kind === 'vote' && step === 0) {
        for (const option of one.options.keys()) await page.keyboard.press(String(option + 1));
      }
      await seen(hash);
      await page.keyboard.press('PageDown');
    }
}
