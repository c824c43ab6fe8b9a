// WCAG 2.2, 1.4.4, 1.4.10 and 1.4.12 on every page and in every stage of every simulation: nothing is cut, nothing lies over
// anything else, and the page scrolls one way.
import { expect, test } from '../e2e/fixtures.ts';
import { addresses, simulationPages } from '../e2e/pages.ts';
import { keepFigures, looked, none } from './figures.ts';
import { laidOutInEach, SETTINGS } from './layout.ts';
import { openFolds, wakeIslands, walkStages } from './stages.ts';

test('every page fits 320 px, 400 %, text at 200 % and a reader’s spacing', async ({ page }) => {
  test.setTimeout(1_800_000);
  const wrong: string[] = [];
  for (const address of addresses) {
    await page.setViewportSize({ width: 390, height: 664 });
    await page.goto(address);
    await wakeIslands(page);
    await openFolds(page.locator('body'));
    wrong.push(...(await laidOutInEach(page, 'body', address)));
  }
  keepFigures('access-reflow-pages', [
    looked(`pages laid out in ${SETTINGS.length} ways`, addresses.length, 50),
    none('words cut, overlapped or off the page, and pages that scroll sideways', wrong),
  ]);
  expect(wrong).toEqual([]);
});

test('every stage of every simulation does as well', async ({ page }) => {
  test.setTimeout(1_800_000);
  const wrong: string[] = [];
  let stages = 0;
  for (const { address, ids } of simulationPages) {
    for (const id of ids) {
      await page.setViewportSize({ width: 390, height: 664 });
      await page.goto(address);
      await walkStages(page, id, async (stage, sim) => {
        if (stage === 'run') return;
        stages += 1;
        await openFolds(sim);
        wrong.push(...(await laidOutInEach(page, `#${id}`, `${id}, ${stage}`)));
      });
    }
  }
  keepFigures('access-reflow-simulations', [
    looked(`stages laid out in ${SETTINGS.length} ways`, stages, 27 * 4),
    none(
      'words of simulations cut, overlapped or off the page, and pages that scroll sideways',
      wrong,
    ),
  ]);
  expect(wrong).toEqual([]);
});
