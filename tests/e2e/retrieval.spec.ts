import type { Page } from '@playwright/test';
import { axeOn } from './axe.ts';
import { expect, test } from './fixtures.ts';
import { giveAnswer } from './give-answer.ts';
import { keptAnswers } from './kept-answers.ts';

const lesson = '/lessons/hot-fluid-thin-fluid/';

async function press(page: Page, place: number): Promise<void> {
  const button = page.getByRole('button', { name: 'Cover the lesson and start' });
  await button.scrollIntoViewIfNeeded();
  await expect(button).toBeEnabled();
  await button.press('Enter');
  await expect(page.getByRole('heading', { name: `Question ${place} of 6` })).toBeFocused();
}

/** @param place of the question that the round begins with, or goes on with */
async function start(page: Page, place = 1): Promise<void> {
  await page.goto(lesson);
  await press(page, place);
}

/** Answers what is on show, right or wrong, by keyboard alone. */
async function answer(page: Page, n: number): Promise<void> {
  await giveAnswer(page);
  await page
    .getByRole('radio', { name: ['Guessing', 'Fairly sure', 'Certain'][n % 3] ?? '' })
    .press('Space');
  await page.keyboard.press('Enter');
  await expect(
    page.getByRole('heading', { name: `Question ${n + 1} of 6, answered` }),
  ).toBeFocused();
}

test('a round by keyboard alone: the lesson is out of sight until the end, every answer is explained', async ({
  page,
}) => {
  await start(page);
  for (let n = 0; n < 6; n += 1) {
    await expect(page.locator('.hook')).toBeHidden();
    await answer(page, n);
    expect(await page.locator('.retrieval-reasons > li').count()).toBeGreaterThanOrEqual(3);
    await page.getByRole('button', { name: /Next question|See how it went/ }).press('Enter');
  }
  await expect(page.getByRole('heading', { name: 'How it went' })).toBeFocused();
  await expect(page.locator('.hook')).toBeVisible();
  const kept = await keptAnswers(page);
  expect(kept.map(({ certainty }) => certainty)).toEqual([1, 2, 3, 1, 2, 3]);
  expect(new Set(kept.map(({ item }) => item)).size).toBe(6);
});

test('checking too early says what is missing and puts the focus there', async ({ page }) => {
  await start(page);
  await page.getByRole('button', { name: 'Check my answer' }).press('Enter');
  const complaint = page.locator('.retrieval .field-error').first();
  await expect(complaint).not.toBeEmpty();
  await expect(page.locator('[data-place="answer"] input').first()).toBeFocused();
});

test('Escape shows the lesson, keeps the answer, and carrying on covers it again', async ({
  page,
}) => {
  await start(page);
  await answer(page, 0);
  await page.keyboard.press('Escape');
  await expect(page.locator('.hook')).toBeVisible();
  await expect(page.getByRole('heading', { name: /^Paused at question/ })).toBeFocused();
  await page.getByRole('button', { name: 'Cover the lesson and carry on' }).press('Enter');
  await expect(page.locator('.hook')).toBeHidden();
  await expect(page.getByRole('heading', { name: 'Question 1 of 6, answered' })).toBeVisible();
});

test('a reload, at once after an answer or with one half given, goes on where the round was', async ({
  page,
}) => {
  await start(page);
  const first = await page.locator('.retrieval-stem').first().textContent();
  await answer(page, 0);
  await page.reload();
  await press(page, 2);
  await expect(page.locator('.retrieval-panel')).toContainText('You are back where you left off.');
  expect(await page.locator('.retrieval-stem').first().textContent()).not.toBe(first);
  await page.getByRole('radio', { name: 'Certain' }).press('Space');
  await page.reload();
  await press(page, 2);
  await expect(page.getByRole('radio', { name: 'Certain' })).toBeChecked();
  for (let n = 1; n < 6; n += 1) {
    await answer(page, n);
    await page.getByRole('button', { name: /Next question|See how it went/ }).press('Enter');
  }
  await expect(page.locator('.retrieval-panel')).toContainText(/ of 6 right/u);
  const kept = await keptAnswers(page);
  expect(kept.map(({ certainty }) => certainty)).toEqual([1, 2, 3, 1, 2, 3]);
  expect(new Set(kept.map(({ item }) => item)).size).toBe(6);
  // It is over: the next start asks anew.
  await page.reload();
  await press(page, 1);
});

test('a question leads to the simulation at its state, in a tab of its own, and stays where it was', async ({
  page,
}) => {
  // The bank as it is, with one question of it left to ask.
  await page.route('**/questions/outside-first.json', async (route) => {
    const bank = (await (await route.fetch()).json()) as { questions: { id: string }[] };
    const questions = bank.questions.filter(({ id }) => id === 'only-hot-and-low');
    await route.fulfill({ json: { ...bank, questions } });
  });
  await page.goto('/lessons/outside-first/');
  const button = page.getByRole('button', { name: 'Cover the lesson and start' });
  await button.scrollIntoViewIfNeeded();
  await expect(button).toBeEnabled();
  await button.press('Enter');
  const link = page.getByRole('link', { name: /^See it in the simulation/ });
  await expect(page.getByRole('heading', { name: 'Question 1 of 1' })).toBeFocused();
  await expect(link).toHaveCount(0);
  await giveAnswer(page);
  await page.getByRole('radio', { name: 'Fairly sure' }).press('Space');
  await page.keyboard.press('Enter');
  const answered = page.getByRole('heading', { name: 'Question 1 of 1, answered' });
  await expect(answered).toBeFocused();

  const opening = page.waitForEvent('popup');
  await link.press('Enter');
  const tab = await opening;
  const sim = tab.locator('#level-window');
  // 100 °C and 2 L short, in the units that a new reader has.
  await expect(sim.getByRole('slider', { name: 'Fluid temperature' })).toHaveValue('212');
  await expect(sim.getByRole('slider', { name: 'Against the right fill' })).toHaveValue('-2.1');
  await tab.close();

  await expect(answered).toBeVisible();
  await expect(page.locator('.retrieval-reasons > li')).toHaveCount(3);
});

test('axe finds nothing while asking and while explaining, in light and dark', async ({ page }) => {
  // Four runs of axe over a whole lesson.
  test.setTimeout(180_000);
  for (const [n, colorScheme] of (['light', 'dark'] as const).entries()) {
    await page.emulateMedia({ colorScheme });
    await start(page, n + 1);
    expect((await axeOn(page).analyze()).violations).toEqual([]);
    await answer(page, n);
    expect((await axeOn(page).analyze()).violations).toEqual([]);
  }
});

test('the questions are fetched at the press, with a word while they come', async ({ page }) => {
  let release = (): void => undefined;
  const held = new Promise<void>((done) => (release = done));
  const asked: string[] = [];
  await page.route('**/questions/*.json', async (route) => {
    asked.push(route.request().url());
    await held;
    await route.continue();
  });
  await page.goto(lesson);
  const panel = page.locator('.retrieval-panel');
  const button = panel.getByRole('button');
  await button.scrollIntoViewIfNeeded();
  await expect(button).toBeEnabled();
  expect(asked).toEqual([]);
  await button.press('Enter');
  await expect(button).toHaveText('Loading the questions');
  await expect(panel.getByRole('status')).toHaveText('Loading the questions');
  // A second press changes nothing, and the focus has stayed.
  await button.press('Enter');
  await expect(button).toBeFocused();
  release();
  await expect(page.getByRole('heading', { name: 'Question 1 of 6' })).toBeFocused();
  expect(asked).toHaveLength(1);
});

test('without a connection it says so, and pressing again brings the questions', async ({
  page,
  context,
  trouble,
}) => {
  await page.goto(lesson);
  const panel = page.locator('.retrieval-panel');
  const button = panel.getByRole('button');
  await button.scrollIntoViewIfNeeded();
  await expect(button).toBeEnabled();
  await context.setOffline(true);
  await button.press('Enter');
  await expect(panel.getByRole('status')).toContainText('Check that you are connected');
  await expect(button).toHaveText('Try again');
  await expect(button).toBeFocused();
  await context.setOffline(false);
  // The browser's own complaint about the request is what was asked for here.
  trouble.length = 0;
  await button.press('Enter');
  await expect(page.getByRole('heading', { name: 'Question 1 of 6' })).toBeFocused();
});

test('an answer that cannot be kept is told of there, once, and the round goes on', async ({
  page,
}) => {
  await page.addInitScript(() => {
    Object.defineProperty(window, 'indexedDB', {
      get() {
        throw new DOMException('blocked', 'SecurityError');
      },
    });
  });
  await start(page);
  await answer(page, 0);
  await expect(page.locator('.retrieval').getByText('could not be kept')).toHaveCount(1);
  await page.getByRole('button', { name: 'Next question' }).press('Enter');
  await answer(page, 1);
});

test.describe('without a script', () => {
  test.use({ javaScriptEnabled: false });
  test('the questions are a list with folded answers', async ({ page }) => {
    await page.goto(lesson);
    await expect(page.getByRole('button', { name: 'Cover the lesson and start' })).toBeHidden();
    const first = page.locator('.retrieval-plain > li').first();
    await expect(first).toBeVisible();
    await first.getByText('Answer and reasons').click();
    await expect(first.getByText('Fits:', { exact: true }).first()).toBeVisible();
  });
});
