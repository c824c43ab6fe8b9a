// axe-core on every simulation in every stage, while it runs as well, with every fold open, in light and dark.
import { axeOn, ENHANCED } from '../e2e/axe.ts';
import { expect, test } from '../e2e/fixtures.ts';
import { simulationPages } from '../e2e/pages.ts';
import { keepFigures, looked, none } from './figures.ts';
import { openFolds, STAGES, walkStages } from './stages.ts';

test('axe finds nothing in any stage of any simulation', async ({ page }) => {
  test.setTimeout(1_800_000);
  const wrong: string[] = [];
  const all = simulationPages.flatMap(({ address, ids }) => ids.map((id) => ({ address, id })));
  let looks = 0;
  for (const { address, id } of all) {
    await test.step(id, async () => {
      // A run is over at once where motion is not wanted.
      await page.emulateMedia({ reducedMotion: 'no-preference', colorScheme: 'light' });
      await page.goto(address);
      await walkStages(page, id, async (stage, sim) => {
        await openFolds(sim);
        for (const colorScheme of ['light', 'dark'] as const) {
          await page.emulateMedia({ colorScheme });
          const { violations } = await axeOn(page, ENHANCED).include(`#${id}`).analyze();
          looks += 1;
          for (const { id: rule, nodes } of violations) {
            wrong.push(
              `${id} ${stage} ${colorScheme}: ${rule} ${nodes[0]?.html.slice(0, 200) ?? ''}`,
            );
          }
        }
      });
    });
  }
  keepFigures('access-axe-simulations', [
    looked('simulations walked through their stages', all.length, 27),
    looked('looks, each stage in light and dark', looks, all.length * STAGES.length * 2),
    none('what axe finds in the stages of simulations', wrong),
  ]);
  expect(wrong).toEqual([]);
});
