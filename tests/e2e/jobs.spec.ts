import { execFileSync } from 'node:child_process';
import { writeFileSync } from 'node:fs';
import type { Locator, Page } from '@playwright/test';
import { axeOn, ENHANCED } from './axe.ts';
import { expect, test } from './fixtures.ts';
import { shiftOf } from './shifts.ts';

const PAGE = '/measure/jobs/';
const ready = (page: Page) => expect(page.locator('#jobs')).toHaveAttribute('data-ready', 'true');
const sheetReady = (page: Page) =>
  expect(page.locator('.job')).toHaveAttribute('data-ready', 'true');
const first = (page: Page) => page.locator('.next-causes li').first();
const readings = (page: Page) => page.locator('.next-readings ol > li');

async function open(page: Page): Promise<void> {
  await page.goto(PAGE);
  await ready(page);
}
/** A new job, by keyboard. */
async function begin(page: Page, label: string): Promise<void> {
  await page.getByLabel('Short label').focus();
  await page.keyboard.type(label);
  await page.keyboard.press('Enter');
  // A job begins with its complaint.
  await expect(page.getByLabel('Complaint, in the customer’s words')).toBeFocused();
  await page.getByLabel('Test', { exact: true }).focus();
}
/** A reading, by keyboard; the form waits for it. */
async function type(page: Page, id: string, text: string, temperature = ''): Promise<void> {
  const select = page.getByLabel('Test', { exact: true });
  await expect(select).toBeFocused();
  await select.selectOption(id);
  await page.keyboard.press('Tab');
  await page.keyboard.type(text);
  await expect(page.getByLabel('It read')).toHaveValue(text);
  if (temperature !== '') {
    await page.keyboard.press('Tab');
    await page.keyboard.type(temperature);
    await expect(page.locator('#next-test-temperature')).toHaveValue(temperature);
  }
  await page.keyboard.press('Enter');
}
async function threeReadings(page: Page): Promise<void> {
  await type(page, 'clutch.forward.700.hot', '25');
  await type(page, 'clutch.reverse.700.hot', '193 kPa');
  await type(page, 'clutch.high.700.hot', '57 psi', '203');
}
const printed = (page: Page) =>
  page.evaluate(() => {
    let count = 0;
    globalThis.print = () => (count += 1);
    return count;
  });

for (const [width, height] of [
  [390, 664],
  [1366, 768],
] as const) {
  test(`new job, three readings, what next, print: by keyboard at ${width} x ${height}, well under two minutes`, async ({
    page,
  }) => {
    await page.setViewportSize({ width, height });
    await open(page);
    const started = Date.now();
    await begin(page, 'Bay 3');
    await type(page, 'stopTime.drive.cold', '0.8 s');
    await expect(page.locator('.next-tests > ol > li').first()).toBeVisible();
    await threeReadings(page);
    await expect(readings(page)).toHaveCount(4);
    await expect(first(page)).toContainText('Split transfer seal');
    await expect(readings(page).nth(3)).toContainText('Split transfer seal rises from');
    await expect(page.locator('.job .live-text')).toContainText('First on the list now: Split');
    // What it comes to is in sight with the form: beside it, or in the bar under it.
    await expect(page.getByLabel('Test', { exact: true })).toBeInViewport();
    if (width === 390) {
      await expect(page.locator('.job-bar')).toContainText(
        /^First: Split transfer seal, over 99\s%No test left is worth its minutes\./,
      );
      await expect(page.locator('.job-bar')).toBeInViewport({ ratio: 1 });
    } else {
      await expect(page.locator('.job .live-text')).toBeInViewport();
      await expect(first(page)).toBeInViewport({ ratio: 1 });
    }
    await expect(page.locator('.job-open')).toContainText('Still in it');
    await printed(page);
    await page.getByRole('button', { name: 'Print both pages' }).focus();
    await page.keyboard.press('Enter');
    expect(Date.now() - started).toBeLessThan(120_000);
    const wide = await page.evaluate(() => document.documentElement.scrollWidth - innerWidth);
    expect(wide).toBeLessThanOrEqual(0);
    const small = await page
      .locator('#jobs :is(button, select, input:not([type=radio], [type=checkbox]), textarea)')
      .evaluateAll((all) =>
        all
          .filter((one) => one.checkVisibility() && one.getBoundingClientRect().height < 44)
          .map((one) => one.outerHTML.slice(0, 80)),
      );
    expect(small).toEqual([]);
  });
}

test('a job and what stands unfinished in its form come back after a reload', async ({ page }) => {
  await open(page);
  await begin(page, 'Blue wagon');
  await type(page, 'line.park.700.hot', '87');
  const select = page.getByLabel('Test', { exact: true });
  await select.selectOption('clutch.high.1500.cold');
  await page.getByLabel('It read').fill('about a hundr');
  await page.getByLabel('Notes on the job').fill('Slips in hills.');
  // At once: nothing waits for the moment of leaving.
  await page.reload();
  await sheetReady(page);
  await expect(readings(page)).toHaveCount(1);
  await expect(select).toHaveValue('clutch.high.1500.cold');
  await expect(page.getByLabel('It read')).toHaveValue('about a hundr');
  await expect(page.getByLabel('Notes on the job')).toHaveValue('Slips in hills.');
  await page
    .getByRole('button', { name: 'Take down', exact: false })
    .or(page.getByRole('button', { name: 'Add this reading' }))
    .first()
    .click();
  await expect(page.getByRole('alert').filter({ hasText: 'about a hundr' })).toContainText('psi');
  await expect(page.getByLabel('It read')).toHaveValue('about a hundr');
});

test('two tabs on one job do not overwrite each other', async ({ page, context }) => {
  await open(page);
  await begin(page, 'Blue wagon');
  const other = await context.newPage();
  await other.goto(page.url());
  await sheetReady(other);
  await page.getByLabel('Notes on the job').fill('from the first');
  await other.getByLabel('What was done').fill('from the second');
  await other.getByLabel('Test', { exact: true }).focus();
  await type(other, 'line.park.700.hot', '87');
  await expect(readings(page)).toHaveCount(1);
  await expect(page.getByLabel('What was done')).toHaveValue('from the second');
  await expect(other.getByLabel('Notes on the job')).toHaveValue('from the first');
  await other.close();
  await page.reload();
  await sheetReady(page);
  await expect(page.getByLabel('Notes on the job')).toHaveValue('from the first');
  await expect(page.getByLabel('What was done')).toHaveValue('from the second');
  await expect(readings(page)).toHaveCount(1);
});

for (const [width, height] of [
  [320, 568],
  [390, 664],
  [844, 390],
] as const) {
  test(`at ${width} x ${height} the bar under the form says cause and test, hides no field, and leads to all of it`, async ({
    page,
  }) => {
    await page.setViewportSize({ width, height });
    await open(page);
    await begin(page, 'Bay 3');
    const bar = page.locator('.job-bar');
    // Without a reading there is no cause to name.
    await expect(bar).toContainText(/^Next: /);
    await type(page, 'clutch.forward.700.hot', '25');
    await expect(bar).toContainText(/^First: .*, \d+\s%Next: .*See all$/);
    await expect(bar).toBeInViewport({ ratio: 1 });
    const target = await bar.getByRole('button').boundingBox();
    expect(target?.height).toBeGreaterThanOrEqual(48);
    expect((await bar.boundingBox())?.height).toBeLessThan(110);
    const form = page.locator('.next-form :is(input, select, button)');
    for (const field of await form.all()) {
      await page.evaluate(() => {
        (document.activeElement as HTMLElement).blur();
        scrollTo(0, 0);
      });
      await field.focus();
      const [own, over] = await Promise.all([field.boundingBox(), bar.boundingBox()]);
      expect((own?.y ?? 0) + (own?.height ?? 0)).toBeLessThanOrEqual(over?.y ?? 0);
    }
    await bar.getByRole('button').click();
    await expect(page.getByRole('region', { name: 'What the readings come to' })).toBeFocused();
    await expect(first(page)).toBeInViewport();
    await expect(bar).not.toBeInViewport();
    await page.emulateMedia({ media: 'print' });
    await expect(bar).toBeHidden();
  });
}

for (const [width, height] of [
  [1366, 768],
  [1920, 1080],
] as const) {
  test(`at ${width} x ${height} the result stays beside the form and the readings`, async ({
    page,
  }) => {
    await page.setViewportSize({ width, height });
    await open(page);
    await begin(page, 'Bay 3');
    await threeReadings(page);
    await expect(first(page)).toContainText('Split transfer seal');
    await expect(page.locator('.job-bar')).toBeHidden();
    const beside = async (what: Locator) => {
      await what.evaluate((one) => one.scrollIntoView({ block: 'center' }));
      await expect(what).toBeInViewport();
      await expect(first(page)).toBeInViewport({ ratio: 1 });
    };
    await beside(page.getByLabel('It read'));
    await beside(page.getByRole('button', { name: 'Add this reading' }));
    await beside(readings(page).nth(1));
  });
}

test('the complaint is kept, stands on both pages, and is found by the search', async ({
  page,
}) => {
  await open(page);
  await begin(page, 'Bay 4');
  await page.getByRole('button', { name: 'All jobs' }).click();
  await begin(page, 'Bay 3');
  const complaint = page.getByLabel('Complaint, in the customer’s words');
  await complaint.fill('Revs up in Drive,\nhot only.');
  await page.reload();
  await sheetReady(page);
  await expect(complaint).toHaveValue('Revs up in Drive,\nhot only.');
  for (const paper of ['.job-for-file', '.job-for-customer'])
    await expect(page.locator(paper)).toContainText('Revs up in Drive,');
  await page.getByRole('button', { name: 'All jobs' }).click();
  await page.getByLabel('Search labels and notes').fill('revs drive');
  await expect(page.locator('.kept-listed li')).toHaveCount(1);
  await page.getByRole('link', { name: 'Bay 3' }).click();
  // A job that is begun goes on with its readings.
  await expect(page.getByLabel('Test', { exact: true })).toBeFocused();
});

for (const [width, height] of [
  [390, 664],
  [844, 390],
] as const) {
  test(`jobs stand before the form for a new one, in the first screen of ${width} x ${height}`, async ({
    page,
  }) => {
    await page.setViewportSize({ width, height });
    await open(page);
    await expect(page.locator('.kept-listed')).toHaveCount(0);
    await begin(page, 'Blue wagon');
    await page.getByRole('button', { name: 'All jobs' }).click();
    await expect(page.getByRole('heading', { name: 'Jobs on this device' })).toBeFocused();
    await begin(page, 'Van, key 7');
    await page.goto(PAGE);
    await ready(page);
    await expect(page.getByRole('link', { name: 'Van, key 7' })).toBeInViewport({ ratio: 1 });
    await page.getByRole('button', { name: 'New job' }).click();
    await expect(page.getByLabel('Short label')).toBeFocused();
    await expect(page.getByRole('button', { name: 'Start the job' })).toBeInViewport({ ratio: 1 });
  });
}

test('who has jobs finds them where they will stand: nothing jumps when they come', async ({
  page,
}) => {
  await page.setViewportSize({ width: 390, height: 664 });
  for (const label of ['Blue wagon', 'White van']) {
    await open(page);
    await begin(page, label);
  }
  for (const address of [PAGE, page.url()]) {
    await page.goto('/sources/');
    await page.goto(address);
    await ready(page);
    expect(await shiftOf(page)).toBeLessThanOrEqual(0.01);
  }
});

test('each job that was deleted can come back, in any order, and the keys stay with the list', async ({
  page,
}) => {
  await open(page);
  for (const label of ['Blue wagon', 'Van, key 7', 'Bay 3']) {
    await begin(page, label);
    await page.getByRole('button', { name: 'All jobs' }).click();
  }
  for (const label of ['Blue wagon', 'Van, key 7', 'Bay 3'])
    await page.getByRole('button', { name: `Delete ${label}` }).click();
  await expect(page.locator('.kept-listed li')).toHaveCount(0);
  for (const label of ['Van, key 7', 'Blue wagon', 'Bay 3']) {
    await page
      .locator('.kept-undo p', { hasText: label })
      .getByRole('button', { name: 'Bring it back' })
      .click();
    await expect(page.getByRole('link', { name: label })).toBeVisible();
    await expect(page.getByRole('heading', { name: 'Jobs on this device' })).toBeFocused();
  }
  await expect(page.locator('.kept-undo')).toBeEmpty();
  await page.waitForTimeout(400);
  await page.reload();
  await ready(page);
  await expect(page.locator('.kept-listed li')).toHaveCount(3);
});

test('list, search, rename, delete and undo', async ({ page }) => {
  await open(page);
  await begin(page, 'Blue wagon');
  await page.getByRole('button', { name: 'All jobs' }).click();
  await begin(page, 'Van, key 7');
  await page.getByLabel('Label of this job').fill('Van, key 8');
  await page.goBack();
  await page.getByLabel('Search labels and notes').fill('key');
  await expect(page.locator('.kept-listed li')).toHaveCount(1);
  await expect(page.locator('.kept-listed')).toContainText('1 of 2 jobs');
  await page.getByRole('button', { name: 'Delete Van, key 8' }).click();
  await expect(page.locator('.kept-listed')).toContainText('Van, key 8 is deleted.');
  await page.getByRole('button', { name: 'Bring it back' }).click();
  await expect(page.getByRole('link', { name: 'Van, key 8' })).toBeVisible();
  await page.getByRole('button', { name: 'Delete Van, key 8' }).click();
  await page.reload();
  await ready(page);
  await expect(page.getByRole('link', { name: 'Blue wagon' })).toBeVisible();
  await expect(page.getByRole('link', { name: 'Van, key 8' })).toHaveCount(0);
});

test('an emptied label stays what it was until there is another, and that is said', async ({
  page,
}) => {
  await open(page);
  await begin(page, 'Van, key 7');
  const label = page.getByLabel('Label of this job');
  await label.fill('');
  await expect(page.locator('#job-label-wrong')).toContainText('it stays “Van, key 7”');
  await page.getByRole('button', { name: 'All jobs' }).click();
  await page.getByRole('link', { name: 'Van, key 7' }).click();
  await expect(label).toHaveValue('Van, key 7');
  await label.fill(' ');
  await label.fill('Van, key 8');
  await expect(page.locator('#job-label-wrong')).toHaveText('');
  await expect(page.getByRole('heading', { name: 'Van, key 8' })).toBeVisible();
});

test('a reading to be changed has its number under the thumb, one taken out can be put back', async ({
  page,
}) => {
  await page.setViewportSize({ width: 390, height: 664 });
  await open(page);
  await begin(page, 'Bay 3');
  await type(page, 'clutch.reverse.1500.hot', '87');
  await expect(readings(page)).toHaveCount(1);
  await page.getByRole('button', { name: 'Change: Clutch pressure' }).click();
  await expect(page.getByLabel('It read')).toBeFocused();
  await expect(page.getByLabel('It read')).toBeInViewport();
  await expect(page.locator('.next-chosen')).toHaveText(/^Clutch pressure, Reverse, .* hot$/);
  await expect(page.locator('.next-chosen')).toBeInViewport();
  await page.getByRole('button', { name: 'Leave it as it was' }).click();
  await page.getByRole('button', { name: 'Take out: Clutch pressure' }).click();
  await expect(readings(page)).toHaveCount(0);
  await expect(page.getByRole('button', { name: 'Put it back' })).toBeInViewport();
  await page.getByRole('button', { name: 'Put it back' }).click();
  await expect(readings(page)).toHaveCount(1);
  await expect(readings(page)).toContainText('87 psi');
});

test('a test in words of which nothing is chosen stays so over a reload', async ({ page }) => {
  await open(page);
  await begin(page, 'Bay 3');
  await page.getByLabel('Test', { exact: true }).selectOption('boreVacuum');
  await page.reload();
  await sheetReady(page);
  await page.getByRole('button', { name: 'Add this reading' }).click();
  await expect(page.locator('#next-test-seen-wrong')).toContainText('Choose what it showed');
  await expect(readings(page)).toHaveCount(0);
  await page.getByRole('radio', { name: 'Leaks' }).check({ force: true });
  await page.reload();
  await sheetReady(page);
  await expect(page.getByRole('radio', { name: 'Leaks' })).toBeChecked();
});

test('a foreign file is refused in a sentence, and an own one brings its jobs back', async ({
  page,
}) => {
  await open(page);
  await begin(page, 'Blue wagon');
  await page.getByRole('button', { name: 'All jobs' }).click();
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('button', { name: 'Save all jobs to a file' }).click(),
  ]);
  const saved = await download.path();
  const said = page.locator('#job-file-said');
  const choose = (name: string, text: string) =>
    page
      .getByLabel('Take jobs in from a file')
      .setInputFiles({ name, mimeType: 'application/json', buffer: Buffer.from(text) });
  await choose('letter.json', '{"jobs": []}');
  await expect(said).toContainText('letter.json does not hold job sheets');
  await choose('cut.json', '{"kind":"hot-clutch:jobs","jobs":[');
  await expect(said).toContainText('damaged or cut short');
  await expect(page.getByRole('link', { name: 'Blue wagon' })).toBeVisible();
  // Another device: an empty store takes the file in.
  await page.evaluate(
    () =>
      new Promise((done) => {
        const gone = indexedDB.deleteDatabase('hot-clutch:jobs');
        gone.onsuccess = done;
      }),
  );
  await page.reload();
  await ready(page);
  await expect(page.getByRole('link', { name: 'Blue wagon' })).toHaveCount(0);
  await page.getByLabel('Take jobs in from a file').setInputFiles(saved);
  await expect(said).toContainText('1 added, 0 brought up to date');
  await expect(page.getByRole('link', { name: 'Blue wagon' })).toBeVisible();
});

test('the wrong unit is asked about, and contradicting readings are named at both', async ({
  page,
}) => {
  await open(page);
  await page.locator('input[name=units][value=si]').check({ force: true });
  await begin(page, 'Bay 3');
  await type(page, 'line.park.700.hot', '87');
  await expect(page.getByRole('alert').filter({ hasText: 'Did you mean psi?' })).toBeVisible();
  await expect(page.getByLabel('It read')).toHaveValue('87');
  await page.getByRole('button', { name: '87 psi' }).click();
  await expect(readings(page).first()).toContainText('600 kPa');
  await page.getByLabel('Test', { exact: true }).focus();
  await type(page, 'line.park.700.hot', '200 kPa');
  const clashes = page.locator('.next-readings .field-error');
  await expect(clashes).toHaveCount(2);
  await expect(clashes.first()).toContainText('cannot both be right on one car');
  // And over the form, where the hand is.
  await expect(
    page.getByRole('alert').filter({ hasText: 'two tries at one test' }),
  ).toBeInViewport();
  await page.getByRole('button', { name: 'Take out: Line pressure' }).nth(1).click();
  await expect(clashes).toHaveCount(0);
});

test('before and after, in pairs; proof asks for the same temperature', async ({ page }) => {
  await open(page);
  await begin(page, 'Bay 3');
  await type(page, 'clutch.forward.700.hot', '25', '203');
  await expect(readings(page)).toHaveCount(1);
  await page.getByRole('radio', { name: 'After the repair' }).check({ force: true });
  await page.getByLabel('Test', { exact: true }).focus();
  await type(page, 'clutch.forward.700.hot', '57', '190');
  await expect(readings(page)).toHaveCount(2);
  const part = page.locator('.job-part').first();
  await expect(part).toContainText('Not proved yet');
  await expect(part).toContainText('Take it once more at the first temperature');
  await page.getByLabel('Test', { exact: true }).focus();
  await type(page, 'clutch.forward.700.hot', '57', '201');
  await expect(part).toContainText('Proved hot');
});

test('on paper: a page for the file and one for the customer', async ({ page }) => {
  await open(page);
  await begin(page, 'Bay 3, key 12');
  await type(page, 'clutch.forward.700.hot', '25', '203');
  await expect(readings(page)).toHaveCount(1);
  await page.getByLabel('What was done').fill('Transfer seal set replaced.');
  await page.getByLabel('Notes on the job').fill('Only for the file.');
  await page.getByRole('radio', { name: 'After the repair' }).check({ force: true });
  await page.getByLabel('Test', { exact: true }).focus();
  await type(page, 'clutch.forward.700.hot', '57', '203');
  await expect(readings(page)).toHaveCount(2);
  await expect(page.locator('.job-part').first()).toContainText('Proved hot');
  await expect(page.locator('.job-for-file')).not.toContainText(
    'before these readings were weighed',
  );
  const pdf = await page.pdf({ format: 'Letter', margin: { top: '15mm', bottom: '15mm' } });
  const file = test.info().outputPath('job.pdf');
  writeFileSync(file, pdf);
  const pages = execFileSync('pdftotext', ['-layout', file, '-'], { encoding: 'utf8' })
    .split('\f')
    .filter((text) => text.trim() !== '');
  expect(pages).toHaveLength(2);
  const [forFile = '', forCustomer = ''] = pages;
  expect(forFile).toContain('Bay 3, key 12');
  expect(forFile).toContain('Only for the file.');
  const today = new Intl.DateTimeFormat('en-US', { dateStyle: 'medium' }).format(Date.now());
  expect(forFile).toContain(`Before the repair, taken down ${today}`);
  expect(forFile).toContain('Split transfer seal');
  expect(forFile).toMatch(/Clutch pressure, Forward.*\s+25\s+psi/);
  expect(forCustomer).toContain('What we measured and what we did');
  expect(forCustomer).toContain('Transfer seal set replaced.');
  expect(forCustomer).not.toContain('Only for the file.');
  expect(forCustomer).not.toMatch(/posterior|probab|severity/i);
});

test('what is off after the repair is named and marked, and on paper stays with its row', async ({
  page,
}) => {
  test.slow();
  await open(page);
  await begin(page, 'Bay 3');
  await type(page, 'stopTime.drive.hot', '1.6 s');
  await expect(readings(page)).toHaveCount(1);
  await page.getByRole('radio', { name: 'After the repair' }).check({ force: true });
  for (const [n, value] of ['1.5 s', '0.72 s'].entries()) {
    await page.getByLabel('Test', { exact: true }).focus();
    await type(page, 'stopTime.drive.hot', value);
    await expect(readings(page)).toHaveCount(n + 2);
  }
  const pairs = page.locator('.job-part .job-pairs tbody');
  await expect(pairs).toHaveCount(2);
  await expect(pairs.first()).toContainText('1.50 s');
  await expect(pairs.first()).toContainText(/reads about 0\.\d\d.s there; this is 0\.\d\d.s more/);
  await expect(page.locator('.job-part').first()).toContainText(
    /not what a healthy car shows: Time until the turbine stops, Drive, hot: 1\.50.s/,
  );
  await expect(page.locator('.job-for-customer table strong')).toHaveText('not what it should be');
  // Nothing of it is hidden in a frame of its own.
  await page.setViewportSize({ width: 320, height: 640 });
  const hidden = await page
    .locator('.job-part > .table-scroll')
    .evaluate((one) => one.scrollHeight - one.clientHeight);
  expect(hidden).toBeLessThanOrEqual(0);
  // Pushed down line by line over the foot of the page.
  for (let lines = 1; lines < 13; lines += 1) {
    await page.getByLabel('What was done').fill(Array(lines).fill('Bolt.').join('\n'));
    const file = test.info().outputPath('pushed.pdf');
    writeFileSync(
      file,
      await page.pdf({ format: 'Letter', margin: { top: '15mm', bottom: '15mm' } }),
    );
    const sheets = execFileSync('pdftotext', ['-layout', file, '-'], { encoding: 'utf8' }).split(
      '\f',
    );
    const rows = sheets.map((one) => one.match(/hot\s+1\.60\s+s\s+(1\.50|0\.72)/g)?.length ?? 0);
    const verdicts = sheets.map((one) => one.match(/s on a healthy car[,.]/g)?.length ?? 0);
    expect(rows.reduce((sum, one) => sum + one, 0)).toBe(2);
    expect(verdicts, `${lines} lines`).toEqual(rows);
    const proof = sheets.findIndex((one) => one.includes('Not proved. After the repair'));
    expect(rows[proof], `${lines} lines`).toBeGreaterThan(0);
  }
});

test('readings of a log go into a job', async ({ page }) => {
  await page.goto('/measure/log/');
  await expect(page.locator('#log-reader')).toHaveAttribute('data-ready', 'true');
  await page.getByRole('button', { name: 'Slips in Drive' }).click();
  await page.getByRole('button', { name: 'Put these into a job' }).click();
  const status = page.locator('.log-into').getByRole('status');
  await expect(status).toContainText('stand in the job');
  // A second press makes no second job; another one is made on purpose, and has a name of its own.
  await page.getByRole('button', { name: 'Put these into a job' }).click();
  await expect(status).toContainText(/^Already in “Log of .*”\./);
  await page.getByRole('button', { name: 'Make another new job of them' }).click();
  await expect(page.getByRole('link', { name: /^Open “Log of .*, no\. 2”/ })).toBeVisible();
  // After a reload the page still knows, by the jobs themselves.
  await page.reload();
  await expect(page.locator('#log-reader')).toHaveAttribute('data-ready', 'true');
  await page.getByRole('button', { name: 'Slips in Drive' }).click();
  await expect(status).toContainText(/^Already in “Log of .*, no\. 2”\./);
  await page.getByRole('button', { name: 'Put these into a job' }).click();
  await expect(status).toContainText('Nothing was put in a second time');
  await expect(page.getByLabel('Which job').locator('option')).toHaveCount(3);
  await page.getByRole('link', { name: /^Open “Log of / }).click();
  await sheetReady(page);
  await expect(readings(page).first()).toContainText('Time until the turbine stops');
  await page.goto('/measure/jobs/');
  await expect(page.getByText(/^Log of /)).toHaveCount(2);
});

test('a job without a label has a name in the log page’s list of jobs', async ({ page }) => {
  await open(page);
  await begin(page, 'Bay 3');
  await page.evaluate(
    () =>
      new Promise((done) => {
        const asked = indexedDB.open('hot-clutch:jobs');
        asked.onsuccess = () => {
          const place = asked.result.transaction('jobs', 'readwrite').objectStore('jobs');
          const all = place.getAll() as IDBRequest<{ label: { value: string } }[]>;
          all.onsuccess = () => {
            for (const job of all.result) {
              job.label.value = '';
              place.put(job);
            }
          };
          place.transaction.oncomplete = done;
        };
      }),
  );
  await page.goto('/measure/log/');
  await expect(page.locator('#log-reader')).toHaveAttribute('data-ready', 'true');
  await page.getByRole('button', { name: 'Slips in Drive' }).click();
  await expect(page.locator('#log-job option').last()).toHaveText('No label');
});

test('storage that refuses is said at once, and work goes on', async ({ page }) => {
  await page.addInitScript(() => {
    IDBObjectStore.prototype.put = () => {
      throw new DOMException('no room', 'QuotaExceededError');
    };
  });
  await open(page);
  await begin(page, 'Bay 3');
  await expect(page.getByRole('alert').filter({ hasText: 'no room left' })).toBeVisible();
  await type(page, 'line.park.700.hot', '87');
  await expect(readings(page)).toHaveCount(1);
});

test('a label entered before the script has come is still there, and so is the page', async ({
  page,
}) => {
  await page.route('**/_astro/*.js', (route) => route.abort('aborted'));
  await page.goto('/measure/jobs/');
  await page.getByLabel('Short label').fill('Bay 3');
  await page.getByLabel('Short label').press('Enter');
  await expect(page.getByLabel('Short label')).toHaveValue('Bay 3');
  expect(new URL(page.url()).search).toBe('');
  await page.unrouteAll();
});

test('axe finds nothing in the list and in a job, light and dark; nothing scrolls sideways at 320 px', async ({
  page,
}) => {
  test.setTimeout(120_000);
  await open(page);
  const check = async (where: string) => {
    for (const colorScheme of ['light', 'dark'] as const) {
      await page.emulateMedia({ colorScheme });
      const { violations } = await axeOn(page, ENHANCED).analyze();
      expect(
        violations.map(({ id, nodes }) => [id, nodes[0]?.html]),
        `${where}, ${colorScheme}`,
      ).toEqual([]);
    }
  };
  await begin(page, 'Bay 3');
  await threeReadings(page);
  await page.getByRole('radio', { name: 'After the repair' }).check({ force: true });
  await page.getByLabel('Test', { exact: true }).focus();
  await type(page, 'clutch.forward.700.hot', '57', '203');
  await page.setViewportSize({ width: 320, height: 700 });
  const over = await page.evaluate(() => document.documentElement.scrollWidth - innerWidth);
  expect(over).toBeLessThanOrEqual(0);
  await check('a job');
  await page.getByRole('button', { name: 'All jobs' }).click();
  await expect(page.locator('.kept-listed li')).toHaveCount(1);
  await check('the list');
});
