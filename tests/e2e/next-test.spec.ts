import type { Page } from '@playwright/test';
import { expect, test } from './fixtures.ts';

async function open(page: Page): Promise<void> {
  await page.goto('/measure/');
  await page.locator('#next-test').scrollIntoViewIfNeeded();
  await expect(page.locator('#next-test')).toHaveAttribute('data-ready', 'true');
}

/** Chooses a test and types what it read, by keyboard. */
async function type(page: Page, test: string, text: string): Promise<void> {
  const select = page.getByLabel('Test', { exact: true });
  await select.focus();
  await select.selectOption(test);
  await page.keyboard.press('Tab');
  await expect(page.getByLabel('It read')).toBeFocused();
  await page.keyboard.type(text);
  await page.keyboard.press('Enter');
}

const first = (page: Page) => page.locator('.next-causes li').first();

test('three readings by keyboard name the seal, in either unit, and a reload keeps them', async ({
  page,
}) => {
  await page.setViewportSize({ width: 390, height: 664 });
  await open(page);
  await expect(page.locator('.next-tests li')).not.toHaveCount(0);
  await type(page, 'clutch.forward.700.hot', '25');
  await type(page, 'clutch.reverse.700.hot', '193 kPa');
  await type(page, 'clutch.high.700.hot', '57 psi');
  await expect(page.locator('.next-readings li')).toHaveCount(3);
  await expect(first(page)).toContainText('Split transfer seal');
  await expect(page.locator('.next-causes')).toContainText('Enough to stop asking');
  await page.reload();
  await expect(first(page)).toContainText('Split transfer seal');
  // Taken out, it is no longer weighed.
  await page.getByRole('button', { name: 'Start over' }).click();
  await expect(page.locator('.next-readings li')).toHaveCount(0);
  await expect(first(page)).toContainText('not in this list');
});

test('on a phone a press on Add is answered in sight of it, and two readings that contradict are named', async ({
  page,
}) => {
  await page.setViewportSize({ width: 390, height: 664 });
  await open(page);
  const add = page.getByRole('button', { name: 'Add this reading' });
  const now = page.locator('.next-test .live-text');
  await page.getByLabel('Test', { exact: true }).selectOption('clutch.forward.700.hot');
  await page.getByLabel('It read').fill('25');
  await add.click();
  await expect(now).toContainText('First on the list now');
  await expect(now).toContainText('Measure next');
  await expect(now).toBeInViewport();
  await expect(add).toBeInViewport();
  const clash = page.getByRole('alert').filter({ hasText: 'cannot both be right' });
  await expect(clash).toHaveCount(0);
  // The same line, hot, in the same range, at one time healthy and at one time nearly gone.
  await type(page, 'line.park.700.hot', '600 kPa');
  await type(page, 'line.park.700.hot', '200 kPa');
  await expect(clash).toContainText('Line pressure, Park, 700 rpm, hot: 29 psi');
  await page.getByRole('button', { name: 'Take out' }).last().click();
  await expect(clash).toHaveCount(0);
});

test('what cannot be read says what is allowed, and stays in the field', async ({ page }) => {
  await open(page);
  await type(page, 'line.park.700.hot', 'much');
  await expect(page.getByRole('alert').filter({ hasText: 'much' })).toContainText('psi');
  await expect(page.getByLabel('It read')).toHaveValue('much');
  await expect(page.locator('.next-readings li')).toHaveCount(0);
});

test('a test that can hurt stands with its caution, and leads back to the number of the form', async ({
  page,
}) => {
  await open(page);
  await type(page, 'stopTime.drive.cold', '0.8 s');
  const proposals = page.locator('.next-tests > ol > li');
  await expect(proposals).not.toHaveCount(0);
  const gauge = proposals.filter({ hasText: 'Chock the wheels' }).first();
  await expect(gauge).toBeVisible();
  await page.setViewportSize({ width: 390, height: 664 });
  const name = (await gauge.locator('strong').textContent()) ?? '';
  await gauge.getByRole('button', { name: 'I have done this one' }).click();
  // On a phone, where a select cuts the name of its test: the number, and the name in full.
  await expect(page.getByLabel('It read')).toBeFocused();
  await expect(page.getByLabel('It read')).toBeInViewport();
  await expect(page.locator('.next-chosen')).toHaveText(name);
  await expect(page.locator('.next-chosen')).toBeInViewport();
});

test('a test in words waits for somebody to have looked', async ({ page }) => {
  await open(page);
  const add = page.getByRole('button', { name: 'Add this reading' });
  const wrong = page.locator('#next-test-seen-wrong');
  await add.click();
  await expect(wrong).toContainText('None of these');
  await page.getByLabel('Test', { exact: true }).selectOption('fluidLevel');
  await expect(wrong).toHaveText('');
  await add.click();
  await expect(wrong).toContainText('Choose what it showed');
  await expect(page.getByRole('radio', { name: 'Full' })).toBeFocused();
  await expect(page.locator('.next-readings li')).toHaveCount(0);
  await page.getByRole('radio', { name: 'Very low' }).check({ force: true });
  await expect(wrong).toHaveText('');
  await add.click();
  await expect(page.locator('.next-readings li')).toContainText('Very low');
  await page.getByLabel('Test', { exact: true }).selectOption('codes');
  await page.getByLabel('P0731').check({ force: true });
  await page.getByLabel('None of these').check({ force: true });
  await expect(page.getByLabel('P0731')).not.toBeChecked();
  await add.click();
  await expect(page.locator('.next-readings li').last()).toContainText('Stored ratio codes: none');
});

test('what was typed stays where another test reads alike, and is asked about where it does not fit', async ({
  page,
}) => {
  await open(page);
  const select = page.getByLabel('Test', { exact: true });
  await select.selectOption('clutch.forward.1500.cold');
  await page.getByLabel('It read').fill('57');
  await page.locator('#next-test-temperature').fill('70 °F');
  await select.focus();
  await select.selectOption('clutch.forward.1500.hot');
  await expect(page.getByLabel('It read')).toHaveValue('57');
  await expect(page.locator('#next-test-temperature')).toHaveValue('70 °F');
  await expect(page.locator('#next-test-temperature-wrong')).toContainText('hot is 185');
  await expect(select).toBeFocused();
});

test('a reading that was taken out can be put back, and so can all', async ({ page }) => {
  await open(page);
  await type(page, 'clutch.forward.700.hot', '25');
  await type(page, 'stopTime.drive.hot', '0.5');
  await type(page, 'stopTime.drive.hot', '5');
  const lines = page.locator('.next-readings li');
  await expect(page.getByRole('alert').filter({ hasText: 'two tries at one test' })).toBeVisible();
  await page.getByRole('button', { name: 'Take out' }).first().click();
  await expect(page.locator('.next-put-back')).toContainText('Taken out: Clutch pressure, Forward');
  await expect(page.getByRole('heading', { name: 'Your readings' })).toBeFocused();
  await page.getByRole('button', { name: 'Put it back' }).click();
  await expect(lines).toHaveCount(3);
  await expect(lines.first()).toContainText('Clutch pressure, Forward');
  await page.getByRole('button', { name: 'Start over' }).click();
  await expect(lines).toHaveCount(0);
  await page.getByRole('button', { name: 'Put it back' }).click();
  await expect(lines).toHaveCount(3);
});

test('a test picked by hand stands with its caution too', async ({ page }) => {
  await open(page);
  const caution = page.locator('.next-form .before-test');
  await page.getByLabel('Test', { exact: true }).selectOption('codes');
  await expect(caution).toHaveCount(0);
  await page.getByLabel('Test', { exact: true }).selectOption('takeoffSlip.drive.hot');
  await expect(caution).toContainText('Drive on a clear lane only');
  await page.getByLabel('Test', { exact: true }).selectOption('line.reverse.700.hot');
  await expect(caution).toContainText('Chock the wheels');
});

test('where no worker can be had the page weighs the readings itself', async ({
  page,
  trouble,
}) => {
  await page.route('**/think-worker-*.js', (route) => route.abort());
  await open(page);
  await type(page, 'clutch.forward.700.hot', '25');
  await type(page, 'clutch.reverse.700.hot', '193 kPa');
  await type(page, 'clutch.high.700.hot', '57 psi');
  await expect(first(page)).toContainText('Split transfer seal');
  await expect(page.locator('.next-tests')).not.toContainText('Working out');
  // The browser tells of the script that did not come.
  trouble.length = 0;
});

test('a number typed before the planner knows its units waits for it, and is not lost', async ({
  page,
}) => {
  let go: () => void = () => undefined;
  const held = new Promise<void>((done) => (go = done));
  await page.route('**/think-worker-*.js', async (route) => {
    await held;
    await route.continue();
  });
  await page.goto('/measure/');
  await page.locator('#next-test').scrollIntoViewIfNeeded();
  await expect(page.locator('#next-test')).toHaveAttribute('data-ready', 'true');
  await page.locator('input[name=units][value=si]').check({ force: true });
  await type(page, 'line.park.700.hot', '87');
  await expect(page.getByLabel('It read')).toHaveValue('87');
  await expect(page.locator('.next-readings li')).toHaveCount(0);
  go();
  await expect(page.getByRole('alert').filter({ hasText: 'Did you mean psi?' })).toBeVisible();
  await page.getByRole('button', { name: '87 psi' }).click();
  await expect(page.locator('.next-readings li').first()).toContainText('600 kPa');
});

test('on a sheet without a table it says what is missing, and leads there', async ({ page }) => {
  await page.goto('/measure/transmission/');
  await expect(page.locator('#own-sheets')).toHaveAttribute('data-ready', 'true');
  await page.getByLabel('Name of the sheet').fill('Shop van');
  await page.keyboard.press('Enter');
  await page.getByLabel('First gear ratio').fill('3.9');
  await expect(page.locator('.sheet-counted')).toContainText('1 of 72');
  await page.waitForTimeout(500);
  await page.setViewportSize({ width: 390, height: 664 });
  await open(page);
  await expect(page.locator('.next-causes')).toBeVisible();
  await expect(page.locator('.next-readings')).toContainText('Take the first test below');
  const why = page.locator('.own-no-list');
  await expect(why).toHaveCount(0);
  await page.locator('#own-which').selectOption({ label: 'Shop van' });
  await expect(why).toContainText('the planner has no table of “Shop van”');
  await expect(page.locator('#next-test')).not.toContainText('The planner is loading');
  await expect(page.locator('#next-test')).not.toContainText('Take the first test below');
  // A press on Add is answered where it was pressed.
  await type(page, 'line.park.700.hot', '60');
  await expect(page.locator('.next-readings li')).toHaveCount(1);
  await expect(why).toBeInViewport();
  await why.getByRole('link', { name: 'Open this sheet' }).click();
  await expect(page.getByLabel('First gear ratio')).toHaveValue('3.9');
  // An impossible number on it.
  await page.getByLabel('First gear ratio').fill('400');
  await page.waitForTimeout(500);
  await page.goBack();
  await page.locator('#next-test').scrollIntoViewIfNeeded();
  await expect(why).toContainText('something on the sheet “Shop van” cannot be right');
  await expect(page.locator('.next-readings li')).toHaveCount(1);
});

test('who makes a table by keyboard keeps the keys where the button was', async ({ page }) => {
  await page.goto('/measure/transmission/');
  await expect(page.locator('#own-sheets')).toHaveAttribute('data-ready', 'true');
  await page.getByLabel('Name of the sheet').fill('Shop van');
  await page.keyboard.press('Enter');
  await page.getByLabel('First gear ratio').fill('3.9');
  await page.waitForTimeout(500);
  await open(page);
  await page.locator('#own-which').selectOption({ label: 'Shop van' });
  await page.getByRole('button', { name: 'Make the table' }).press('Enter');
  await expect(page.getByRole('progressbar')).toBeVisible();
  const standing = page.locator('.own-standing');
  await expect(standing).toBeFocused();
  await page.keyboard.press('Tab');
  await expect(page.getByRole('button', { name: 'Cancel' })).toBeFocused();
  await page.keyboard.press('Enter');
  await expect(standing).toContainText('You stopped it');
  await expect(standing).toBeFocused();
  await page.keyboard.press('Tab');
  await expect(page.getByRole('button', { name: 'Make the table' })).toBeFocused();
});

test('a range is asked for one number, and its middle is a press away, in sight on a phone', async ({
  page,
}) => {
  await page.setViewportSize({ width: 390, height: 664 });
  await open(page);
  await type(page, 'line.park.700.hot', '85-89');
  await expect(page.getByRole('alert').filter({ hasText: 'is a range' })).toBeVisible();
  await expect(page.getByLabel('It read')).toHaveValue('85-89');
  const middle = page.getByRole('button', { name: '87', exact: true });
  await expect(middle).toBeInViewport({ ratio: 1 });
  await middle.click();
  await expect(page.locator('.next-readings li')).toContainText('87 psi');
});
