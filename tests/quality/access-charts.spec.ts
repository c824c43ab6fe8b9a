// Each chart of each simulation, in its first state and once everything is open: what its table says is what is drawn, read back from the
// picture by the numbers on its own axes. The chart of any printed book can be read so with a ruler.
import { expect, test } from '../e2e/fixtures.ts';
import { simulationPages } from '../e2e/pages.ts';
import { keepFigures, looked, none } from './figures.ts';
import { readBack } from './read-chart.ts';
import { openFolds, walkStages } from './stages.ts';

test('the table of each chart has the values that are drawn', async ({ page }) => {
  test.setTimeout(900_000);
  const wrong: string[] = [];
  const charts = new Set<string>();
  let values = 0;
  await page.setViewportSize({ width: 1280, height: 900 });
  for (const { address, ids } of simulationPages) {
    for (const id of ids) {
      await page.goto(address);
      await walkStages(page, id, async (stage, sim) => {
        if (stage === 'run') return;
        await openFolds(sim);
        await sim.evaluate(
          () => new Promise((done) => requestAnimationFrame(() => setTimeout(done, 50))),
        );
        for (const chart of await readBack(sim)) {
          charts.add(`${id} ${chart.name}`);
          values += chart.values;
          wrong.push(...chart.wrong.map((one) => `${id}, ${stage}, ${chart.name}: ${one}`));
        }
      });
    }
  }
  keepFigures('access-charts', [
    looked('charts read back from their pictures', charts.size, 25),
    looked('values of their tables looked for in the picture', values, 2000),
    none('values that are drawn elsewhere than the table has them', wrong),
  ]);
  expect(wrong).toEqual([]);
});
