import type { Locator, Page } from '@playwright/test';
import { expect } from '../e2e/fixtures.ts';

export const STAGES = ['predict', 'run', 'compare', 'tasks', 'your controls'] as const;
export type Stage = (typeof STAGES)[number];

const head = (sim: Locator, words: string | RegExp) =>
  sim.locator('.stage-head', { hasText: words });

export async function openSimulation(page: Page, id: string): Promise<Locator> {
  const sim = page.locator(`#${id}`);
  await sim.evaluate((section) => section.scrollIntoView({ block: 'start' }));
  await expect(sim).toHaveAttribute('data-ready', 'true');
  return sim;
}

export async function openFolds(part: Locator): Promise<void> {
  await part.locator('details').evaluateAll((all) => {
    for (const one of all) (one as HTMLDetailsElement).open = true;
  });
}

/** Straight to your own controls, whatever was predicted, with every fold open. */
export async function openOwnControls(page: Page, id: string): Promise<Locator> {
  const sim = await openSimulation(page, id);
  await sim.getByRole('button', { name: 'Your controls' }).press('Enter');
  await expect(head(sim, 'Your controls')).toBeVisible();
  await openFolds(sim);
  return sim;
}

/** A simulation from its prediction to your own controls by keyboard; `look` is called in each stage. */
export async function walkStages(
  page: Page,
  id: string,
  look: (stage: Stage, sim: Locator) => Promise<void>,
): Promise<void> {
  const sim = await openSimulation(page, id);
  await look('predict', sim);
  await sim.locator('.choice-stack input').first().press('Space');
  await sim.locator('.choice-row input').first().press('Space');
  await sim.locator('button[type="submit"]').press('Enter');
  await look('run', sim);
  await expect(head(sim, 'What it did')).toBeVisible({ timeout: 20_000 });
  await expect(sim.locator('.sim-below > .sim-stage')).toHaveCount(0);
  await look('compare', sim);
  await sim.getByRole('button', { name: 'On to the tasks' }).press('Enter');
  await expect(head(sim, /^Task 1 of/)).toBeVisible();
  await look('tasks', sim);
  await sim.getByRole('button', { name: 'Your controls' }).press('Enter');
  await expect(head(sim, 'Your controls')).toBeVisible();
  await look('your controls', sim);
}

/** Goes to each island that waits to be seen, until all of a page are awake. */
export async function wakeIslands(page: Page): Promise<void> {
  const asleep = () =>
    page.evaluate(() => {
      const all = [...document.querySelectorAll('astro-island[ssr]')];
      // An island is no box itself.
      all[0]?.firstElementChild?.scrollIntoView({ block: 'center' });
      return all.length;
    });
  // A machine that others share takes its time.
  await expect.poll(asleep, { timeout: 60_000, intervals: [50, 100, 250] }).toBe(0);
  await page.evaluate(() => scrollTo(0, 0));
}
