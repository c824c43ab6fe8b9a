// Where a reader asks for less motion nothing moves by itself; where not, whatever is started is stopped by its button, and nothing runs
// on for longer than five seconds (WCAG 2.2, 2.2.2).
import type { Page } from '@playwright/test';
import { expect, test } from '../e2e/fixtures.ts';
import { addresses, simulationPages } from '../e2e/pages.ts';
import { keepFigures, looked, none } from './figures.ts';
import { openOwnControls, wakeIslands, walkStages } from './stages.ts';

/** Animations under way and changes that a script makes to the page within a while [ms]. */
const moves = (page: Page, lasts: number) =>
  page.evaluate(async (ms) => {
    const changed = new Set<string>();
    const watch = new MutationObserver((all) => {
      for (const { target, attributeName } of all) {
        // The leave for fluid to be seen flowing, which is taken back after some seconds: whether it flows is asked of the animations.
        if (attributeName === 'data-flows') continue;
        const one = target instanceof Element ? target : target.parentElement;
        changed.add(`${one?.tagName ?? ''} ${one?.getAttribute('class') ?? ''}`);
      }
    });
    watch.observe(document.body, {
      subtree: true,
      childList: true,
      attributes: true,
      characterData: true,
    });
    await new Promise((done) => setTimeout(done, ms));
    watch.disconnect();
    // One that lasts no time moves nothing: it shows a sentence after a while.
    const running = document
      .getAnimations()
      .filter(
        ({ playState, effect }) =>
          playState === 'running' && effect?.getComputedTiming().duration !== 0,
      );
    return [
      ...changed,
      ...running.map(
        (one) => `animation ${'animationName' in one ? String(one.animationName) : ''}`,
      ),
    ];
  }, lasts);

test('nothing moves by itself where motion is not wanted', async ({ page }) => {
  test.setTimeout(900_000);
  const wrong: string[] = [];
  let stages = 0;
  for (const address of addresses) {
    await page.goto(address);
    await wakeIslands(page);
    await page.waitForTimeout(600);
    wrong.push(...(await moves(page, 400)).map((one) => `${address}: ${one}`));
  }
  for (const { address, ids } of simulationPages) {
    for (const id of ids) {
      await page.goto(address);
      await walkStages(page, id, async (stage, sim) => {
        if (stage === 'run') return;
        stages += 1;
        // What a stage brings late has come. Said at most twice a second, so the last word comes half a second later.
        await page.waitForLoadState('networkidle');
        await page.waitForTimeout(1300);
        wrong.push(...(await moves(page, 400)).map((one) => `${id}, ${stage}: ${one}`));
        const play = sim.getByRole('button', { name: 'Play', exact: true });
        if ((await play.count()) === 0) return;
        await play.press('Enter');
        await page.waitForTimeout(1300);
        wrong.push(...(await moves(page, 400)).map((one) => `${id}, ${stage}, played: ${one}`));
      });
    }
  }
  keepFigures('access-motion-reduced', [
    looked('pages and stages watched where motion is not wanted', addresses.length + stages, 150),
    none('things on them that move by themselves', wrong),
  ]);
  expect(wrong).toEqual([]);
});

test('what plays is stopped by its button, and nothing else runs on', async ({ page }) => {
  test.setTimeout(900_000);
  await page.emulateMedia({ reducedMotion: 'no-preference' });
  const wrong: string[] = [];
  let played = 0;
  for (const { address, ids } of [{ address: '/', ids: [] }, ...simulationPages]) {
    await page.goto(address);
    await wakeIslands(page);
    for (const id of ids) {
      const sim = await openOwnControls(page, id);
      // The row with it comes after the press.
      await page.waitForLoadState('networkidle');
      const play = sim.getByRole('button', { name: 'Play', exact: true });
      if ((await play.count()) === 0) continue;
      played += 1;
      await play.press('Enter');
      await page.waitForTimeout(300);
      const going = await moves(page, 300);
      if (going.length === 0) wrong.push(`${id}: Play starts nothing`);
      await sim.getByRole('button', { name: 'Stop here' }).press('Enter');
      await page.waitForTimeout(1300);
      wrong.push(
        ...(await moves(page, 400))
          // Flows rest by themselves, which is looked at below.
          .filter((one) => !one.includes('dw-flow'))
          .map((one) => `${id}, stopped: ${one}`),
      );
    }
    // Flows rest by themselves within five seconds; a spoken sentence may still be on its way.
    await page.waitForTimeout(6500);
    wrong.push(...(await moves(page, 500)).map((one) => `${address}, after six seconds: ${one}`));
  }
  keepFigures('access-motion-stops', [
    looked('stories that are played and stopped', played, 2),
    none('things that move on after Stop, or after five seconds', wrong),
  ]);
  expect(wrong).toEqual([]);
});
