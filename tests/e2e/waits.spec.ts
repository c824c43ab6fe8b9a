import type { Page } from '@playwright/test';
import { axeOn } from './axe.ts';
import { expect, test } from './fixtures.ts';
import { giveAnswer } from './give-answer.ts';
import { putSlot } from './put-slot.ts';
import { shiftOf } from './shifts.ts';

const pages = ['/', '/practise/'];
const waits = (page: Page) => page.getByRole('navigation', { name: 'What waits for you' });

/** Answers some questions of today's round. */
async function answerSome(page: Page, count: number): Promise<void> {
  await page.goto('/practise/today/');
  await page.getByRole('button', { name: 'Begin' }).click();
  for (let place = 1; place <= count; place += 1) {
    await expect(page.getByRole('heading', { name: `Question ${place} of 6` })).toBeFocused();
    await giveAnswer(page);
    await page.getByRole('radio', { name: 'Fairly sure' }).press('Space');
    await page.keyboard.press('Enter');
    await page.getByRole('button', { name: /Next question|See how it went/ }).press('Enter');
  }
}

test('nobody who has not practiced here sees what waits', async ({ page }) => {
  for (const address of pages) {
    await page.goto(address);
    await expect(waits(page)).toBeHidden();
  }
});

test('home and practice say what waits, lead there, and nothing jumps when they do', async ({
  page,
}) => {
  await page.setViewportSize({ width: 390, height: 664 });
  await page.clock.setFixedTime(new Date('2026-11-29T09:00:00'));
  await answerSome(page, 2);
  await putSlot(page, 'rehearsal', {
    rehearsal: {
      ...{ begun: 1, ended: null, seconds: 60, timed: true, place: 3, logged: false },
      items: Array.from({ length: 50 }, (_, i) => ({ id: `q-${i}`, lesson: 'a', area: 'fluid' })),
    },
  });
  await putSlot(page, 'visits', {
    byCase: {
      'made-training-1-17': { steps: ['look:idle'], causes: [], repairs: [], serial: 1 },
    },
  });
  for (const address of pages) {
    await page.goto(address);
    await expect(waits(page).getByRole('link')).toHaveText([
      /Today’s round is begun\.\s*Go on at question 3 of 6/,
      /Rehearsal begun\.\s*Go on at question 4 of 50/,
      /Case begun: car number 17\.\s*Go on with it/,
    ]);
    expect(await shiftOf(page)).toBeLessThan(0.01);
    for (const line of await waits(page).getByRole('link').all()) {
      await expect(line).toBeInViewport({ ratio: 1 });
    }
    expect((await axeOn(page).analyze()).violations).toEqual([]);
  }
  await waits(page)
    .getByRole('link', { name: /^Case begun/ })
    .click();
  await expect(page).toHaveURL(/\/practise\/case\/\?number=17&level=1&on=training$/);
});

test('the next day what is due waits, and a round leads to it', async ({ page }) => {
  await page.clock.setFixedTime(new Date('2026-11-29T09:00:00'));
  await answerSome(page, 6);
  await page.goto('/');
  await expect(waits(page).getByRole('link')).toContainText('No question comes back today.');
  await page.clock.setFixedTime(new Date('2026-11-30T09:00:00'));
  await page.goto('/');
  const due = waits(page).getByRole('link', { name: /questions? (is|are) due\./ });
  await due.click();
  await expect(page.getByText(/^\d+ questions? comes? back/)).toBeVisible();
});
