// axe-core (WCAG 2.0 to 2.2, A and AA, its best practices, and contrast at 7:1) on every page of the built site, with every
// fold open: light, dark, forced colors and on paper.
import { expect, test } from '../e2e/fixtures.ts';
import { addresses } from '../e2e/pages.ts';
import { keepFigures, looked, none } from './figures.ts';
import { foundBy, LOOKS } from './looks.ts';
import { openFolds, wakeIslands } from './stages.ts';

test('axe finds nothing on any page, in light, dark, forced colors and on paper', async ({
  page,
}) => {
  test.setTimeout(1_800_000);
  const wrong: string[] = [];
  let looks = 0;
  for (const address of addresses) {
    await page.emulateMedia(LOOKS[0][1]);
    await page.goto(address);
    await wakeIslands(page);
    await openFolds(page.locator('body'));
    for (const [name, media] of LOOKS) {
      await page.emulateMedia(media);
      wrong.push(...(await foundBy(page, `${address} ${name}`)));
      looks += 1;
    }
  }
  keepFigures('access-axe-pages', [
    looked('pages looked at in four looks each', addresses.length, 50),
    none(`what axe finds in ${looks} looks at whole pages`, wrong),
  ]);
  expect(wrong).toEqual([]);
});
