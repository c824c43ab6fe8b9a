import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { dist } from '../../src/build/pages.ts';
import { readBankIndex } from '../../src/quiz/bank-index.ts';
import { classFile, NOON } from '../rounds/class/class-files.ts';
import { axeOn, ENHANCED } from './axe.ts';
import { expect, test } from './fixtures.ts';

const address = '/practise/class/';
const { items } = readBankIndex(readFileSync(join(dist, 'questions/index.json'), 'utf8'));
const [first, second, third] = items;

const asFile = (name: string, text: string) => ({
  name,
  mimeType: 'application/json',
  buffer: Buffer.from(text),
});

test('two files make a meeting; a photo among them is refused; nothing stays behind', async ({
  page,
}) => {
  await page.goto(address);
  await expect(page.getByText('Nobody yet.')).toBeVisible();
  const field = page.getByLabel(/^Choose the files of your learners/);
  const said = (...results: readonly string[]) =>
    [first, second, third].flatMap((item, i) => (item ? [`${item.id} ${results[i]}`] : []));
  await field.setInputFiles([
    asFile('ana.json', classFile('Ana', said('wrong certain', 'right fairly', 'right guess'))),
    asFile('photo.json', 'no JSON at all'),
    asFile(
      'b.json',
      classFile(null, said('wrong guess', 'right certain', 'wrong guess'), NOON + 1),
    ),
  ]);
  await expect(page.getByText(/^photo\.json: That file comes from somewhere else/)).toBeVisible();
  const names = page.getByRole('textbox', { name: 'Name on this page' });
  await expect(names).toHaveCount(2);
  await expect(names.first()).toHaveValue('Ana');
  await names.nth(1).fill('Bay 2');
  await names.nth(1).press('Tab');
  await expect(page.getByRole('columnheader', { name: 'Bay 2' })).toBeVisible();

  const topics = page.getByRole('region', { name: 'For the next meeting' });
  await expect(topics).toContainText('2 of 2 got it wrong at the first try, 1 of them certain.');
  const questions = page.getByRole('region', { name: 'Question by question' }).getByRole('row');
  await expect(questions.nth(1)).toContainText('0 of 2');
  await expect(questions.nth(1)).toContainText('too few to say');

  const { violations } = await axeOn(page, ENHANCED).analyze();
  expect(violations).toEqual([]);
  await page.setViewportSize({ width: 320, height: 700 });
  const wide = await page.evaluate(() => document.documentElement.scrollWidth);
  expect(wide).toBeLessThanOrEqual(320);

  await page.getByRole('button', { name: 'Take Ana off' }).press('Enter');
  await expect(names).toHaveCount(1);
  await page.reload();
  await expect(page.getByText('Nobody yet.')).toBeVisible();
});

test('files that were chosen before the page was ready are taken in', async ({ page }) => {
  let ready = (): void => undefined;
  const chosen = new Promise<void>((done) => (ready = done));
  await page.route('**/ClassView*.js', async (route) => {
    await chosen;
    await route.continue();
  });
  await page.goto(address, { waitUntil: 'commit' });
  await page
    .getByLabel(/^Choose the files of your learners/)
    .setInputFiles(asFile('ana.json', classFile('Ana', [`${first?.id ?? ''} wrong certain`])));
  ready();
  await expect(page.getByRole('textbox', { name: 'Name on this page' })).toHaveValue('Ana');
});
