import { execFileSync } from 'node:child_process';
import { writeFileSync } from 'node:fs';
import type { Page } from '@playwright/test';
import { axeOn } from './axe.ts';
import { expect, test } from './fixtures.ts';

const address = '/practise/sheet/';
const link = (more: string) => `${address}?lessons=all&count=40&units=us&seed=friday&${more}`;

async function shown(page: Page, at: string): Promise<void> {
  await page.goto(at);
  await expect(page.locator('.paper')).toBeVisible();
}

/** The pages as they come out of the printer, with the layout kept. */
async function printed(page: Page, format: 'Letter' | 'A4'): Promise<readonly string[]> {
  const file = test.info().outputPath(`${format}.pdf`);
  writeFileSync(file, await page.pdf({ format, preferCSSPageSize: false }));
  return execFileSync('pdftotext', ['-layout', file, '-'], { encoding: 'utf8' })
    .split('\f')
    .filter((text) => text.trim() !== '');
}

/** Where each question begins and ends, by page: its number and the letters under it. */
function questionsOn(
  pages: readonly string[],
): { number: number; page: number; letters: string }[] {
  const out: { number: number; page: number; letters: string }[] = [];
  pages.forEach((text, page) => {
    for (const line of text.split('\n')) {
      const number = /^\s{0,4}(\d{1,2})\.\s/.exec(line)?.[1];
      if (number !== undefined) out.push({ number: Number(number), page, letters: '' });
      const letter = /^\s+([A-F])\s{1,8}\S/.exec(line)?.[1];
      const last = out.at(-1);
      if (letter === undefined || last === undefined) continue;
      // On another page than its question it would stand alone.
      last.letters += last.page === page ? letter : '!';
    }
  });
  return out;
}

test('a sheet by keyboard: lessons, number and seed, with a sentence at each field that is wrong', async ({
  page,
}) => {
  await page.goto(address);
  await page.getByRole('button', { name: 'Untick all' }).press('Enter');
  await page.getByLabel('How many questions?').fill('four');
  await page.getByLabel('Seed', { exact: true }).fill('bay 3');
  await page.getByRole('button', { name: 'Make the sheets' }).press('Enter');
  await expect(page.getByText('Tick at least one lesson to draw from.')).toBeVisible();
  await expect(page.getByText('“four” is not a whole number.')).toBeVisible();
  await expect(page.getByText('this one has a space in it')).toBeVisible();
  await expect(page.getByRole('checkbox', { name: 'All of these' }).first()).toBeFocused();
  await expect(page.getByLabel('Seed', { exact: true })).toHaveValue('bay 3');

  const fluid = page.getByRole('group', { name: 'Fluid, leaks, pressure and force' });
  await fluid.getByRole('checkbox', { name: 'All of these' }).press('Space');
  await page.getByLabel('How many questions?').fill('7');
  await page.getByRole('radio', { name: 'Metric: kPa, °C' }).press('Space');
  await page.getByLabel('Seed', { exact: true }).fill('Bay-3');
  await page.getByLabel('Seed', { exact: true }).press('Enter');
  await expect(page.getByRole('heading', { name: 'Your sheets' })).toBeFocused();
  await expect(page.locator('.paper-questions > li')).toHaveCount(7);
  await expect(page.locator('.paper')).toContainText('seed bay-3, version');
  await expect(page.locator('.paper')).not.toContainText(/psi|°F/);

  // What stands in the address makes the same sheet on another device.
  const words = await page.locator('.paper').innerText();
  await page.getByRole('radio', { name: 'Sheet B' }).press('Space');
  await expect(page.locator('.paper')).not.toHaveText(words);
  await page.reload();
  await expect(page.getByRole('radio', { name: 'Sheet B' })).toBeChecked();
  await page.getByRole('radio', { name: 'Sheet A' }).press('Space');
  expect(await page.locator('.paper').innerText()).toBe(words);

  const found = await axeOn(page).withTags(['wcag2a', 'wcag2aa', 'best-practice']).analyze();
  expect(found.violations.map(({ id }) => id)).toEqual([]);
  for (const [width, text] of [
    [320, ''],
    [390, '225%'],
  ] as const) {
    await page.setViewportSize({ width, height: 700 });
    await page.evaluate((size) => (document.documentElement.style.fontSize = size), text);
    const wide = await page.evaluate(
      () => document.documentElement.scrollWidth - document.documentElement.clientWidth,
    );
    expect(wide, `at ${width} px ${text}`).toBeLessThanOrEqual(0);
  }
});

test('forty questions on Letter and A4: each whole on its page, the seed on every page, letters as the key has them', async ({
  page,
}) => {
  const sheets: Record<string, ReturnType<typeof questionsOn>> = {};
  for (const show of ['a', 'b'] as const) {
    await shown(page, link(`show=${show}`));
    for (const format of ['Letter', 'A4'] as const) {
      const pages = await printed(page, format);
      for (const text of pages) {
        expect(text).toContain(`Sheet ${show.toUpperCase()}, seed friday, version`);
        expect(text).toContain('Name');
      }
      const questions = questionsOn(pages);
      expect(questions.map(({ number }) => number)).toEqual(
        Array.from({ length: 40 }, (_, i) => i + 1),
      );
      for (const { letters } of questions) expect(letters).toMatch(/^(ABC?D?E?F?)?$/);
      expect(pages.join(' ')).not.toMatch(/Make the sheets|Practice|Before you work/);
      sheets[show] = questions;
    }
  }
  await shown(page, link('show=key'));
  const key = (await printed(page, 'Letter')).join('\n');
  expect(key).toContain('Key to sheets A and B');
  expect(key).toContain('40 questions from all lessons. US units.');
  const answers = page.locator('.paper-answers');
  for (const [place, show] of ['a', 'b'].entries()) {
    const letters = await answers.nth(place).locator('li').allInnerTexts();
    letters.forEach((text, i) => {
      const there = sheets[show]?.[i]?.letters ?? '';
      if (there === '') expect(text).toMatch(/\d/);
      else for (const letter of text.trim().split(' ')) expect(there).toContain(letter);
    });
  }
  // The reason of every right answer; those against the wrong ones where they are asked for.
  await expect(page.locator('.paper-reasons')).toHaveCount(40);
  await expect(page.getByText('Not:')).toHaveCount(0);
  await page.getByRole('checkbox', { name: /wrong answers/ }).check();
  await expect(page.getByText('Not:').first()).toBeVisible();
});

test('black on white on paper, also from a dark page, and nothing leans on a color', async ({
  page,
}) => {
  await page.emulateMedia({ colorScheme: 'dark', media: 'print' });
  await shown(page, link('show=a'));
  await expect(page.locator('.sheet-form, .sheet-chosen, .site-header').first()).toBeHidden();
  const colors = await page.evaluate(() => {
    const used = new Set<string>();
    for (const one of document.querySelectorAll('.paper, .paper *')) {
      const { color, backgroundColor, borderBottomColor } = getComputedStyle(one);
      for (const value of [color, backgroundColor, borderBottomColor]) used.add(value);
    }
    return [...used];
  });
  for (const color of colors) {
    const [red, green, blue] = color.match(/\d+/g) ?? [];
    expect(red === green && green === blue, color).toBe(true);
  }
});

test('a link with another version says so, one with a lesson that is gone too, and no line is told', async ({
  page,
  trouble,
}) => {
  await shown(
    page,
    `${address}?lessons=thin-gap-open-hole.gone&count=6&units=si&seed=7&version=222222`,
  );
  await expect(page.getByText(/was made with version 222222 of its questions/)).toBeVisible();
  await expect(page.getByText('a lesson that is not on this site: gone.')).toBeVisible();
  await page.context().setOffline(true);
  await page.getByRole('button', { name: 'Make the sheets' }).click();
  await expect(page.getByText('The questions could not be fetched.')).toBeVisible();
  await expect(page.locator('.paper-questions > li')).toHaveCount(6);
  await page.context().setOffline(false);
  await page.getByRole('button', { name: 'Make the sheets' }).click();
  await expect(page.getByText('The questions could not be fetched.')).toHaveCount(0);
  // The line that was down.
  trouble.length = 0;
});
