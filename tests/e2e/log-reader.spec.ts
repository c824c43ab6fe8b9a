import type { Page } from '@playwright/test';
import { axeOn, ENHANCED } from './axe.ts';
import { expect, test } from './fixtures.ts';

const PAGE = '/measure/log/';

async function open(page: Page): Promise<void> {
  await page.goto(PAGE);
  await expect(page.locator('#log-reader')).toHaveAttribute('data-ready', 'true');
}
const choose = (page: Page, name: string, text: string) =>
  page
    .getByLabel('Choose a log file')
    .setInputFiles({ name, mimeType: 'text/csv', buffer: Buffer.from(text) });
const findings = (page: Page) => page.locator('.log-findings button');

/** Park for two seconds, Drive from 2.0 s, the turbine standing at 2.9 s; names that nobody could guess. */
const strange = [
  'When;A;B;C',
  ...Array.from({ length: 60 }, (_, i) =>
    [
      (i / 10).toFixed(1).replace('.', ','),
      i < 29 ? `${700 - (i % 3)},5` : '0,0',
      '0,0',
      i < 20 ? 7 : 9,
    ].join(';'),
  ),
].join('\n');

for (const [name, first] of [
  ['A healthy car, cold and hot', 'Drive takes as long cold as hot'],
  ['Slips in Drive and Reverse once hot', 'Drive takes hold cold'],
  ['Stored a code, drives like new', 'The turbine never reads under'],
] as const) {
  test(`the example “${name}” is read, in its worker, under the policy of the page`, async ({
    page,
  }) => {
    await open(page);
    await page.getByRole('button', { name }).click();
    await expect(findings(page).first()).toContainText(first);
    await findings(page).first().click();
    await expect(page.locator('.log-place')).toBeFocused();
    await expect(page.locator('#log-place-chart svg')).toBeVisible();
    await expect(page.locator('.log-place')).toBeInViewport();
    // One number in the caption and in the picture, where the finding lies between two readings too.
    const here = await page.locator('#log-place-chart .cursor-here').textContent();
    await expect(page.locator('.log-place')).toContainText(`The cursor is at ${here}.`);
    await page.getByRole('button', { name: 'Back to the finding' }).click();
    await expect(findings(page).first()).toBeFocused();
  });
}

test('columns that nobody could guess are chosen by keyboard alone, remembered, and the stop is read', async ({
  page,
}) => {
  await open(page);
  await choose(page, 'strange.csv', strange);
  await expect(page.locator('#log-time-says')).toContainText('Which column is the time?');
  await expect(page.locator('#log-turbine-says')).toContainText(
    'Which column is the turbine speed',
  );
  const pick = async (id: string, letter: string) => {
    await page.locator(id).focus();
    await page.keyboard.press(letter);
    await page.keyboard.press('Tab');
  };
  await pick('#log-time', 'W');
  await pick('#log-turbine', 'A');
  await pick('#log-output', 'B');
  await pick('#log-range', 'C');
  await expect(page.locator('#log-range-says')).toContainText('Park or Neutral');
  await pick('#log-range-0', 'P');
  await pick('#log-range-1', 'D');
  await expect(findings(page).first()).toContainText(
    '0.80 to 1.00 s after selection, 0.90 s in the middle',
  );
  await findings(page).first().focus();
  await page.keyboard.press('Enter');
  await expect(page.locator('.log-place')).toBeFocused();

  await page.reload();
  await expect(page.locator('#log-reader')).toHaveAttribute('data-ready', 'true');
  await choose(page, 'another.csv', strange);
  await expect(page.locator('.log-columns')).toContainText('as you had it the last time');
  await expect(findings(page).first()).toContainText('0.80 to 1.00 s');
});

test('rows that could not be read are counted above and named below', async ({ page }) => {
  await open(page);
  const rows = strange.split('\n');
  rows.splice(10, 1, 'garbage', rows[10] ?? '');
  const head = 'Time (s);Turbine rpm;Output rpm;Range';
  await choose(page, 'broken.csv', [head, ...rows.slice(1)].join('\n'));
  await expect(page.locator('.log-columns')).toContainText('60 rows of 4 columns. 1 more row');
  await expect(page.locator('.log-blind')).toContainText('Row 11 of the file');
});

test('files that are no log are refused in a sentence, and the next one is read', async ({
  page,
}) => {
  await open(page);
  const says = page.locator('#log-refused');
  await choose(page, 'photo.png', '\u0000');
  await expect(says).toContainText('photo.png is not text');
  await choose(page, 'sheet.pdf', '%PDF-1.4 and so on');
  await expect(says).toContainText('sheet.pdf is a PDF');
  await choose(page, 'data.json', '{"a": [1, 2]}');
  await expect(says).toContainText('data.json is JSON');
  await choose(page, 'nothing.csv', '');
  await expect(says).toContainText('nothing.csv is empty');
  await choose(page, 'strange.csv', strange);
  await expect(says).toBeEmpty();
  await expect(page.locator('.log-columns')).toBeVisible();
});

test('a reading that takes long shows how far it is, and can be stopped', async ({ page }) => {
  await open(page);
  // The worker is long in coming.
  let go = () => {};
  const held = new Promise<void>((done) => (go = done));
  await page.route('**/worker-*.js', async (route) => {
    await held;
    await route.continue();
  });
  await choose(page, 'strange.csv', strange);
  await expect(page.getByRole('progressbar', { name: 'Reading strange.csv' })).toBeVisible();
  await page.getByRole('button', { name: 'Cancel' }).press('Enter');
  await expect(page.locator('#log-refused')).toContainText(
    'You stopped the reading of strange.csv',
  );
  go();
  await choose(page, 'strange.csv', strange);
  await expect(page.locator('.log-columns')).toBeVisible();
});

test('a wrong unit is asked about where it was chosen, and nothing is lost', async ({ page }) => {
  await open(page);
  await page.getByRole('button', { name: 'A healthy car' }).click();
  await expect(findings(page).first()).toBeVisible();
  await page.getByLabel('Unit: Fluid temperature').selectOption('°C');
  await expect(page.locator('#log-temperature-says')).toContainText(
    /^\d+\s°C would be \d+\s°F, hotter .* Is the column in °F\?$/,
  );
  await expect(page.locator('.log-doubt')).toContainText('Answer this first. Fluid temperature:');
  await expect(page.locator('#log-temperature')).toHaveValue('5');
  await page.locator('.log-role').getByRole('button', { name: 'Read it as °F' }).press('Enter');
  await expect(page.locator('#log-temperature-says')).toBeEmpty();
  await expect(page.getByLabel('Unit: Fluid temperature')).toHaveValue('°F');
  await expect(page.getByLabel('Unit: Fluid temperature')).toBeFocused();
  await page.getByLabel('Unit: Fluid temperature').selectOption('°C');
  await page.locator('.log-doubt').getByRole('button', { name: 'Read it as °F' }).press('Enter');
  await expect(page.locator('.log-doubt')).toHaveCount(0);
  await expect(page.getByRole('heading', { name: 'What the log shows' })).toBeFocused();
});

test('ratios are typed, refused in a sentence, and taken from the log', async ({ page }) => {
  await open(page);
  await page.getByRole('button', { name: 'A healthy car' }).click();
  await page.getByRole('radio', { name: 'My own' }).press('Space');
  const first = page.getByLabel(/^First gear/);
  await first.fill('four');
  await first.press('Tab');
  await expect(page.locator('#log-ratio-drive-wrong')).not.toBeEmpty();
  await expect(first).toHaveValue('four');
  await first.fill('3.5');
  await first.press('Tab');
  await expect(page.locator('.log-ratios')).toContainText('with 3.5 in Drive');
  await page.getByRole('radio', { name: 'Estimated from this log' }).press('Space');
  await expect(page.locator('.log-ratios')).toContainText('with 4.0 in Drive');
});

test('readings for diagnosis are copied in their form', async ({ page, context }) => {
  await context.grantPermissions(['clipboard-read', 'clipboard-write']);
  await open(page);
  await page.getByRole('button', { name: 'Slips in Drive' }).click();
  await page.locator('summary', { hasText: 'The readings as text' }).click();
  await page.getByRole('button', { name: 'Copy the readings' }).click();
  await expect(page.locator('.log-readings')).toContainText('Copied.');
  const copied = JSON.parse(await page.evaluate(() => navigator.clipboard.readText())) as unknown[];
  expect(copied).toContainEqual({
    test: 'stopTime',
    range: 'drive',
    temperature_C: 96,
    value: null,
  });
});

for (const [width, height] of [
  [390, 664],
  [844, 390],
  [1366, 768],
  [1920, 1080],
] as const) {
  test(`at ${width} x ${height} nothing scrolls sideways, and a finding comes up with its chart`, async ({
    page,
  }) => {
    await page.setViewportSize({ width, height });
    await open(page);
    await page.getByRole('button', { name: 'Slips in Drive' }).click();
    await findings(page).nth(2).click();
    await expect(page.locator('#log-place-chart .chart-plot')).toBeVisible();
    // It is scrolled to a frame after it is there.
    await expect
      .poll(() =>
        page.evaluate(() => {
          const { top, bottom } =
            document.querySelector('#log-place-chart .chart-plot')?.getBoundingClientRect() ??
            new DOMRect(0, -1);
          return top >= 0 && bottom <= innerHeight + 1 ? 'whole' : `${top} to ${bottom} px`;
        }),
      )
      .toBe('whole');
    const wide = await page.evaluate(() => document.documentElement.scrollWidth - innerWidth);
    expect(wide).toBeLessThanOrEqual(0);
    const small = await page
      .locator('#log-reader :is(button, select, input[type=text])')
      .evaluateAll((all) =>
        all
          .filter((one) => one.checkVisibility() && one.getBoundingClientRect().height < 44)
          .map((one) => one.outerHTML.slice(0, 80)),
      );
    expect(small).toEqual([]);
  });
}

test('on paper stand the findings and the charts', async ({ page }) => {
  await open(page);
  await page.getByRole('button', { name: 'Slips in Drive' }).click();
  await expect(findings(page).first()).toBeVisible();
  await page.emulateMedia({ media: 'print' });
  await expect(findings(page).first()).toBeVisible();
  await expect(page.locator('#log-turbine-chart svg')).toBeVisible();
  await expect(page.getByLabel('Choose a log file')).toBeHidden();
  await expect(page.locator('#log-time')).toBeHidden();
});

test('axe finds nothing with a log read and a place open, light and dark, at 320 px and with large text', async ({
  page,
}) => {
  test.setTimeout(120_000);
  await open(page);
  await page.getByRole('button', { name: 'Slips in Drive' }).click();
  await findings(page).first().click();
  await expect(page.locator('#log-place-chart svg')).toBeVisible();
  for (const [width, text] of [
    [320, ''],
    [390, '225%'],
  ] as const) {
    await page.setViewportSize({ width, height: 700 });
    await page.evaluate((size) => (document.documentElement.style.fontSize = size), text);
    const over = await page.evaluate(() => document.documentElement.scrollWidth - innerWidth);
    expect(over, `at ${width} px ${text}`).toBeLessThanOrEqual(0);
  }
  await page.evaluate(() => (document.documentElement.style.fontSize = ''));
  for (const colorScheme of ['light', 'dark'] as const) {
    await page.emulateMedia({ colorScheme });
    const { violations } = await axeOn(page, ENHANCED).analyze();
    expect(
      violations.map(({ id, nodes }) => [id, nodes[0]?.html]),
      colorScheme,
    ).toEqual([]);
  }
});
