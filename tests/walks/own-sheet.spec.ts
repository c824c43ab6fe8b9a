import { readFileSync } from 'node:fs';
import type { Page } from '@playwright/test';
import { keptSecondTable } from '../../src/diagnosis/kept-second-table.ts';
import { axeOn, ENHANCED } from '../e2e/axe.ts';
import { expect, test } from '../e2e/fixtures.ts';

const PAGE = '/measure/transmission/';
const ready = (page: Page) =>
  expect(page.locator('#own-sheets')).toHaveAttribute('data-ready', 'true');
const whose = (page: Page, path: string) => page.locator(`#sheet-${path}-whose`);
const wrong = (page: Page, path: string) => page.locator(`#sheet-${path}-wrong`);

/** A new sheet, by keyboard; the keys are at its first number then. */
async function begin(page: Page, name: string): Promise<void> {
  await page.goto(PAGE);
  await ready(page);
  await page.getByLabel('Name of the sheet').focus();
  await page.keyboard.type(name);
  await page.keyboard.press('Enter');
  await expect(page.getByLabel('First gear ratio')).toBeFocused();
}

test('a sheet is entered by keyboard, refuses an impossible number there, and survives a reload', async ({
  page,
}) => {
  await begin(page, 'Shop van');
  await page.keyboard.type('3.9');
  await expect(whose(page, 'ratios-first')).toHaveText('yours');
  await page.keyboard.press('Tab');
  await page.keyboard.type('forty');
  await expect(wrong(page, 'ratios-reverse')).toContainText('does not start with a number');
  await expect(page.locator('.sheet-counted .field-error')).toContainText('One field below');
  await page.keyboard.press('Control+a');
  await page.keyboard.type('40');
  await expect(wrong(page, 'ratios-reverse')).toContainText('0.5 to 10');
  await page.keyboard.press('Control+a');
  await page.keyboard.type('3.2');
  await expect(wrong(page, 'ratios-reverse')).toBeEmpty();
  await expect(page.locator('.sheet-counted')).toContainText('2 of 72 are yours');
  // What the model makes of it, from the worker.
  await expect(page.locator('.sheet-sound')).toHaveAttribute('data-state', 'sound');
  await expect(page.locator('.sheet-sound')).toContainText('From your numbers: 2 typed');
  await expect(page.locator('.sheet-sound table').first()).toContainText('87 psi of 87 psi');
  await page.reload();
  await ready(page);
  await expect(page.getByLabel('First gear ratio')).toHaveValue('3.9');
  await expect(page.getByLabel('Reverse gear ratio')).toHaveValue('3.2');
  await expect(whose(page, 'ratios-third')).toContainText('assumed: 1.5');
  expect((await axeOn(page, ENHANCED).analyze()).violations).toEqual([]);
});

test('a maker’s range is named as one, its middle is a press away, and until then the number is nobody’s', async ({
  page,
}) => {
  await begin(page, 'Van');
  const line = page.getByLabel('Line pressure, idle');
  await line.fill('85–95');
  await expect(wrong(page, 'commands-idleLine_kPa')).toHaveText(
    '“85–95” is a range, and one number is asked for here. Its middle is 90.',
  );
  await expect(whose(page, 'commands-idleLine_kPa')).toHaveText('not taken yet');
  await expect(page.locator('.sheet-counted')).toContainText('0 of 72 are yours, 71 are assumed');
  const sound = page.locator('.sheet-sound');
  await expect(sound).toContainText('Nothing is worked out: Line pressure, idle needs a number.');
  await sound.getByRole('button', { name: 'Mend it: Line pressure, idle' }).press('Enter');
  await expect(line).toBeFocused();
  await page.getByRole('button', { name: 'Use 90' }).press('Enter');
  await expect(line).toHaveValue('90');
  await expect(line).toBeFocused();
  await expect(whose(page, 'commands-idleLine_kPa')).toHaveText('yours');
  await expect(page.locator('.sheet-counted')).toContainText('1 of 72 are yours, 71 are assumed');
  await expect(sound).toHaveAttribute('data-state', 'sound');
});

test('numbers that do not go together are said at the field, with a way there', async ({
  page,
}) => {
  await begin(page, 'Van');
  await page.getByLabel('Clutch pressure, idle').fill('100 psi');
  await expect(wrong(page, 'commands-idleClutch_kPa')).toContainText(
    'cannot have more than the line',
  );
  const chart = page.getByRole('group', { name: 'Second' });
  await chart.getByLabel('forward').uncheck();
  await expect(chart).toContainText('No clutch is on in this range');
  await page.getByRole('button', { name: 'Go to: Second' }).click();
  await expect(chart.getByLabel('forward')).toBeFocused();
  await page.getByRole('button', { name: 'Back to assumed: Second' }).click();
  await expect(chart).not.toContainText('No clutch');
  await expect(page.getByRole('heading', { name: 'What the model makes of it' })).toBeVisible();
  await expect(page.locator('.sheet-sound')).toContainText(
    'Nothing is worked out: Clutch pressure, idle cannot be right.',
  );
});

test('delete with undo, to a file and back, and foreign files are refused', async ({ page }) => {
  await begin(page, 'Van');
  await page.keyboard.type('3.9');
  await page.getByRole('button', { name: 'All sheets' }).click();
  const saved = page.waitForEvent('download');
  await page.getByRole('button', { name: 'Save all sheets to a file' }).click();
  const path = await (await saved).path();
  await page.getByRole('button', { name: 'Delete Van' }).click();
  await expect(page.locator('.kept-listed')).toContainText('None yet');
  await page.getByRole('button', { name: 'Bring it back' }).click();
  await expect(page.getByRole('link', { name: 'Van' })).toBeVisible();
  const file = page.getByLabel('Take sheets in from a file');
  await file.setInputFiles({
    name: 'letter.json',
    mimeType: 'application/json',
    buffer: Buffer.from('{"dear": "sir"}'),
  });
  await expect(page.locator('#sheet-file-said')).toContainText('does not hold transmission sheets');
  const other = await page.context().browser()?.newContext();
  const fresh = await other?.newPage();
  if (!fresh) throw new Error('no second device');
  await fresh.goto(new URL(PAGE, page.url()).href);
  await ready(fresh);
  await fresh.getByLabel('Take sheets in from a file').setInputFiles(path);
  await expect(fresh.locator('#sheet-file-said')).toContainText('1 added');
  await fresh.getByRole('link', { name: 'Van' }).click();
  await expect(fresh.getByLabel('First gear ratio')).toHaveValue('3.9');
  await other?.close();
});

test('the table is made away from the page, told of, and can be cancelled', async ({ page }) => {
  test.slow();
  await begin(page, 'Van');
  await page.keyboard.type('3.9');
  const planner = page.locator('.sheet-planner');
  await planner.getByRole('button', { name: 'Make the table' }).click();
  // A hundredth of it, by the worker itself.
  await expect(planner.locator('progress')).not.toHaveAttribute('value', '0', { timeout: 60_000 });
  await planner.getByRole('button', { name: 'Cancel' }).click();
  await expect(planner).toContainText('You stopped it');
  await expect(planner.getByRole('button', { name: 'Make the table' })).toBeVisible();
});

/** A sheet with one number of its own, and then a job. */
async function beginJobBesideSheet(page: Page): Promise<void> {
  await begin(page, 'Shop van');
  await page.keyboard.type('3.9');
  await expect(page.locator('.sheet-counted')).toContainText('1 of 72');
  await page.waitForTimeout(500);
  await page.goto('/measure/jobs/');
  await expect(page.locator('#jobs')).toHaveAttribute('data-ready', 'true');
  await page.getByLabel('Short label').fill('Bay 3');
  await page.keyboard.press('Enter');
}

test('a job is on a sheet of one’s own, and says so', async ({ page }) => {
  // The worker’s place is taken by one that has a table at hand: what is tried here is the way of a table, not its minute.
  await page.route(/\/worker-[^/]*\.js$/, (route) =>
    route.fulfill({
      contentType: 'text/javascript',
      body: `addEventListener('message', () => postMessage({ kind: 'table', text: '${keptSecondTable}' }));`,
    }),
  );
  await beginJobBesideSheet(page);
  const choice = page.locator('#own-which');
  await expect(choice).toHaveValue('training');
  await expect(page.locator('.next-causes')).not.toContainText('From your numbers');
  await choice.selectOption({ label: 'Shop van' });
  await expect(page.locator('.own-choice')).toContainText('no table of this sheet yet');
  await expect(page.locator('.next-causes')).toHaveCount(0);
  await page.getByRole('button', { name: 'Make the table' }).click();
  await expect(page.locator('.next-causes')).toContainText(
    'From your numbers: “Shop van”, 1 typed and 71 assumed.',
  );
  await expect(page.locator('.next-tests')).toContainText('From your numbers');
  await page.reload();
  await expect(page.locator('#own-which')).not.toHaveValue('training');
  await expect(page.locator('.next-causes')).toContainText('From your numbers');
  // The planner’s page knows the sheet as well, and its table is there already.
  await page.goto('/measure/');
  await page.locator('#next-test').scrollIntoViewIfNeeded();
  await page.locator('#own-which').selectOption({ label: 'Shop van' });
  await expect(page.locator('.next-causes')).toContainText('From your numbers');
  await page.locator('#own-which').selectOption('second');
  await expect(page.locator('.next-causes')).not.toContainText('From your numbers');
});

test('without a table of its sheet a job claims nothing of its readings, on the page or on paper', async ({
  page,
}) => {
  await beginJobBesideSheet(page);
  const read = async (text: string) => {
    await page.getByLabel('Test', { exact: true }).selectOption('stopTime.drive.hot');
    await page.getByLabel('It read').fill(text);
    await page.keyboard.press('Enter');
  };
  const readings = page.locator('.next-readings ol > li');
  await read('1.6 s');
  await expect(readings).toHaveCount(1);
  await page.getByRole('radio', { name: 'After the repair' }).check({ force: true });
  await read('0.72 s');
  await expect(readings).toHaveCount(2);
  const repair = page.locator('.job-part').first();
  await expect(repair).toContainText('Not proved yet: it reads right now');
  const printing = page.locator('#job-print-why');
  await expect(printing).toBeEmpty();
  const customer = page.locator('.job-for-customer');
  await expect(customer).toContainText('from a training transmission that was made up');
  const job = page.url();
  const saysOnly = async (why: string) => {
    for (const where of [repair, printing, page.locator('.job-for-file')]) {
      await expect(where).toContainText(why);
      await expect(where).not.toContainText('Not proved');
    }
    await expect(customer).toContainText('have not been compared with what they should be');
    await expect(customer).not.toContainText('before and after');
    await expect(customer).not.toContainText('training transmission');
  };
  await page.locator('#own-which').selectOption({ label: 'Shop van' });
  await saysOnly('Not judged: this sheet has no table yet. Make the table first.');
  expect((await axeOn(page, ENHANCED).analyze()).violations).toEqual([]);
  // An impossible number on it, in its own place.
  await page.goto(PAGE);
  await ready(page);
  await page.getByRole('link', { name: 'Shop van' }).click();
  await page.getByLabel('First gear ratio').fill('400');
  await expect(wrong(page, 'ratios-first')).not.toBeEmpty();
  await page.waitForTimeout(500);
  await page.goto(job);
  await saysOnly('Not judged: something on this sheet cannot be right.');
  // And gone.
  await page.goto(PAGE);
  await ready(page);
  await page.getByRole('button', { name: 'Delete Shop van' }).click();
  await page.waitForTimeout(500);
  await page.goto(job);
  await saysOnly('Not judged: the sheet that this job is on is not on this device');
});

test('the whole car runs on a sheet of one’s own when everything is open', async ({ page }) => {
  await begin(page, 'Shop van');
  await page.getByLabel('Idle speed').fill('820');
  await page.waitForTimeout(500);
  await page.goto('/whole-car/');
  const sim = page.locator('section.sim');
  await sim.scrollIntoViewIfNeeded();
  await expect(sim).toHaveAttribute('data-ready', 'true');
  await page.getByRole('button', { name: 'Your controls' }).click();
  await page.getByRole('button', { name: 'Look for your sheets' }).click();
  await page.getByLabel('Both cars are built from').selectOption({ label: 'Shop van' });
  await expect(sim.locator('.live-text').first()).toContainText('From your numbers: “Shop van”');
  await page.getByRole('button', { name: 'Predict' }).first().click();
  await expect(sim).not.toContainText('From your numbers');
});

test('a job’s file takes the sheet that it runs on to another device', async ({
  page,
  browser,
}) => {
  await beginJobBesideSheet(page);
  await page.locator('#own-which').selectOption({ label: 'Shop van' });
  await page.getByRole('button', { name: 'All jobs' }).click();
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('button', { name: 'Save all jobs to a file' }).click(),
  ]);
  const path = await download.path();
  const text = readFileSync(path, 'utf8');

  const context = await browser.newContext();
  const other = await context.newPage();
  await other.goto('/measure/jobs/');
  await expect(other.locator('#jobs')).toHaveAttribute('data-ready', 'true');
  const field = other.getByLabel('Take jobs in from a file');
  const said = other.locator('#job-file-said');
  const choose = (name: string, content: string) =>
    field.setInputFiles({ name, mimeType: 'application/json', buffer: Buffer.from(content) });
  await choose('damaged.json', text.replace('"fields"', '"felds"'));
  await expect(said).toContainText('One transmission sheet in that file is damaged');
  await other.getByRole('link', { name: 'Bay 3' }).click();
  await expect(other.locator('.own-choice')).toContainText('is not on this device');
  await other.getByRole('button', { name: 'All jobs' }).click();
  await field.setInputFiles(path);
  await expect(said).toContainText('The transmission sheet that a job runs on came along.');
  // Once more: nothing is doubled.
  await choose('again.json', text);
  await expect(said).toContainText('0 added, 0 brought up to date');
  await expect(said).not.toContainText('came along');
  await other.getByRole('link', { name: 'Bay 3' }).click();
  await expect(other.locator('#own-which option', { hasText: 'Shop van' })).toHaveCount(1);
  await expect(other.locator('#own-which option:checked')).toHaveText('Shop van');
  // Another sheet of that name stays beside it.
  await other.getByRole('button', { name: 'All jobs' }).click();
  const sheet =
    (JSON.parse(text) as { transmissions: { id: string }[] }).transmissions[0]?.id ?? '';
  await choose('other.json', text.replaceAll(sheet, 'another-one').replace('"3.9"', '"4.1"'));
  await expect(said).toContainText('A different sheet named “Shop van” was here already.');
  await context.close();
});
