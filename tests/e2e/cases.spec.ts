import type { Page } from '@playwright/test';
import { writtenCases } from '../../src/cases/written.ts';
import { expect, test } from './fixtures.ts';
import { BETWEEN, faultsOnPaper } from './on-paper.ts';

const LIST = '/practise/cases/';
const first = '/practise/case/?case=fine-cold-revs-hot';

async function bringIn(page: Page, address: string): Promise<void> {
  await page.goto(address);
  await expect(page.locator('.case-bar')).toBeVisible();
}

/** Does a test by touch: opens its group, the test, and presses. */
async function measure(page: Page, group: string, test: RegExp): Promise<void> {
  const fold = page.locator('details.case-fold', {
    has: page.locator('summary', { hasText: new RegExp(`^${group}$`) }),
  });
  if ((await fold.getAttribute('open')) === null) await fold.locator('summary').click();
  await fold.getByRole('button', { name: test }).click();
  await fold.getByRole('button', { name: 'Do this test' }).click();
}

test('every case stands in the list with what its customer says, before any script', async ({
  browser,
}) => {
  const context = await browser.newContext({ javaScriptEnabled: false });
  const page = await context.newPage();
  await page.goto(LIST);
  for (const { id, title, complaint } of writtenCases()) {
    const item = page.locator(`.case-index li:has([data-case="${id}"])`);
    await expect(item).toContainText(title);
    await expect(item).toContainText(complaint.slice(0, 40));
  }
  await page.goto(first);
  await expect(page.locator('noscript > p')).toBeVisible();
  await context.close();
});

test('on a phone: ask, measure, say what it is, and see both ways; the list remembers', async ({
  page,
}) => {
  await page.setViewportSize({ width: 390, height: 664 });
  await bringIn(page, first);
  await expect(page.locator('.case-says')).toContainText('In the morning it drives like new');
  await page.getByRole('button', { name: 'In which ranges?' }).click();
  await expect(page.locator('.case-bar')).toContainText('10 min');
  await measure(page, 'Line pressure', /Drive, 700 rpm, hot/);
  await measure(page, 'Clutch pressure', /Forward, 700 rpm, hot/);
  // The reading stands where it was asked for, on the dial and in figures.
  await expect(page.locator('.case-open .case-figure')).toBeInViewport({ ratio: 1 });
  await expect(page.locator('.case-open svg')).toBeInViewport();
  await measure(page, 'Clutch pressure', /Reverse, 700 rpm, hot/);
  await measure(page, 'Clutch pressure', /High, 700 rpm, hot/);
  await page.reload();
  const head = page.locator('.case-head');
  await expect(head.locator('ol.case-known li')).toHaveCount(4);
  await expect(head.locator('.case-said li')).toHaveText(/^In which ranges\? “.+”$/);

  await page.getByRole('link', { name: 'Say what it is' }).click();
  // What is known is a press away where the answer is given.
  const again = page.locator('.case-conclude .case-again');
  await expect(again.locator('summary')).toBeInViewport();
  await again.getByText('What you know (5)').click();
  await expect(again.locator('li')).toHaveCount(5);
  await page.getByRole('button', { name: 'Hand it in' }).click();
  await expect(page.getByRole('alert').filter({ hasText: 'Choose what is wrong' })).toBeVisible();
  await page.getByLabel('What is wrong').selectOption('transferSeal');
  await page.getByLabel('Transfer seal and bridge part').check();
  const handIn = page.getByRole('button', { name: 'Hand it in' });
  await handIn.scrollIntoViewIfNeeded();
  await expect(page.locator('.case-bar')).not.toBeInViewport();
  await handIn.click();
  await expect(page.locator('.case-bar')).toHaveCount(0);
  const outcome = page.locator('#case-outcome');
  await expect(outcome.getByRole('heading', { name: /^Solved, in \d+ minutes$/ })).toBeFocused();
  await expect(outcome).toContainText('Your readings had shown it.');
  await expect(outcome).toContainText('Your plan is what this car needs.');
  await expect(outcome).toContainText('Your answer and the real cause, Split transfer seal: from');
  await expect(outcome).toContainText('Your answer is the real cause: Split transfer seal ');
  await expect(
    outcome.getByRole('heading', { name: 'The planner’s way on this car' }),
  ).toBeVisible();

  await page.goto(LIST);
  const item = page.locator('.case-index li').filter({ hasText: 'Fine cold, revs up hot' });
  await expect(item).toContainText(/solved in \d+ min/);
});

test('what an answer lacks is said at its field, which comes into sight', async ({ page }) => {
  await page.setViewportSize({ width: 390, height: 664 });
  await bringIn(page, first);
  const handIn = page.getByRole('button', { name: 'Hand it in' });
  await handIn.click();
  const cause = page.getByLabel('What is wrong');
  await expect(cause).toBeFocused();
  await expect(cause).toBeInViewport();
  await expect(page.locator('#case-cause-0-wrong')).toContainText('Choose what is wrong first');
  await cause.selectOption('sealingRings');
  await expect(page.locator('#case-cause-0-wrong')).toBeEmpty();
  await handIn.click();
  await expect(page.locator('#case-cause-0-circuit')).toBeFocused();
  await expect(page.locator('#case-cause-0-circuit-wrong')).toContainText('Choose which');
  await page.locator('#case-cause-0-circuit').selectOption('forward');
  await handIn.click();
  await expect(page.locator('#case-repairs .field-error')).toContainText('at least one thing');
  await expect(page.locator('#case-repairs .field-error')).toBeInViewport();
});

test('a test that the planner names is one press away', async ({ page }) => {
  await page.setViewportSize({ width: 390, height: 664 });
  await bringIn(page, first);
  await page.getByRole('button', { name: 'What would the planner measure?' }).click();
  const named = page.locator('.case-hint p button').first();
  const name = (await named.textContent()) ?? '';
  await named.click();
  const there = page.locator('.case-test', { hasText: name });
  await expect(there).toBeFocused();
  await expect(there).toHaveAttribute('aria-expanded', 'true');
  await expect(page.getByRole('button', { name: 'Do this test' })).toBeVisible();
});

test('by keyboard alone: a case is measured, answered wrongly, and told so', async ({ page }) => {
  await bringIn(page, first);
  const question = page.getByRole('button', { name: 'Any warning lights?' });
  await question.focus();
  await page.keyboard.press('Enter');
  await expect(page.locator('.case-list')).not.toHaveCount(0);
  const summary = page.locator('details.case-fold summary', { hasText: /^Codes$/ });
  await summary.focus();
  await page.keyboard.press('Enter');
  await page.keyboard.press('Tab');
  await page.keyboard.press('Enter');
  await page.keyboard.press('Tab');
  await expect(page.getByRole('button', { name: 'Do this test' })).toBeFocused();
  await page.keyboard.press('Enter');
  await expect(page.locator('.case-test', { hasText: 'Stored ratio codes' })).toBeFocused();
  await expect(page.locator('.case-head ol.case-known li')).toHaveCount(1);
  await page.getByLabel('What is wrong').focus();
  await page.getByLabel('What is wrong').selectOption('pumpWear');
  await page.getByRole('checkbox', { name: 'Pump', exact: true }).focus();
  await page.keyboard.press('Space');
  await page.keyboard.press('Tab');
  await page.getByRole('button', { name: 'Hand it in' }).focus();
  await page.keyboard.press('Enter');
  const outcome = page.locator('#case-outcome');
  await expect(
    outcome.getByRole('heading', { name: /^Not the right cause\. You spent \d+ minutes\.$/ }),
  ).toBeFocused();
  await expect(outcome).toContainText('It was: Split transfer seal.');
  await expect(outcome).toContainText('went further than your readings');
  // Every reading says what it did to the answer and to the real cause, and so does the end.
  await expect(outcome.locator('.case-moves li').first()).toHaveText(
    /^Your answer, Worn pump: (from .+ to|stayed at) .+\.$/,
  );
  await expect(outcome.locator('.case-moves li').nth(1)).toHaveText(
    /^The real cause, Split transfer seal: (from .+ to|stayed at) .+\.$/,
  );
  await expect(outcome).toContainText(
    /Your answer: Worn pump .+\. The real cause: Split transfer seal .+\./,
  );
  await expect(outcome).toContainText('hours of labor');
  // Printed for the folder of an apprentice, on Letter and on A4.
  for (const between of Object.values(BETWEEN))
    expect(await faultsOnPaper(page, between)).toEqual([]);
  await expect(
    outcome.getByRole('heading', { name: /^Not the right cause\. You spent \d+ minutes\.$/ }),
  ).toBeVisible();
});

test('a test that can hurt says so before it is done', async ({ page }) => {
  await bringIn(page, first);
  await page.locator('details.case-fold summary', { hasText: /^Clutch pressure$/ }).click();
  await page.getByRole('button', { name: /Clutch pressure, Forward, 1500 rpm, hot/ }).click();
  const open = page.locator('.case-open');
  await expect(open.locator('.before-test')).toContainText('five seconds at most');
  await expect(open.getByRole('button', { name: 'Do this test' })).toBeVisible();
});

test('a finished test shows what it read in its row, closed or open', async ({ page }) => {
  await page.setViewportSize({ width: 390, height: 664 });
  await bringIn(page, first);
  await measure(page, 'Line pressure', /Drive, 700 rpm, hot/);
  const row = page.locator('.case-test', { hasText: 'Line pressure, Drive, 700 rpm, hot' });
  const read = await page.locator('.case-open .case-figure').textContent();
  const figure = /[\d.]+\u00a0(psi|kPa)$/u.exec(read ?? '')?.[0] ?? 'nothing was read';
  await row.click();
  await expect(row).toContainText(figure);
  await expect(page.locator('.case-measure')).toContainText(/In place now: gauge on the line\./);
});

test('a look is a row like a test: its caution when it is open, then what was seen', async ({
  page,
}) => {
  await page.setViewportSize({ width: 390, height: 664 });
  await bringIn(page, first);
  const looks = page.locator('.case-looks');
  await looks.locator('summary').click();
  await expect(looks.locator('.before-test')).toHaveCount(0);
  await looks.getByRole('button', { name: /^Idle speed, warm, in Park/ }).click();
  await expect(looks.locator('.before-test')).toHaveText(/Chock the wheels/);
  await looks.getByRole('button', { name: 'Do this check: Idle speed, warm, in Park' }).click();
  const found = looks.locator('.case-found');
  await expect(found).toBeFocused();
  await expect(found).toContainText('Idle is where it should be.');
  await expect(page.locator('.case-head ol.case-known')).toContainText('Idle speed');
});

test('a car drawn by number is the same for whoever opens the link', async ({ page, context }) => {
  await page.goto(LIST);
  await page.getByLabel(/^Number, 1 to/).fill('4711');
  await page.getByText('Perhaps two faults').click();
  await page.getByText('The second training transmission').click();
  await page.getByRole('button', { name: 'Bring it in' }).click();
  await expect(page.locator('.case-says')).not.toHaveCount(0);
  const complaint = await page.locator('.case-says blockquote').textContent();
  const other = await context.newPage();
  await other.goto('/practise/case/?number=4711&level=3&on=second');
  await expect(other.locator('.case-says blockquote')).toHaveText(complaint ?? '');
  await expect(other.locator('.case-head')).toContainText('the reverse and the high clutch');
});

test('a link that names no car says what is allowed', async ({ page }) => {
  await page.goto('/practise/case/?case=no-such-page');
  await expect(page.getByRole('alert')).toContainText('There is no case “no-such-page”');
  await page.goto('/practise/case/?number=123456&level=1&on=training');
  await expect(page.getByRole('alert')).toContainText('a number from 1 to 99999');
  await page.goto('/practise/case/');
  await expect(page.getByRole('alert')).toContainText('No car is in the bay');
  await page.locator('#case').getByRole('link', { name: 'All cases' }).click();
  await expect(page).toHaveURL(/\/practise\/cases\/$/);
});
