// Questions in which one arranges, pairs, points or measures: by keyboard, by touch, on a narrow screen, on paper.
import { readFileSync } from 'node:fs';
import type { Page } from '@playwright/test';
import type { Asked } from '../../src/quiz/asked.ts';
import type { QuestionSet } from '../../src/quiz/question-set.ts';
import { axeOn } from '../e2e/axe.ts';
import { expect, test } from '../e2e/fixtures.ts';

const lesson = 'live-data';

const setOf = (id: string) =>
  JSON.parse(readFileSync(`dist/questions/${id}.json`, 'utf8')) as QuestionSet;
const named = (from: string, id: string): Asked => {
  const found = setOf(from).questions.find((question) => question.id === id);
  if (found === undefined) throw new Error(`no question "${id}"`);
  return found;
};
const questions = [
  named('outside-first', 'level-with-a-stick'),
  named('live-data', 'shapes-of-four-traces'),
  named('live-data', 'a-log-in-the-bay'),
  named('air-on-the-bench', 'piston-out-of-a-caliper'),
  named('live-data', 'code-and-pulls-like-new'),
  named('pump-and-regulator', 'line-by-the-same-share'),
];

/** The lesson, with one question of each form in place of its own. */
async function begin(page: Page): Promise<void> {
  await page.route(`**/questions/${lesson}.json`, (route) =>
    route.fulfill({ json: { ...setOf(lesson), questions } }),
  );
  await page.goto(`/lessons/${lesson}/`);
  const button = page.getByRole('button', { name: 'Cover the lesson and start' });
  await button.scrollIntoViewIfNeeded();
  await expect(button).toBeEnabled();
  await button.press('Enter');
  await expect(page.getByRole('heading', { name: 'Question 1 of 6' })).toBeFocused();
}

const onShow = async (page: Page): Promise<Asked> => {
  const stem = (await page.locator('.retrieval-stem').textContent()) ?? '';
  const found = questions.find(
    ({ stem: [first] }) => typeof first === 'string' && stem.startsWith(first),
  );
  if (found === undefined) throw new Error(`What is on show is none of these: ${stem}`);
  return found;
};
const text = (words: Asked['stem']): string =>
  words.map((piece) => (typeof piece === 'string' ? piece : piece.us)).join('');

/** Answers what is on show rightly. */
async function answerRight(page: Page, asked: Asked, press: 'keys' | 'touch'): Promise<void> {
  const form = page.locator('.retrieval-form');
  const use = async (role: 'button' | 'radio', name: string | RegExp): Promise<void> => {
    const control = form.getByRole(role, { name, exact: true });
    if (press === 'touch') await control.tap();
    else await control.press('Space');
  };
  switch (asked.kind) {
    case 'order': {
      await form.locator('.form-order').waitFor();
      const right = [...asked.steps].sort((a, b) => a.rank - b.rank);
      for (const [place, step] of right.entries()) {
        const up = form.getByRole('button', { name: `Move up: ${text(step.words)}` });
        const row = form.locator('.form-order li').filter({ hasText: text(step.words) });
        for (let tries = 0; tries < right.length; tries += 1) {
          if ((await row.locator('.form-place').textContent()) === String(place + 1)) break;
          if (press === 'touch') await up.tap();
          else {
            await up.press('Enter');
            await expect(up).toBeFocused();
          }
          await expect(form.getByRole('status')).toContainText(text(step.words));
        }
      }
      return;
    }
    case 'match':
      for (const { id, words } of asked.pairs) {
        const partner = asked.partners.find((one) => one.id === id);
        const group = form.getByRole('group', { name: text(words) });
        const radio = group.getByRole('radio', {
          name: new RegExp(`${text(partner?.words ?? [])}$`),
        });
        if (press === 'touch') await radio.tap();
        else await radio.press('Space');
      }
      return;
    case 'spot': {
      const place = asked.steps.findIndex(({ id }) => id === asked.answers[0]) + 1;
      const points = form.locator('.form-spot input');
      const point = points.nth(asked.missing === undefined ? place - 1 : place);
      if (press === 'touch') await point.tap();
      else await point.press('Space');
      return;
    }
    case 'case': {
      await form.getByRole('button', { name: /^Read it, 4 min/ }).press('Enter');
      await expect(form.getByText('Spent so far: 4 min.')).toBeVisible();
      await use('radio', text(asked.options.find(({ correct }) => correct)?.words ?? []));
      return;
    }
    case 'single':
    case 'several':
      await use('radio', text(asked.options.find(({ correct }) => correct)?.words ?? []));
      return;
    case 'number':
      throw new Error('no number here');
  }
}

for (const press of ['keys', 'touch'] as const) {
  test.describe(press, () => {
    // A small phone, by its width.
    if (press === 'touch') test.use({ hasTouch: true, viewport: { width: 320, height: 640 } });
    test('each form is asked, answered and explained', async ({ page }) => {
      test.setTimeout(120_000);
      await begin(page);
      for (const place of [1, 2, 3, 4, 5, 6]) {
        const asked = await onShow(page);
        if (asked.chart !== undefined) {
          await expect(page.locator('.question-chart svg')).toBeVisible();
          await page.getByText('The chart in numbers').first().click();
          await expect(page.getByRole('columnheader', { name: 'Line B' })).toBeVisible();
        }
        if (place === 1) {
          await page.getByRole('button', { name: 'Check my answer' }).press('Enter');
          await expect(page.locator('.retrieval .field-error').first()).not.toBeEmpty();
        }
        await answerRight(page, asked, press);
        const wide = await page.evaluate(() => document.documentElement.scrollWidth);
        expect(wide, asked.id).toBeLessThanOrEqual(page.viewportSize()?.width ?? 0);
        if (press === 'keys')
          expect((await axeOn(page).include('.retrieval').analyze()).violations).toEqual([]);
        await page.getByRole('radio', { name: 'Certain' }).press('Space');
        await page.getByRole('button', { name: 'Check my answer' }).press('Enter');
        await expect(page.locator('.retrieval-verdict'), asked.id).toContainText(/^Right/);
        const reasons = await page.locator('.retrieval-reasons > li').count();
        expect(reasons).toBeGreaterThanOrEqual(3);
        await page.getByRole('button', { name: /Next question|See how it went/ }).press('Enter');
      }
      await expect(page.getByText('6 of 6 right, 18 of 18 marks.')).toBeVisible();
    });
  });
}

test('a step is dragged by its number, too', async ({ page }) => {
  await begin(page);
  for (let place = 1; (await onShow(page)).kind !== 'order'; place += 1) {
    await answerRight(page, await onShow(page), 'keys');
    await page.getByRole('radio', { name: 'Guessing' }).press('Space');
    await page.getByRole('button', { name: 'Check my answer' }).press('Enter');
    await page.getByRole('button', { name: 'Next question' }).press('Enter');
  }
  const rows = page.locator('.form-order li');
  const first = (await rows.first().textContent())?.slice(1) ?? '';
  await rows.first().scrollIntoViewIfNeeded();
  const from = await rows.first().locator('.form-place').boundingBox();
  const to = await rows.nth(2).boundingBox();
  if (from === null || to === null) throw new Error('nothing to drag');
  await page.mouse.move(from.x + from.width / 2, from.y + from.height / 2);
  await page.mouse.down();
  await page.mouse.move(from.x + from.width / 2, to.y + to.height * 0.8, { steps: 12 });
  await page.mouse.up();
  await expect(rows.nth(2)).toContainText(first);
});
