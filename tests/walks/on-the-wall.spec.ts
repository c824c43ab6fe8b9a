/** Why an option is right or not, on the wall and beside it; and a simulation that goes onto the wall from its lesson. */
import type { Page } from '@playwright/test';
import { axeOn } from '../e2e/axe.ts';
import { expect, test } from '../e2e/fixtures.ts';
import { outOfSight, tooSmall, wall, WALL } from '../e2e/wall.ts';

const whys = (page: Page) => page.locator('.stage-options > li:has(.stage-why) .stage-number');
const step = (page: Page) => page.keyboard.press('PageDown');
const fits = async (page: Page): Promise<void> => {
  await expect.poll(() => tooSmall(page)).toEqual([]);
  expect(await outOfSight(page)).toEqual({ below: 0, beside: 0 });
};

test('a vote of a ready meeting says of each option why, once the answer is out', async ({
  page,
}) => {
  await page.setViewportSize(WALL);
  await page.goto('/meetings/two-faults-at-once/#stage-6-1');
  await expect(page.locator('.stage-counter')).toHaveCount(3);
  await step(page);
  await expect(whys(page)).toHaveCount(0);
  await step(page);
  await expect(whys(page)).toHaveText(['1', '2', '3']);
  await expect(page.locator('.stage-why').first()).toContainText('by more than the doubt');
  await expect(page.getByRole('button', { name: 'Why, option 1' })).toHaveCount(0);
  await fits(page);
  await step(page);
  await expect(page.locator('.stage-scene > h2')).toHaveText('Read the same list again');
});

test('where they do not fit together, the next press tells why of each that had a hand, and a key of any', async ({
  page,
}) => {
  await page.setViewportSize(WALL);
  await page.goto('/meetings/hard-rubber-leaks-cold/#stage-6-1');
  await expect(page.locator('.stage-counter')).toHaveCount(3);
  await page.keyboard.press('1');
  await page.keyboard.press('3');
  const [notes] = await Promise.all([page.waitForEvent('popup'), page.keyboard.press('n')]);
  await expect(notes.locator('.notes-votes li')).toHaveCount(3);
  await expect(notes.locator('.notes-why')).toHaveCount(0);
  await step(page);
  await expect(notes.locator('.notes-why')).toHaveCount(3);
  await step(page);
  await expect(whys(page)).toHaveText(['3']);
  await fits(page);
  await expect(notes.locator('.notes-next')).toContainText('why not another one');
  await step(page);
  await expect(whys(page)).toHaveText(['1']);
  await fits(page);
  // Of the one without a hand nobody has to hear, and whoever asks does.
  await page.keyboard.press('2');
  await expect(whys(page)).toHaveText(['2']);
  await expect(page.getByRole('button', { name: 'Why, option 2' })).toHaveAttribute(
    'aria-pressed',
    'true',
  );
  await page.getByRole('button', { name: 'Why, option 1' }).click();
  await expect(whys(page)).toHaveText(['1']);
  await expect(page.getByRole('button', { name: 'Why, option 1' })).toBeFocused();
  const third = notes.getByRole('button', { name: 'Why, on the wall: 3' });
  await third.press('Enter');
  await expect(whys(page)).toHaveText(['3']);
  await expect(third).toBeFocused();
  await expect(third).toHaveAttribute('aria-pressed', 'true');
  await expect(page.locator('.stage-bar strong').first()).toHaveText('1');
  await page.reload();
  await expect(whys(page)).toHaveText(['3']);
  expect((await axeOn(page).include('.stage').analyze()).violations).toEqual([]);
  expect((await axeOn(notes).analyze()).violations).toEqual([]);
  await step(page);
  await step(page);
  await expect(page.locator('.stage-scene > h2')).not.toHaveText('Or is it just the frost?');
});

test('on a phone what is told comes into sight, and the window with the notes keeps its words whole', async ({
  page,
}) => {
  await page.setViewportSize({ width: 390, height: 664 });
  await page.goto('/meetings/hard-rubber-leaks-cold/#stage-6-2');
  await expect(page.locator('.stage-bar')).toHaveCount(3);
  const [notes] = await Promise.all([page.waitForEvent('popup'), page.keyboard.press('n')]);
  await notes.setViewportSize({ width: 390, height: 664 });
  await step(page);
  await expect(whys(page)).toHaveText(['3']);
  await expect(page.locator('.stage-why')).toBeInViewport();
  await step(page);
  await expect(whys(page)).toHaveText(['1']);
  await expect(page.locator('.stage-why')).toBeInViewport();
  for (const words of await notes.locator('.notes-vote > span').all())
    expect((await words.boundingBox())?.width).toBeGreaterThan(250);
});

test('one’s own vote: a link of before opens, and each option may say why', async ({ page }) => {
  const plan = {
    title: 'Late',
    minutes: 5,
    scenes: [
      {
        ...{ kind: 'vote', heading: 'Hands', stem: 'Why is it late?', right: 1, notes: '' },
        ...{ options: ['The pump', 'The lip', ''], why: 'It is hard.' },
      },
    ],
  };
  const text = Buffer.from(JSON.stringify(plan)).toString('base64url');
  await page.goto(`/meetings/own/#meeting=1.${text}`);
  await page.getByRole('button', { name: 'Keep it here and open it' }).click();
  await expect(page.getByLabel('Why option 2 is right')).toHaveValue('It is hard.');
  await expect(page.getByLabel(/^Why option 3/u)).toHaveCount(0);
  await page.getByLabel('Why option 1 is not right').fill('The line would be low.');
  // What was said of an option stays with it.
  await page.getByLabel('Option 1 is right', { exact: true }).check();
  await expect(page.getByLabel('Why option 2 is not right')).toHaveValue('It is hard.');
  await page.getByLabel('Option 2 is right', { exact: true }).check();
  await page.getByRole('button', { name: 'Start the meeting' }).click();
  await expect(page.locator('.stage-counter')).toHaveCount(2);
  await step(page);
  await step(page);
  await expect(page.locator('.stage-why')).toHaveText(['The line would be low.', 'It is hard.']);
});

const LESSON = '/lessons/thin-gap-open-hole/';
const AT = '?gap-or-hole=1~temp.90~height.0.07~pressure.400~fluid.low-viscosity#gap-or-hole';
const temperature = (page: Page) => page.locator('#gap-or-hole input[type="range"]').first();

for (const units of ['US', 'Metric'])
  test(`a simulation goes onto the wall as it stands, and leaving leads back to its lesson, ${units}`, async ({
    page,
  }) => {
    await page.setViewportSize(WALL);
    await page.goto(LESSON + AT);
    if (units === 'Metric')
      await page.getByRole('radio', { name: /Metric units/ }).check({ force: true });
    const onWall = page.getByRole('link', { name: 'Show this on the wall' });
    await expect(onWall).toBeVisible();
    // Moved after the link was drawn: what counts is the moment of the press.
    await temperature(page).press('ArrowLeft');
    await temperature(page).press('ArrowLeft');
    const set = Number(await temperature(page).inputValue());
    await onWall.press('Enter');
    await expect(page).toHaveURL(/\/meetings\/wall\/\?page=lessons\/thin-gap-open-hole\/&gap-or/u);
    await expect(wall(page).locator('h1')).toHaveText('Thin gap, open hole');
    await expect(page.locator('.stage-scene > h2')).toHaveText('Thin crack or drilled hole');
    await expect(page.locator('.stage-simulation .sim:not(.sim-asking)')).toBeVisible();
    await expect(page.locator('.stage-clock')).toHaveCount(0);
    await expect(page.getByRole('link', { name: 'Show this on the wall' })).toBeHidden();
    expect(Number(await temperature(page).inputValue())).toBeCloseTo(set, 0);
    await fits(page);
    expect((await axeOn(page).include('.stage').analyze()).violations).toEqual([]);
    const [notes] = await Promise.all([page.waitForEvent('popup'), page.keyboard.press('n')]);
    await expect(notes.locator('.notes-text')).toContainText('As it came from the lesson');
    await expect(notes.locator('.notes-text')).toContainText('Fluid temperature');
    expect(await notes.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(
      await notes.evaluate(() => innerWidth),
    );
    await page.reload();
    await expect(page.locator('.stage-simulation .sim:not(.sim-asking)')).toBeVisible();
    await temperature(page).press('ArrowRight');
    const now = Number(await temperature(page).inputValue());
    // It is written down in a pause.
    await page.waitForTimeout(600);
    await page.getByRole('button', { name: 'Leave' }).click();
    await expect(page).toHaveURL(
      /\/lessons\/thin-gap-open-hole\/\?gap-or-hole=1~temp[^#]*#gap-or-h/u,
    );
    await expect(onWall).toBeVisible();
    expect(Number(await temperature(page).inputValue())).toBeCloseTo(now, 0);
    // Back leads to the lesson of before, and not onto the wall.
    await page.goBack();
    await expect(page).toHaveURL(new RegExp(`${LESSON}\\?gap-or-hole=1~temp.90`, 'u'));
  });

test('the wall comes up in a window of its own, and the code for phones leads to the lesson', async ({
  page,
  context,
}) => {
  await page.goto(LESSON + AT);
  const onWall = page.getByRole('link', { name: 'Show this on the wall' });
  await expect(onWall).toBeVisible();
  const [other] = await Promise.all([
    context.waitForEvent('page'),
    onWall.click({ modifiers: ['ControlOrMeta'] }),
  ]);
  await expect(other.locator('.stage-simulation .sim:not(.sim-asking)')).toBeVisible();
  await other.keyboard.press('q');
  await expect(other.locator('.stage-address')).toHaveText(
    /\/lessons\/thin-gap-open-hole\/\?gap-or-hole=1~temp\.90[^#]*#gap-or-hole$/u,
  );
  await expect(page).toHaveURL(new RegExp(LESSON, 'u'));
});

test('the page of the whole car goes onto the wall as well, and a Spanish lesson leads back to itself', async ({
  page,
}) => {
  await page.goto('/whole-car/');
  const sim = page.locator('.sim').first();
  await sim.scrollIntoViewIfNeeded();
  await expect(sim).toHaveAttribute('data-ready', 'true');
  await sim.getByRole('button', { name: 'Your controls' }).click();
  await page.getByRole('link', { name: 'Show this on the wall' }).click();
  await expect(page.locator('.stage-simulation .sim:not(.sim-asking)')).toBeVisible();
  await page.keyboard.press('Escape');
  await expect(page).toHaveURL(/\/whole-car\/\?whole-car=[^#]*#whole-car$/u);

  await page.goto('/es/lessons/hot-fluid-thin-fluid/?fluid=1~temp.60#fluid');
  await page.getByRole('link', { name: 'Mostrarlo en la pared' }).click();
  await expect(page.locator('.stage-simulation .sim:not(.sim-asking)')).toBeVisible();
  await page.keyboard.press('Escape');
  await expect(page).toHaveURL(
    /\/es\/lessons\/hot-fluid-thin-fluid\/\?fluid=1~temp\.60[^#]*#fluid$/u,
  );
});

test('an address without a simulation says how to get one here', async ({ page }) => {
  for (const search of ['', '?page=lessons/x/', '?page=https://example.org/&gap-or-hole=1']) {
    await page.goto(`/meetings/wall/${search}`);
    await expect(page.getByRole('alert')).toContainText('press “Show this on the wall”');
  }
});
