// The tab key on every page and in every stage of every simulation, on a phone and on a desk: the focus is seen (a ring of 2 px
// or more, 3:1), lies under nothing that sticks to the screen (WCAG 2.2, 2.4.11), goes down the page, and gets out again.
import { expect, test } from '../e2e/fixtures.ts';
import { addresses, simulationPages } from '../e2e/pages.ts';
import { keepFigures, looked, none } from './figures.ts';
import { backwards, walkTab } from './focus.ts';
import { openFolds, wakeIslands, walkStages } from './stages.ts';

/** More stops than any page has. */
const MOST = 900;
const PHONE = { width: 390, height: 664 };
const DESK = { width: 1280, height: 720 };

test('the tab key walks every page', async ({ page }) => {
  test.setTimeout(1_800_000);
  const wrong = { seen: [] as string[], order: [] as string[], trapped: [] as string[] };
  let stopped = 0;
  for (const address of addresses) {
    for (const size of [PHONE, DESK]) {
      const where = `${address} ${size.width} px`;
      await page.setViewportSize(size);
      await page.goto(address);
      await wakeIslands(page);
      await page.keyboard.press('Tab');
      const { stops, ended } = await walkTab(page, null, MOST);
      stopped += stops.length;
      for (const { name, wrong: what } of stops) {
        wrong.seen.push(...what.map((one) => `${where}: ${name} ${one}`));
      }
      if (!ended) wrong.trapped.push(where);
      wrong.order.push(...(await backwards(page, 'body')).map((one) => `${where}: ${one}`));
    }
  }
  keepFigures('access-keyboard-pages', [
    looked('stops of the tab key on all pages, on a phone and on a desk', stopped, 2000),
    none('stops where the focus cannot be seen', wrong.seen),
    none('stops to which the focus goes back up the page', wrong.order),
    none('pages that hold the focus', wrong.trapped),
  ]);
  expect(wrong).toEqual({ seen: [], order: [], trapped: [] });
});

test('the tab key walks every stage of every simulation', async ({ page }) => {
  test.setTimeout(1_800_000);
  const wrong = { seen: [] as string[], order: [] as string[], trapped: [] as string[] };
  let stopped = 0;
  for (const { address, ids } of simulationPages) {
    for (const id of ids) {
      await page.setViewportSize(PHONE);
      await page.goto(address);
      await walkStages(page, id, async (stage, sim) => {
        if (stage === 'run') return;
        await openFolds(sim);
        for (const size of [PHONE, DESK]) {
          const where = `${id}, ${stage}, ${size.width} px`;
          await page.setViewportSize(size);
          // The first stop of the simulation, as the tab key comes to it.
          await sim.locator('.sim-nav button').first().focus();
          const { stops, ended } = await walkTab(page, `#${id}`, MOST);
          stopped += stops.length;
          for (const { name, wrong: what } of stops) {
            wrong.seen.push(...what.map((one) => `${where}: ${name} ${one}`));
          }
          if (!ended) wrong.trapped.push(where);
          wrong.order.push(...(await backwards(page, `#${id}`)).map((one) => `${where}: ${one}`));
        }
        await page.setViewportSize(PHONE);
      });
    }
  }
  keepFigures('access-keyboard-simulations', [
    looked('stops of the tab key in all stages of all simulations', stopped, 2000),
    none('stops in simulations where the focus cannot be seen', wrong.seen),
    none('stops to which the focus goes back up the picture and its controls', wrong.order),
    none('stages that hold the focus', wrong.trapped),
  ]);
  expect(wrong).toEqual({ seen: [], order: [], trapped: [] });
});
