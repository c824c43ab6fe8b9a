// What is folded in a lesson: shut until a run, opened by links, open on paper and without a script. And places that moved.
import type { Page } from '@playwright/test';
import { expect, test } from '../e2e/fixtures.ts';

const LESSON = '/lessons/hot-fluid-thin-fluid/';
const fold = (page: Page) => page.locator('details.after-run');

async function runIt(page: Page): Promise<void> {
  // It wakes when it comes into view.
  await page.locator('#fluid').scrollIntoViewIfNeeded();
  await expect(page.locator('#fluid[data-ready=true]')).toBeVisible();
  await page.locator('#fluid input[name="fluid-prediction"]').first().check({ force: true });
  await page.locator('#fluid input[name="fluid-confidence"]').first().check({ force: true });
  await page.locator('#fluid .act').click();
  await expect(page.locator('#fluid .stage-head')).toBeVisible();
}

test('what follows a run opens when it has been run, with the picture where it was, and stays so', async ({
  page,
}) => {
  await page.setViewportSize({ width: 390, height: 664 });
  await page.goto(LESSON);
  await expect(fold(page)).not.toHaveAttribute('open');
  await runIt(page);
  await expect(fold(page)).toHaveAttribute('open');
  await expect(page.locator('#fluid .sim-picture svg').first()).toBeInViewport({ ratio: 0.9 });
  // The place is written down once all rests.
  await expect
    .poll(() => page.evaluate(() => JSON.stringify(history.state ?? {})))
    .toContain('"outcome":"');
  await page.reload();
  await expect(fold(page)).toHaveAttribute('open');
});

test('opening it moves nothing that stands above', async ({ page }) => {
  await page.goto(LESSON);
  await fold(page).scrollIntoViewIfNeeded();
  const tops = () =>
    page.evaluate(() =>
      ['h1', '#fluid', 'details.after-run'].map(
        (one) => document.querySelector(one)?.getBoundingClientRect().top,
      ),
    );
  const before = await tops();
  await fold(page).evaluate((details: HTMLDetailsElement) => (details.open = true));
  expect(await tops()).toEqual(before);
});

test('a hand opens it too, with a finger or with a key', async ({ page }) => {
  await page.setViewportSize({ width: 390, height: 664 });
  await page.goto(LESSON);
  const summary = fold(page).locator('summary').first();
  expect((await summary.boundingBox())?.height).toBeGreaterThanOrEqual(48);
  await summary.focus();
  await page.keyboard.press('Enter');
  await expect(fold(page)).toHaveAttribute('open');
  await expect(summary.getByText('opens by itself')).toBeHidden();
});

test('a link to a fold opens it and the folds round it', async ({ page }) => {
  await page.goto('/lessons/pump-and-regulator/');
  for (const id of ['deeper-the-same-as-a-sum', 'deeper-how-it-feeds-on-itself']) {
    await page.goto(`/lessons/pump-and-regulator/#${id}`);
    const inside = page.locator(`details:has(> summary > #${id})`);
    await expect(inside).toHaveAttribute('open');
    await expect(page.locator(`#${id}`)).toBeInViewport();
  }
});

test('the search finds what is folded, and its hit leads there', async ({ page }) => {
  await page.goto('/search/?q=feeds+on+itself');
  const hit = page.locator('a[href*="#deeper-how-it-feeds-on-itself"]').first();
  await hit.click();
  await expect(page.locator('#deeper-how-it-feeds-on-itself')).toBeInViewport();
  await expect(page.getByText('Think of a car in gear in traffic')).toBeVisible();
});

test('on paper all of it is open', async ({ page }) => {
  await page.goto('/lessons/pump-and-regulator/');
  await page.emulateMedia({ media: 'print' });
  for (const words of ['is the displacement,', 'Think of a car in gear in traffic'])
    await expect(page.getByText(words)).toBeVisible();
});

test.describe('without a script', () => {
  test.use({ javaScriptEnabled: false });

  test('what follows a run stands open, after a word to think first', async ({ page }) => {
    await page.goto(LESSON);
    await expect(fold(page).getByText('times thinner').first()).toBeVisible();
    await expect(fold(page).getByText('Before you read on, say what you expect.')).toBeVisible();
    await expect(fold(page).getByText('opens by itself')).toBeHidden();
  });

  test('an old link says where its place stands now', async ({ page }) => {
    await page.goto('/lessons/thin-gap-open-hole/#which-ranges-suffer');
    const link = page.locator('.moved a:visible');
    await expect(link).toHaveCount(1);
    await link.click();
    await expect(page).toHaveURL(/\/lessons\/holds-cold-slips-hot\/#which-ranges-suffer$/);
  });
});

for (const [was, is] of [
  ['regulator-to-clutch/#what-air-can-tell-you', 'cold-hot-and-air/#what-air-can-tell-you'],
  [
    'regulator-to-clutch/#deeper-how-to-do-it-on-the-bench',
    'cold-hot-and-air/#what-is-not-in-the-test',
  ],
  [
    'turbine-must-stop/#a-stall-test-and-why-not',
    'how-hard-the-converter-pushes/#a-stall-test-and-why-not',
  ],
  [
    'two-range-selections/#deeper-how-to-prove-it-step-by-step',
    'two-range-selections/#prove-it-at-the-cable',
  ],
] as const) {
  test(`${was} leads on`, async ({ page }) => {
    await page.goto(`/lessons/${was}`);
    await expect(page).toHaveURL(new RegExp(`/lessons/${is}$`));
    await expect(page.locator(`#${is.split('#')[1] ?? ''}`)).toBeInViewport();
  });
}

test('an old link is followed, with the state that it carries', async ({ page }) => {
  await page.goto('/course/');
  await page.goto('/lessons/thin-gap-open-hole/?crack=0.2#clutch-pressure');
  await expect(page).toHaveURL(/\/lessons\/holds-cold-slips-hot\/\?crack=0\.2#clutch-pressure$/);
  await page.goBack();
  await expect(page).toHaveURL(/\/course\/$/);
});

test('places that have moved are in nobody else’s way', async ({ page }) => {
  await page.goto('/lessons/thin-gap-open-hole/');
  await expect(page.locator('.moved > li').first()).toBeHidden();
});
