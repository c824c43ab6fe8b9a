import type { Page } from '@playwright/test';
import { axeOn } from './axe.ts';
import { expect, test } from './fixtures.ts';
import { giveAnswer } from './give-answer.ts';
import { keptAnswers } from './kept-answers.ts';
import { BETWEEN, faultsOnPaper } from './on-paper.ts';
import { putSlot } from './put-slot.ts';

const address = '/practise/rehearsal/';
const head = (page: Page, name: string | RegExp) =>
  page.getByRole('heading', { name, exact: true });
const press = (page: Page, name: string | RegExp) =>
  page.getByRole('button', { name, exact: true }).press('Enter');

/** Answers the question on show, by keyboard alone, and goes on. */
async function answer(page: Page, place: number): Promise<void> {
  await expect(head(page, `Question ${place} of 50`)).toBeFocused();
  await giveAnswer(page);
  await page.getByRole('radio', { name: 'Fairly sure' }).press('Space');
  await page.keyboard.press('Enter');
}
/** The questions of the rehearsal under way, or of the last one handed in, as they lie in this browser. */
const asked = (page: Page, slot: 'rehearsal' | 'rehearsals-past'): Promise<readonly string[]> =>
  page.evaluate((name) => {
    const at = localStorage.getItem(`hot-clutch:${name}:slot`) ?? 'a';
    const { data } = JSON.parse(localStorage.getItem(`hot-clutch:${name}:${at}`) ?? '{}') as {
      data: Record<string, { items: { id: string }[] } | { items: { id: string }[] }[]>;
    };
    const one = [data['rehearsal'] ?? data['rehearsals'] ?? []].flat()[0];
    return (one?.items ?? []).map(({ id }) => id);
  }, slot);

test('a rehearsal by keyboard: flagged, left by a reload, changed, handed in half open and told by area', async ({
  page,
}) => {
  test.slow();
  await page.goto(address);
  await expect(page.getByText('Log, codes and slip: 8')).toBeVisible();
  await press(page, 'Begin');
  await answer(page, 1);
  // The second is flagged and left open.
  await expect(head(page, 'Question 2 of 50')).toBeFocused();
  await press(page, 'Flag it');
  await expect(head(page, 'Question 2 of 50, flagged')).toBeVisible();
  await press(page, 'Next question');
  for (let place = 3; place <= 8; place += 1) await answer(page, place);
  await press(page, 'Switch the clock off');
  await expect(page.getByRole('timer')).toHaveText('The clock is off.');
  expect((await axeOn(page).analyze()).violations).toEqual([]);

  await expect(head(page, 'Question 9 of 50')).toBeVisible();
  await page.reload();
  await expect(head(page, 'Question 9 of 50')).toBeFocused();
  await expect(page.getByRole('timer')).toHaveText('The clock is off.');
  await press(page, 'Switch the clock on');
  await expect(page.getByRole('timer')).toHaveText('60 minutes left');

  await page.getByRole('link', { name: 'All questions' }).press('Enter');
  await expect(head(page, 'All 50 questions')).toBeFocused();
  await expect(page.getByText('7 answered, 43 open. 1 is flagged.')).toBeVisible();
  expect((await axeOn(page).analyze()).violations).toEqual([]);
  await press(page, 'Question 1, answered');
  const taken = page.locator('.retrieval-form').locator('input, .nudge');
  await expect(head(page, 'Question 1 of 50')).toBeFocused();
  await expect(page.getByRole('radio', { name: 'Fairly sure' })).toBeChecked();
  await page.getByRole('radio', { name: 'Guessing' }).press('Space');
  await expect(taken.first()).toBeVisible();
  // Back leads to the list, and the change stands.
  await page.goBack();
  await expect(head(page, 'All 50 questions')).toBeFocused();
  // Most are left open, so that the test is no longer than it must be.
  await press(page, 'Question 49, open');
  for (const place of [49, 50]) await answer(page, place);

  await expect(head(page, 'All 50 questions')).toBeFocused();
  await press(page, 'Hand in');
  await expect(head(page, 'Hand in now?')).toBeFocused();
  await expect(
    page.getByText('Questions 2 and 9 to 48 are open and count as not right.'),
  ).toBeVisible();
  await expect(page.getByText('Question 2 is still flagged.')).toBeVisible();
  const drawn = await asked(page, 'rehearsal');
  expect(await keptAnswers(page)).toEqual([]);
  await press(page, 'Hand it in');
  await expect(head(page, 'How it went')).toBeFocused();

  await expect.poll(async () => (await keptAnswers(page)).length).toBe(9);
  const kept = await keptAnswers(page);
  const right = kept.filter(({ result }) => result === 'right').length;
  expect(kept.filter(({ certainty }) => certainty === 1)).toHaveLength(1);
  await expect(page.getByText(`${right} of 50 right.`)).toBeVisible();
  await expect(page.getByText('41 were left open and count as not right.')).toBeVisible();
  const rows = await page
    .getByRole('region', { name: 'Area by area' })
    .getByRole('row')
    .evaluateAll((all) =>
      all
        .slice(1)
        .map((row) =>
          [...row.querySelectorAll('td')].flatMap(({ textContent }) => textContent.match(/\d+/g)),
        ),
    );
  const sum = (at: number): number =>
    rows.reduce((total, figures) => total + Number(figures[at]), 0);
  expect([rows.length, sum(0), sum(1), sum(2)]).toEqual([8, right, 50, 41]);
  // Whoever leaves most of it open is weak somewhere, and is sent to a lesson.
  await expect(page.locator('.rehearsal-next a').first()).toHaveAttribute('href', /^\/lessons\//);
  await expect(page.locator('.rehearsal-told details.more')).toHaveCount(50);
  await page.locator('.rehearsal-told summary').first().press('Enter');
  await expect(page.locator('.rehearsal-told .retrieval-reasons').first()).toBeVisible();
  expect((await axeOn(page).analyze()).violations).toEqual([]);

  await page.reload();
  await expect(page.getByText(`${right} of 50 right.`)).toBeVisible();
  await page.getByRole('link', { name: 'To the next rehearsal' }).press('Enter');
  await expect(page.getByRole('region', { name: 'Rehearsals so far' })).toContainText(
    `${right} of 50 right`,
  );
  // The next one takes other questions.
  await press(page, 'Begin');
  await expect(head(page, 'Question 1 of 50')).toBeFocused();
  const next = await asked(page, 'rehearsal');
  expect(next).toHaveLength(50);
  expect(next.filter((id) => drawn.includes(id))).toEqual([]);
});

test('a question about a chart has its chart, when it is asked and when it is explained', async ({
  page,
}) => {
  await page.goto(address);
  const item = { id: 'where-the-needle-crosses', lesson: 'holds-cold-slips-hot', area: 'fluid' };
  await putSlot(page, 'rehearsal', {
    rehearsal: {
      ...{ begun: 1_796_000_000_000, ended: null, seconds: 0, timed: false, place: 0 },
      ...{ items: [item], logged: false },
    },
  });
  await page.goto(`${address}#question`);
  await page.reload();
  const chart = page.locator('.question-chart svg');
  await expect(chart).toBeVisible();
  await giveAnswer(page);
  await page.getByRole('radio', { name: 'Guessing' }).press('Space');
  await page.keyboard.press('Enter');
  await press(page, 'Hand in');
  await press(page, 'Hand it in');
  await expect(head(page, 'How it went')).toBeFocused();
  await page.locator('.rehearsal-told summary').first().press('Enter');
  await expect(chart).toBeVisible();
  // Printed for the one who teaches, on Letter and on A4.
  for (const between of Object.values(BETWEEN))
    expect(await faultsOnPaper(page, between)).toEqual([]);
  await expect(head(page, 'How it went')).toBeVisible();
});
