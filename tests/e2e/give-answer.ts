import type { Page } from '@playwright/test';

/** Gives some answer to the question on show, of whatever kind, by keyboard alone. */
export async function giveAnswer(page: Page): Promise<void> {
  const form = page.locator('.retrieval-form');
  // Some kinds of question are fetched when one comes up; how sure is there before them.
  await form.locator('[data-place="answer"] :is(input, .nudge)').first().waitFor();
  const field = page.getByRole('textbox', { name: /Your answer/ });
  if ((await field.count()) > 0) {
    await field.press('5');
    return;
  }
  const down = form.getByRole('button', { name: /^Move down/ });
  if ((await down.count()) > 0) {
    await down.first().press('Enter');
    return;
  }
  // One of each group of an answer; how sure comes last and is no part of it.
  const groups = form.locator('[data-place="answer"] fieldset:has(input)');
  for (const group of await groups.all()) await group.locator('input').first().press('Space');
}
