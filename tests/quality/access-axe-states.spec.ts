// axe-core on pages as somebody leaves them in the middle of work, questions of every kind before and after the answer among
// them: light, dark and forced colors.
import { expect, test } from '../e2e/fixtures.ts';
import { keepFigures, looked, none } from './figures.ts';
import { foundBy, LOOKS } from './looks.ts';
import { STATES } from './states.ts';

test('axe finds nothing in pages that are being worked on, in light and dark', async ({ page }) => {
  test.setTimeout(900_000);
  const wrong: string[] = [];
  let looks = 0;
  for (const { name, reach } of STATES) {
    await test.step(name, () =>
      reach(page, async (state) => {
        for (const [look, media] of LOOKS.slice(0, 3)) {
          await page.emulateMedia(media);
          wrong.push(...(await foundBy(page, `${name}, ${state}, ${look}`)));
          looks += 1;
        }
        await page.emulateMedia(LOOKS[0][1]);
      }),
    );
  }
  keepFigures('access-axe-states', [
    looked('states of pages in the middle of work', STATES.length, 12),
    none(`what axe finds in ${looks} looks at them`, wrong),
  ]);
  expect(wrong).toEqual([]);
});
