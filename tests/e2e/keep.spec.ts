import { mkdtempSync, readFileSync, rmSync, truncateSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Page } from '@playwright/test';
import { axeOn } from './axe.ts';
import { expect, test } from './fixtures.ts';
import { giveAnswer } from './give-answer.ts';
import { keptAnswers } from './kept-answers.ts';

const address = '/practise/keep/';
const ready = (page: Page) => expect(page.locator('#keep')).toHaveAttribute('data-ready', 'true');
async function open(page: Page): Promise<void> {
  await page.goto(address);
  await ready(page);
}
const here = (page: Page) => page.locator('#keep > section').first();

const answerOf = (n: number) => ({
  kind: 'retrieval',
  lesson: 'what-pressure-does',
  item: `question-${n % 40}`,
  seed: 7,
  given: { kind: 'chosen', ids: ['a'] },
  result: n % 3 === 0 ? 'wrong' : 'right',
  certainty: 2,
});
/** A file as the page writes it, made with nothing of ours. */
const fileOf = (count: number, change: object = {}): string =>
  JSON.stringify({
    kind: 'hot-clutch:kept',
    version: 1,
    written: 1_796_000_000_000,
    answers: Array.from({ length: count }, (_, n) => ({
      v: 1,
      at: 1_764_000_000_000 + n * 60_000,
      answer: answerOf(n),
    })),
    parts: { plan: { v: 1, data: { exam: '2027-03-01', minutes: 10, round: null } } },
    jobs: [],
    sheets: [],
    ...change,
  });
const choose = (page: Page, text: string, name = 'kept.json') =>
  page.getByLabel('File to look at').setInputFiles({
    name,
    mimeType: 'application/json',
    buffer: Buffer.from(text),
  });

/** A round of six, answered by keyboard, and the date of an exam. */
async function round(page: Page): Promise<void> {
  await page.goto('/practise/today/');
  await page.getByRole('button', { name: 'Begin' }).press('Enter');
  for (let place = 1; place <= 6; place += 1) {
    await expect(page.getByRole('heading', { name: `Question ${place} of 6` })).toBeFocused();
    await giveAnswer(page);
    await page.getByRole('radio', { name: 'Fairly sure' }).press('Space');
    await page.keyboard.press('Enter');
    await page.getByRole('button', { name: /Next question|See how it went/ }).press('Enter');
  }
  await expect(page.getByRole('heading', { name: 'How it went' })).toBeFocused();
  await page.reload();
  await page.getByLabel('Date of your exam').fill('2027-03-01');
  await page.getByRole('button', { name: 'Set the date' }).click();
  await expect(page.getByText(/days to your exam/)).toBeVisible();
}
async function record(page: Page): Promise<string> {
  await page.goto('/practise/record/');
  await expect(page.getByText(/^6 answers so far/)).toBeVisible();
  return page.locator('.record').innerText();
}

test('a change of phones: saved on one, compared and taken in on a fresh one, and the record says the same; then all of it deleted, brought back, and deleted for good', async ({
  page,
  browser,
}) => {
  test.setTimeout(120_000);
  await round(page);
  const before = await record(page);
  await page.getByRole('link', { name: /^Save all of it to a file/ }).click();
  await ready(page);
  await expect(here(page)).toContainText('6 answers');
  await expect(here(page)).toContainText('exam on Mar 1, 2027');
  await page.getByLabel('Name in the file').fill('Bay 3');
  const downloading = page.waitForEvent('download');
  await page.getByRole('button', { name: 'Save to a file', exact: true }).click();
  const file = await (await downloading).path();
  expect(readFileSync(file, 'utf8')).toContain('"name":"Bay 3"');
  await expect(page.getByText(/^Handed to your browser as practice-/)).toBeVisible();

  const phone = await browser.newContext({
    baseURL: new URL(page.url()).origin,
    reducedMotion: 'reduce',
    locale: 'en-US',
  });
  const other = await phone.newPage();
  await open(other);
  await expect(here(other)).toContainText('None of your practice is on this device yet');
  await other.getByLabel('File to look at').setInputFiles(file);
  await expect(other.getByRole('heading', { name: 'What would change' })).toBeFocused();
  await expect(other.locator('.keep-dry-run')).toContainText('6 come in');
  await expect(other.locator('.keep-dry-run')).toContainText('It carries the name “Bay 3”.');
  await expect(other.locator('.keep-dry-run')).toContainText('Nothing that is here would be lost');
  expect(await keptAnswers(other)).toEqual([]);
  await other.getByRole('button', { name: 'Take it in' }).press('Enter');
  await expect(other.getByText('It is in, with 6 new answers.')).toBeVisible();
  await expect(other.locator(':focus')).toContainText('It is in');
  expect(await keptAnswers(other)).toEqual(await keptAnswers(page));
  expect(await record(other)).toBe(before);

  await other.goBack();
  await ready(other);
  await other.getByRole('button', { name: 'Delete everything on this device' }).click();
  await expect(other.getByRole('group', { name: 'All of this goes:' })).toContainText('6 answers');
  await expect(other.getByRole('button', { name: 'No, keep it' })).toBeFocused();
  await other.getByRole('button', { name: 'Yes, delete all of it' }).click();
  await expect(other.getByText(/^All of it is deleted/)).toBeVisible();
  const left = () =>
    other.evaluate(async () => [
      Object.keys(localStorage),
      Object.keys(sessionStorage),
      (await indexedDB.databases()).map(({ name }) => name),
    ]);
  expect(await left()).toEqual([[], [], []]);
  await other.getByRole('button', { name: 'Bring it back' }).click();
  await expect(other.getByText('It is back.')).toBeVisible();
  await expect(here(other)).toContainText('6 answers');
  await other.getByRole('button', { name: 'Delete everything on this device' }).click();
  await other.getByRole('button', { name: 'Yes, delete all of it' }).click();
  await expect(other.getByText(/^All of it is deleted/)).toBeVisible();
  expect(await left()).toEqual([[], [], []]);
  await other.goto('/practise/record/');
  await expect(other.getByText(/^There are no answers yet/)).toBeVisible();
  await other.goto('/practise/today/');
  await expect(other.getByText(/^You have not marked a lesson as done yet/)).toBeVisible();
  await expect(other.getByLabel('Date of your exam')).toHaveValue('');
  await phone.close();
});

test('what differs is shown first and chosen; a foreign, a damaged and a huge file are refused in words; it fits 320 px and axe finds nothing', async ({
  page,
}) => {
  await page.setViewportSize({ width: 320, height: 640 });
  await open(page);
  await choose(page, fileOf(3));
  await page.getByRole('button', { name: 'Take it in' }).click();
  await expect(page.getByText('It is in, with 3 new answers.')).toBeVisible();

  const wrong = page.locator('#keep-file-wrong');
  await choose(page, '{"kind":"flash-cards","cards":[]}', 'cards.json');
  await expect(wrong).toContainText('cards.json: That file comes from somewhere else.');
  await choose(page, fileOf(3).slice(0, 400));
  await expect(wrong).toContainText('damaged or cut short');
  const folder = mkdtempSync(join(tmpdir(), 'keep-'));
  const huge = join(folder, 'huge.json');
  writeFileSync(huge, fileOf(0));
  truncateSync(huge, 50_000_000);
  await page.getByLabel('File to look at').setInputFiles(huge);
  await expect(wrong).toContainText('larger than 25 MB');
  rmSync(folder, { recursive: true });
  await expect(page.getByRole('button', { name: 'Take it in' })).toHaveCount(0);

  await choose(
    page,
    fileOf(5, {
      parts: { plan: { v: 1, data: { exam: '2027-05-01', minutes: 20, round: null } } },
    }),
  );
  await expect(wrong).toBeEmpty();
  const dry = page.locator('.keep-dry-run');
  await expect(dry).toContainText('2 come in and 3 are the same on both');
  await expect(page.getByRole('radio', { name: /^The one here: exam on Mar 1/ })).toBeChecked();
  await page.getByRole('radio', { name: /^The one in the file: exam on May 1/ }).check();
  await expect(dry).toContainText('Your plan: exam on Mar 1, 2027, rounds of 10 minutes.');
  expect((await axeOn(page).analyze()).violations.map(({ id }) => id)).toEqual([]);
  const wide = () =>
    page.evaluate(
      () => document.documentElement.scrollWidth - document.documentElement.clientWidth,
    );
  expect(await wide()).toBeLessThanOrEqual(0);
  await page.getByRole('button', { name: 'Take it in' }).click();
  await expect(here(page)).toContainText('exam on May 1, 2027');
  await page.getByRole('button', { name: 'Take it back out' }).click();
  await expect(here(page)).toContainText('exam on Mar 1, 2027');
  expect(await keptAnswers(page)).toHaveLength(3);
});

test('a page closed while it takes in 4,000 answers has all of them or none, and keeps what was there', async ({
  page,
  context,
}) => {
  test.setTimeout(120_000);
  await open(page);
  await choose(page, fileOf(3));
  await page.getByRole('button', { name: 'Take it in' }).click();
  await expect(page.getByText('It is in, with 3 new answers.')).toBeVisible();
  const text = fileOf(4003);
  const seen: number[] = [];
  for (const wait of [0, 60, 240]) {
    const other = await context.newPage();
    await open(other);
    await choose(other, text);
    await other.getByRole('button', { name: 'Take it in' }).click();
    await new Promise((done) => setTimeout(done, wait));
    await other.close({ runBeforeUnload: false });
    const kept = await keptAnswers(page);
    seen.push(kept.length);
    expect([3, 4003]).toContain(kept.length);
    expect(kept.slice(0, 3)).toEqual([0, 1, 2].map(answerOf));
    if (kept.length === 4003) break;
  }
  // The last one had all the time it needs, or one before it had.
  expect(seen.length).toBeGreaterThan(0);
});
