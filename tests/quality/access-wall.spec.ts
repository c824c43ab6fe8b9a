// Every step of every ready meeting on a projector, in both unit systems: all of it in sight without scrolling, and no letter under 24 px.
import type { Page } from '@playwright/test';
import { plannedMeetings, type PlannedMeeting } from '../../src/lessons/meetings.ts';
import { hashOf } from '../../src/meeting/steps.ts';
import { expect, test } from '../e2e/fixtures.ts';
import { outOfSight, tooSmall, WALL, walkMeeting } from '../e2e/wall.ts';
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

test('a car on the wall shows each group of its tests, and the first of each as it is done, without scrolling', async ({
  page,
}) => {
  test.setTimeout(600_000);
  const hidden: string[] = [];
  let seen = 0;
  await page.setViewportSize(WALL);
  for (const { id, scenes } of plannedMeetings()) {
    const scene = scenes.findIndex(({ kind }) => kind === 'case');
    if (scene < 0) continue;
    await page.goto(`/meetings/${id}/${hashOf({ scene, step: 1 })}`);
    await page.getByRole('button', { name: 'Measure', exact: true }).click();
    const groups = page.locator('.case-measure > details');
    const look = async (where: string): Promise<void> => {
      const { below, beside } = await outOfSight(page);
      if (below + beside > 0) hidden.push(`${id}, ${where}: ${below} px below, ${beside} beside`);
      seen += 1;
    };
    for (let place = 0; place < (await groups.count()); place += 1) {
      const group = groups.nth(place);
      const name = await group.locator('summary').innerText();
      await group.locator('summary').click();
      await look(name);
      const first = group.locator('.case-test').first();
      await first.click();
      await look(`${name}, before the first`);
      await group.getByRole('button', { name: 'Do this test' }).click();
      await look(`${name}, the first`);
      await first.click();
      await group.locator('summary').click();
    }
  }
  keepFigures('access-wall-cars', [
    looked('Groups of tests and tests opened in a car on the wall', seen, 60),
    none('Of these, going on under its foot or beside it', hidden),
  ]);
  expect(hidden).toEqual([]);
  expect(seen).toBeGreaterThanOrEqual(60);
});

const walk = (page: Page, meeting: PlannedMeeting, units: string, found: Found): Promise<void> =>
  walkMeeting(page, '', meeting, async (hash) => {
    const where = `${meeting.id}${hash}, ${units}`;
    // A picture is as large as it gets a moment after it has come.
    await page.evaluate(() => new Promise((done) => setTimeout(done, 120)));
    found.small.push(...(await tooSmall(page)).map((text) => `${where}: ${text}`));
    const { below, beside } = await outOfSight(page);
    if (below + beside > 0) found.hidden.push(`${where}: ${below} px below, ${beside} px beside`);
    found.steps += 1;
  });
