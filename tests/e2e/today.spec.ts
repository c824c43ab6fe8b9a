import type { Page } from '@playwright/test';
import { expect, test } from './fixtures.ts';
import { giveAnswer } from './give-answer.ts';
import { keptAnswers } from './kept-answers.ts';
import { putSlot } from './put-slot.ts';

const address = '/practise/today/';

/** Answers what is on show, by keyboard alone. */
async function answer(page: Page, place: number): Promise<void> {
  await expect(page.getByRole('heading', { name: `Question ${place} of 6` })).toBeFocused();
  await giveAnswer(page);
  await page.getByRole('radio', { name: 'Fairly sure' }).press('Space');
  await page.keyboard.press('Enter');
  await expect(
    page.getByRole('heading', { name: `Question ${place} of 6, answered` }),
  ).toBeFocused();
  await page.getByRole('button', { name: /Next question|See how it went/ }).press('Enter');
}

test('a round by keyboard: begun at one press, left by a reload, taken up, and told at the end', async ({
  page,
}) => {
  await page.goto(address);
  await page.getByRole('button', { name: 'Begin' }).press('Enter');
  for (const place of [1, 2]) await answer(page, place);
  await expect(page.getByRole('heading', { name: 'Question 3 of 6' })).toBeFocused();
  await page.getByRole('radio', { name: 'Certain' }).press('Space');
  await page.reload();
  await page.getByRole('button', { name: 'Go on with question 3 of 6' }).press('Enter');
  await expect(page.getByRole('radio', { name: 'Certain' })).toBeChecked();
  for (const place of [3, 4, 5, 6]) await answer(page, place);
  await expect(page.getByRole('heading', { name: 'How it went' })).toBeFocused();
  await expect(page.getByText(/of 6 right/)).toBeVisible();
  const kept = await keptAnswers(page);
  expect(new Set(kept.map(({ item }) => item)).size).toBe(6);
  expect(kept).toHaveLength(6);
  await page.getByRole('button', { name: 'Another round' }).press('Enter');
  await expect(page.getByRole('button', { name: 'Begin' })).toBeVisible();
  // What came of it stands in the record.
  await page.getByRole('link', { name: /^My record/ }).press('Enter');
  await expect(page.getByText(/^6 answers so far, to 6 of \d+ questions/)).toBeVisible();
  const right = kept.filter(({ result }) => result === 'right').length;
  const sure = page.getByRole('row', { name: /^Fairly sure/ });
  await expect(sure.getByRole('cell')).toHaveText(['6', String(right), 'too few to say']);
  const first = page.getByRole('row', { name: /^What pressure does/ });
  await expect(first.getByRole('cell').nth(1)).toHaveText(String(right));
});

test('what went wrong leads to the section that teaches it, and says when it comes back', async ({
  page,
}) => {
  // The seed of a round is the time, so this one has always the same questions and answers.
  await page.clock.setFixedTime(new Date('2026-11-29T09:00:00'));
  await page.goto(address);
  await page.getByRole('button', { name: 'Begin' }).click();
  for (let place = 1; place <= 6; place += 1) await answer(page, place);
  await expect(page.getByText(/come back tomorrow in Today\.$/)).toBeVisible();
  const section = page.locator('.retrieval-over li a').first();
  const href = (await section.getAttribute('href')) ?? '';
  expect(href).toMatch(/^\/lessons\/[a-z-]+\/#[a-z-]+$/u);
  await section.click();
  await expect(page.locator(`h2#${href.split('#')[1] ?? ''}`)).toBeInViewport();
});

test('a month in five visits: what was wrong comes back the next day, and nothing after the exam', async ({
  page,
}) => {
  await page.clock.install({ time: new Date('2026-11-29T09:00:00') });
  await page.goto(address);
  await page.getByLabel('Date of your exam').fill('2026-12-20');
  await page.getByRole('button', { name: 'Set the date' }).click();
  await expect(page.getByText(/^21 days to your exam/)).toBeVisible();
  await page.getByRole('button', { name: 'Begin' }).click();
  for (let place = 1; place <= 6; place += 1) await answer(page, place);
  await page.clock.setFixedTime(new Date('2026-11-30T09:00:00'));
  await page.reload();
  await expect(page.getByText(/come(s)? back, \d new/)).toBeVisible();
  await page.clock.setFixedTime(new Date('2026-12-20T06:00:00'));
  await page.reload();
  await expect(page.getByText(/The day of your exam has come/).first()).toBeVisible();
  await expect(page.getByRole('button', { name: 'Begin' })).toHaveCount(0);
  await page.getByRole('button', { name: 'No date' }).click();
  await expect(page.getByRole('button', { name: 'Begin' })).toBeVisible();
});

test('a record without an answer says what it counts, and leads to a round', async ({ page }) => {
  await page.goto('/practise/record/');
  await expect(page.getByText(/^There are no answers yet/)).toBeVisible();
  await page.getByRole('link', { name: 'Go to today’s round' }).press('Enter');
  await expect(page.getByRole('button', { name: 'Begin' })).toBeVisible();
});

test('a date that cannot be planned for is refused at the field, and stays typed', async ({
  page,
}) => {
  await page.goto(address);
  const field = page.getByLabel('Date of your exam');
  await field.fill('2020-01-01');
  await page.getByRole('button', { name: 'Set the date' }).press('Enter');
  await expect(page.locator('#today-exam-fault')).toHaveText(/from tomorrow on/);
  await expect(field).toBeFocused();
  await expect(field).toHaveValue('2020-01-01');
});

test('without a connection it says so, and a press tries again', async ({ page, trouble }) => {
  await page.route('**/questions/index.json', (route) => route.abort('internetdisconnected'));
  await page.goto(address);
  await expect(page.getByRole('alert').filter({ hasText: 'could not be loaded' })).toBeVisible();
  await page.unroute('**/questions/index.json');
  await page.getByRole('button', { name: 'Try again' }).press('Enter');
  await expect(page.getByRole('button', { name: 'Begin' })).toBeVisible();
  // What the test cut off is told of once on the console and as a request that failed.
  trouble.splice(0, trouble.filter((one) => /questions\/index|ERR_INTERNET/.test(one)).length);
});

test.describe('on a phone', () => {
  test.use({ hasTouch: true });

  // The longest explanations: of a chart, of pairs, and of a short case.
  const items = [
    { id: 'three-taps-one-crack', lesson: 'holds-cold-slips-hot' },
    { id: 'what-decides-it', lesson: 'other-complaints' },
    { id: 'taxi-at-the-lights', lesson: 'the-next-best-test' },
  ];
  for (const [width, height] of [
    [390, 664],
    [844, 390],
  ] as const) {
    test(`verdict and next button are in sight of every explanation at ${width} x ${height}`, async ({
      page,
    }) => {
      await page.setViewportSize({ width, height });
      await page.clock.setFixedTime(new Date('2026-11-29T12:00:00Z'));
      await page.goto(address);
      await putSlot(page, 'plan', {
        ...{ exam: null, minutes: 5 },
        round: { day: Date.UTC(2026, 10, 29) / 86_400_000, seed: 7, items },
      });
      await page.reload();
      await page.getByRole('button', { name: 'Go on with question 1 of 3' }).tap();
      for (let place = 1; place <= items.length; place += 1) {
        await expect(page.getByRole('heading', { name: `Question ${place} of 3` })).toBeFocused();
        await giveAnswer(page);
        await page.getByText('Guessing').tap();
        await page.getByRole('button', { name: 'Check my answer' }).tap();
        await expect(page.locator('.retrieval-verdict')).toBeInViewport({ ratio: 1 });
        const next = page.getByRole('button', { name: /Next question|See how it went/ });
        await expect(next).toBeInViewport({ ratio: 1 });
        await page.locator('.retrieval-reasons > li').nth(1).scrollIntoViewIfNeeded();
        await expect(next).toBeInViewport({ ratio: 1 });
        await next.tap();
      }
      await expect(page.getByRole('heading', { name: 'How it went' })).toBeFocused();
    });
  }

  test('a line that is paired and the letters it is paired with are in sight together', async ({
    page,
  }) => {
    await page.setViewportSize({ width: 390, height: 664 });
    await page.clock.setFixedTime(new Date('2026-11-29T12:00:00Z'));
    await page.goto(address);
    await putSlot(page, 'plan', {
      ...{ exam: null, minutes: 5 },
      round: { day: Date.UTC(2026, 10, 29) / 86_400_000, seed: 7, items: items.slice(1, 2) },
    });
    await page.reload();
    await page.getByRole('button', { name: 'Go on with question 1 of 1' }).tap();
    const lines = page.locator('.form-lines fieldset');
    await expect(lines).not.toHaveCount(0);
    for (const line of await lines.all()) {
      await line.locator('input').first().focus();
      await line.locator('label').last().scrollIntoViewIfNeeded();
      await line.locator('label').last().tap();
      await expect(line.locator('input').last()).toBeChecked();
      await expect(line.locator('label').last()).toBeInViewport({ ratio: 1 });
      for (const partner of await page.locator('.form-partners li').all())
        await expect(partner).toBeInViewport({ ratio: 0.9 });
    }
  });
});
