import { execFileSync } from 'node:child_process';
import { writeFileSync } from 'node:fs';
import type { Page } from '@playwright/test';
import { axeOn } from '../e2e/axe.ts';
import { expect, test } from '../e2e/fixtures.ts';

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

/** Where each question begins and ends, by page: its number and those of the options under it. */
function questionsOn(
  pages: readonly string[],
): { number: number; page: number; options: string }[] {
  const out: { number: number; page: number; options: string }[] = [];
  pages.forEach((text, page) => {
    for (const line of text.split('\n')) {
      const number = /^\s{0,4}(\d{1,2})\.\s/.exec(line)?.[1];
      if (number !== undefined) out.push({ number: Number(number), page, options: '' });
      const option = /^\s{5,}(\d)\.\s{1,8}\S/.exec(line)?.[1];
      const last = out.at(-1);
      if (option === undefined || last === undefined) continue;
      // On another page than its question it would stand alone.
      last.options += last.page === page ? option : '!';
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
  await expect(page.getByText('Tick at least one lesson to draw from.')).toBeInViewport();
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

test('forty questions on Letter and A4: each whole on its page, the seed on every page, options numbered as in the key', async ({
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
      for (const { options } of questions) expect(options).toMatch(/^(123?4?5?6?)?$/);
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
    const right = await answers.nth(place).locator('li').allInnerTexts();
    let looked = 0;
    right.forEach((text, i) => {
      const there = sheets[show]?.[i]?.options ?? '';
      // Where no option is numbered, an amount, the places of steps, or the letters of what goes together.
      if (there === '' || text.includes('step')) expect(text).toMatch(/\d|^[A-F](?: [A-F])*$/);
      else {
        for (const option of text.trim().split(' ')) expect(there).toContain(option);
        looked += 1;
      }
    });
    expect(looked).toBeGreaterThan(20);
  }
  // The reason of every right answer; those against the wrong ones where they are asked for.
  await expect(page.locator('.paper-reasons')).toHaveCount(40);
  await expect(page.getByText('Not:')).toHaveCount(0);
  await page.getByRole('checkbox', { name: /wrong answers/ }).check();
  await expect(page.getByText('Not:').first()).toBeVisible();
});

/** Four lessons that have charts and every kind of question. */
const every = `${address}?lessons=live-data.warm-to-the-complaint.codes-are-questions.holds-cold-slips-hot&count=40&units=us&seed=pine&`;

/** Questions of which no page has every word, by what begins them. By word, since columns stand side by side. */
async function torn(page: Page, format: 'Letter' | 'A4'): Promise<readonly string[]> {
  const wordsOf = (text: string): readonly string[] => text.split(/\s+/);
  const pages = (await printed(page, format)).map((text) => new Set(wordsOf(text)));
  const questions = await page
    .locator('.paper-questions > li')
    .evaluateAll((all) =>
      all.map((one) =>
        [...one.querySelectorAll('p, figcaption, li > span, .paper-steps > li')]
          .map((part) => part.textContent.trim())
          .join(' '),
      ),
    );
  return questions.filter((text) => !pages.some((has) => wordsOf(text).every((w) => has.has(w))));
}

test('every kind of question and a chart are printed whole, and the key has their answers', async ({
  page,
}) => {
  const paper = page.locator('.paper-questions > li');
  for (const show of ['a', 'b']) {
    await shown(page, `${every}show=${show}`);
    for (const format of ['Letter', 'A4'] as const) expect(await torn(page, format)).toEqual([]);
  }
  const order = paper.filter({ hasText: 'A motorhome has five codes' });
  await expect(order.locator('.paper-lines .paper-short')).toHaveCount(5);
  const steps = await order.locator('.paper-lines li').allInnerTexts();
  const orderOnB = (await paper.allInnerTexts()).findIndex((text) => text.includes('A motorhome'));
  await expect(paper.locator('.paper-partners')).not.toHaveCount(0);
  await expect(paper.locator('.paper-gaps')).not.toHaveCount(0);
  await expect(paper.locator('.paper-readings')).not.toHaveCount(0);

  // One unit is printed, and lines differ by their dashes.
  const chart = paper.filter({ hasText: 'A is the tap of the forward clutch' }).locator('svg');
  await expect(chart).toContainText('Pressure, psi');
  await expect(chart).not.toContainText('kPa');
  const dashes = await chart
    .locator('.question-chart-line')
    .evaluateAll((lines) => lines.map((line) => getComputedStyle(line).strokeDasharray));
  expect(dashes).toHaveLength(3);
  expect(new Set(dashes).size).toBe(3);

  await shown(page, `${every}show=key`);
  const answers = page.locator('.paper-answers').nth(1).locator('li');
  const numbers = (await answers.nth(orderOnB).innerText()).match(/\d/g)?.slice(0, 5) ?? [];
  // A supply that is low comes first, and a ratio, which is reckoned from the rest, last: common practice, no source.
  expect(steps[numbers.indexOf('1')]).toContain('Supply voltage');
  expect(steps[numbers.indexOf('5')]).toContain('wrong ratio');
  await expect(answers.nth(orderOnB)).toContainText('may swap');
  await expect(paper.filter({ hasText: 'A hatchback stores' })).toContainText(
    /cheapest readings that decide take \d+ min/,
  );
  // No number of an answer is cut off at the edge of the paper.
  expect((await printed(page, 'Letter')).join('\n')).toMatch(/^\s*1\. \S/m);
});

test('black on white on paper, also from a dark page, and nothing leans on a color', async ({
  page,
}) => {
  await page.emulateMedia({ colorScheme: 'dark', media: 'print' });
  await shown(page, `${every}show=a`);
  await expect(page.locator('.sheet-form, .sheet-chosen, .site-header').first()).toBeHidden();
  const colors = await page.evaluate(() => {
    const used = new Set<string>();
    for (const one of document.querySelectorAll('.paper, .paper *')) {
      const { color, backgroundColor, borderBottomColor, fill, stroke } = getComputedStyle(one);
      for (const value of [color, backgroundColor, borderBottomColor]) used.add(value);
      if (one instanceof SVGElement)
        for (const value of [fill, stroke]) if (value !== 'none') used.add(value);
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
