// Every step of every ready meeting on a projector, in both unit systems: all of it in sight without scrolling, and no letter under 24 px.
import type { Page } from '@playwright/test';
import { plannedMeetings, type PlannedMeeting } from '../../src/lessons/meetings.ts';
import { hashOf, stepsOf } from '../../src/meeting/steps.ts';
import { expect, test } from '../e2e/fixtures.ts';
import { outOfSight, tooSmall, wall, WALL } from '../e2e/wall.ts';
import { keepFigures, looked, none } from './figures.ts';

const LEAST_STEPS = 8 * 12;

interface Found {
  readonly small: string[];
  readonly hidden: string[];
  steps: number;
}

test('the wall hides nothing and whispers nothing', async ({ page }) => {
  test.setTimeout(900_000);
  const found: Found = { small: [], hidden: [], steps: 0 };
  await page.setViewportSize(WALL);
  for (const units of ['US units', 'Metric units']) {
    await page.goto('/');
    await page.getByRole('radio', { name: units }).check();
    for (const meeting of plannedMeetings()) await walk(page, meeting, units, found);
  }
  keepFigures('access-wall', [
    looked('Steps of shop meetings seen on a wall of 1920 x 1080', found.steps, 2 * LEAST_STEPS),
    none('Letters under 24 px on it', found.small),
    none('Steps that go on under its foot or beside it', found.hidden),
  ]);
  expect.soft(found.small).toEqual([]);
  expect.soft(found.hidden).toEqual([]);
  expect(found.steps).toBeGreaterThanOrEqual(2 * LEAST_STEPS);
});

async function walk(
  page: Page,
  { id, scenes }: PlannedMeeting,
  units: string,
  found: Found,
): Promise<void> {
  await page.goto(`/meetings/${id}/#stage-1-1`);
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
        await page.keyboard.press('1');
        await page.keyboard.press('2');
      }
      const where = `${id}${hash}, ${units}`;
      // A picture is as large as it gets a moment after it has come.
      await page.evaluate(() => new Promise((done) => setTimeout(done, 120)));
      found.small.push(...(await tooSmall(page)).map((text) => `${where}: ${text}`));
      const { below, beside } = await outOfSight(page);
      if (below + beside > 0) found.hidden.push(`${where}: ${below} px below, ${beside} px beside`);
      found.steps += 1;
      await page.keyboard.press('PageDown');
    }
}
