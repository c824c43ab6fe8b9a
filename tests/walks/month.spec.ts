import type { Page } from '@playwright/test';
import { expect, test } from '../e2e/fixtures.ts';
import { giveAnswer } from '../e2e/give-answer.ts';
import { keptAnswers } from '../e2e/kept-answers.ts';

/** Days of a month on which somebody practises, and when the exam is. */
const BEFORE = ['11-23', '11-24', '11-26', '11-29', '12-01'];
const AFTER = ['12-04', '12-07', '12-11', '12-14', '12-18'];
const EXAM = '2026-12-21';
const at = (page: Page, day: string, hour = '09') =>
  page.clock.setFixedTime(new Date(`2026-${day}T${hour}:00:00`));

async function answer(page: Page): Promise<void> {
  await giveAnswer(page);
  await page.getByRole('radio', { name: 'Fairly sure' }).check();
  await page.keyboard.press('Enter');
}
const question = (page: Page, place: number, of: number) =>
  page.getByRole('heading', { name: `Question ${place} of ${of}`, exact: true });

/** A round of six, which is what five minutes hold; on most days somebody is called away after two. */
async function round(page: Page, day: string, most = 2): Promise<number> {
  await at(page, day);
  await page.goto('/practise/today/');
  await page.getByRole('button', { name: 'Begin' }).click();
  for (let place = 1; place <= most; place += 1) {
    await expect(question(page, place, 6)).toBeVisible();
    await answer(page);
    await page.getByRole('button', { name: /Next question|See how it went/ }).click();
  }
  await expect(
    most === 6 ? page.getByRole('heading', { name: 'How it went' }) : question(page, most + 1, 6),
  ).toBeVisible();
  return most;
}

test('a month to an exam, with a change of phones in the middle and a rehearsal at the end', async ({
  page,
  browser,
}) => {
  test.slow();
  let answered = 0;
  await page.clock.install({ time: new Date(`2026-${BEFORE[0]}T09:00:00`) });
  await at(page, BEFORE[0] ?? '');
  await page.goto('/practise/today/');
  await page.getByLabel('Date of your exam').fill(EXAM);
  await page.getByRole('button', { name: 'Set the date' }).click();
  await expect(page.getByText(/^28 days to your exam/)).toBeVisible();
  for (const [i, day] of BEFORE.entries()) answered += await round(page, day, i === 0 ? 6 : 2);

  // A rehearsal is begun on the old phone, and one of its questions answered.
  await page.goto('/practise/rehearsal/');
  await page.getByRole('button', { name: 'Begin', exact: true }).click();
  await expect(question(page, 1, 50)).toBeVisible();
  await answer(page);
  await expect(question(page, 2, 50)).toBeVisible();
  await page.goto('/practise/keep/');
  await expect(page.getByText(/^A rehearsal under way, .* with 1 of 50/)).toBeVisible();
  const downloading = page.waitForEvent('download');
  await page.getByRole('button', { name: 'Save to a file', exact: true }).click();
  const file = await (await downloading).path();

  const phone = await browser.newContext({
    baseURL: new URL(page.url()).origin,
    reducedMotion: 'reduce',
    locale: 'en-US',
  });
  const other = await phone.newPage();
  await other.clock.install({ time: new Date('2026-12-02T09:00:00') });
  await at(other, '12-02');
  await other.goto('/practise/keep/');
  await expect(other.locator('#keep')).toHaveAttribute('data-ready', 'true');
  await other.getByLabel('File to look at').setInputFiles(file);
  await expect(other.locator('.keep-dry-run')).toContainText(`${answered} come in`);
  await expect(other.locator('.keep-dry-run')).toContainText(/Rehearsal under way\s*comes in/);
  await other.getByRole('button', { name: 'Take it in' }).click();
  await expect(other.getByText(`It is in, with ${answered} new answers.`)).toBeVisible();
  expect(await keptAnswers(other)).toEqual(await keptAnswers(page));

  for (const [i, day] of AFTER.entries()) answered += await round(other, day, i === 0 ? 6 : 2);
  await at(other, '12-20');
  await other.goto('/practise/rehearsal/#question');
  await expect(question(other, 2, 50)).toBeVisible();
  for (let place = 2; place <= 5; place += 1) {
    await expect(question(other, place, 50)).toBeVisible();
    await answer(other);
  }
  await expect(question(other, 6, 50)).toBeVisible();
  await other.getByRole('link', { name: 'All questions' }).click();
  await expect(other.getByText('5 answered, 45 open.')).toBeVisible();
  await other.getByRole('button', { name: 'Hand in', exact: true }).click();
  await other.getByRole('button', { name: 'Hand it in', exact: true }).click();
  await expect(other.getByRole('heading', { name: 'How it went' })).toBeVisible();
  answered += 5;
  await expect.poll(async () => (await keptAnswers(other)).length).toBe(answered);

  // The day of the exam, and a day after it: nothing is planned any more.
  for (const day of ['12-21', '12-22']) {
    await at(other, day, '06');
    await other.goto('/practise/today/');
    await expect(other.getByText(/exam has come/).first()).toBeVisible();
    await expect(other.getByRole('button', { name: 'Begin' })).toHaveCount(0);
  }
  const kept = await keptAnswers(other);
  const right = kept.filter(({ result }) => result === 'right').length;
  const questions = new Set(kept.map(({ item }) => item)).size;
  await other.goto('/practise/record/');
  await expect(
    other.getByText(new RegExp(`^${answered} answers so far, to ${questions} of \\d+ questions`)),
  ).toBeVisible();
  const sure = other.getByRole('row', { name: /^Fairly sure/ }).getByRole('cell');
  await expect(sure.first()).toHaveText(String(answered));
  await expect(sure.nth(1)).toHaveText(String(right));
  await phone.close();
});
