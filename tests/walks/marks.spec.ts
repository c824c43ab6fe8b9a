// Marks of sources: a thumb can press them, a margin holds their words, paper keeps them.
import { expect, test } from '../e2e/fixtures.ts';

const LESSON = '/lessons/what-pressure-does/';

test('on a phone a mark is large enough to press, and ends the line of its word', async ({
  page,
}) => {
  await page.setViewportSize({ width: 390, height: 664 });
  await page.goto(LESSON);
  const marks = page.locator('a.cited:visible');
  expect(await marks.count()).toBeGreaterThan(1);
  for (const mark of await marks.all()) {
    const box = await mark.boundingBox();
    expect(box?.width).toBeGreaterThanOrEqual(24);
    expect(box?.height).toBeGreaterThanOrEqual(24);
  }
  const [first] = await marks.all();
  await expect(first ?? page.locator('nothing')).toHaveAccessibleName(/Source|Common practice/);
  // No mark stands alone at the start of a line: something of its sentence is left of it.
  const alone = await marks.evaluateAll(
    (all) =>
      all.filter((mark) => {
        const block = mark.closest('p, li, td');
        return (
          block !== null &&
          mark.getBoundingClientRect().left - block.getBoundingClientRect().left < 4
        );
      }).length,
  );
  expect(alone).toBe(0);
});

test('a finger reaches a mark 48 px high and wide, and takes nothing from a term beside it', async ({
  page,
}) => {
  await page.setViewportSize({ width: 390, height: 664 });
  for (const lesson of [
    LESSON,
    '/lessons/hot-fluid-thin-fluid/',
    '/lessons/regulator-to-clutch/',
  ]) {
    await page.goto(lesson);
    const missed = await page.evaluate(() => {
      const pressedAt = (x: number, y: number) =>
        document.elementFromPoint(x, y)?.closest('a, button');
      const all = <T extends Element>(selector: string) =>
        [...document.querySelectorAll<T & HTMLElement>(selector)].filter((one) =>
          one.checkVisibility(),
        );
      const marks = all('main .cited').flatMap((mark) => {
        mark.scrollIntoView({ block: 'center' });
        const sign = mark.querySelector('.cited-sign')?.getBoundingClientRect() ?? new DOMRect();
        const [x, y] = [sign.x + sign.width / 2, sign.y + sign.height / 2];
        const far = 23.5;
        return [
          [0, 0],
          [far, 0],
          [-far, 0],
          [0, far],
          [0, -far],
        ].flatMap(([right = 0, down = 0]) => {
          const pressed = pressedAt(x + right, y + down);
          const kept = pressed?.matches('.term') && (right !== 0 || down !== 0);
          return pressed === mark || kept ? [] : [`${mark.textContent} ${right} ${down}`];
        });
      });
      const terms = all('main .term').flatMap((term) => {
        term.scrollIntoView({ block: 'center' });
        return [...term.getClientRects()].flatMap((line) =>
          [0.1, 0.5, 0.9].flatMap((part) =>
            pressedAt(line.x + part * line.width, line.y + line.height / 2) === term
              ? []
              : [`${term.textContent} ${part}`],
          ),
        );
      });
      return { marks, terms };
    });
    expect(missed, lesson).toEqual({ marks: [], terms: [] });
    const { scroll, client } = await page.evaluate(() => ({
      scroll: document.documentElement.scrollWidth,
      client: document.documentElement.clientWidth,
    }));
    expect(scroll).toBeLessThanOrEqual(client);
  }
});

test('where there is a margin, it says there which source', async ({ page }) => {
  await page.setViewportSize({ width: 1366, height: 768 });
  await page.goto(LESSON);
  const places = await page.locator('a.cited:visible').evaluateAll((all) =>
    all.flatMap((mark) => {
      const block = mark.closest('p, li');
      const words = mark.querySelector('.cited-words')?.getBoundingClientRect();
      if (block === null || words === undefined) return [];
      const text = block.getBoundingClientRect();
      const line = mark.querySelector('.cited-sign')?.getBoundingClientRect();
      return [
        {
          beside: words.left > text.right,
          onScreen: words.right <= innerWidth,
          near: line !== undefined && Math.abs(words.top - line.top) < 60,
        },
      ];
    }),
  );
  expect(places.length).toBeGreaterThan(1);
  for (const place of places) expect(place).toEqual({ beside: true, onScreen: true, near: true });
});

test('a mark leads to its source, and on paper it is words', async ({ page }) => {
  await page.goto(LESSON);
  await expect(page.locator('.cited-told')).toHaveCount(1);
  const mark = page.locator('a.cited[href="/sources/#juvinall"]');
  await page.emulateMedia({ media: 'print' });
  await expect(mark.locator('.cited-words')).toBeVisible();
  expect(
    await mark
      .locator('.cited-words')
      .evaluate((words) => getComputedStyle(words, '::before').content),
  ).toContain('[');
  await page.emulateMedia({ media: 'screen' });
  await mark.click();
  await expect(page.locator('#juvinall')).toBeInViewport();
});

test('the marks for being sure name their paper, and a source says where it is marked', async ({
  page,
}) => {
  await page.goto(LESSON);
  await page.getByRole('link', { name: 'Where this scale comes from' }).click();
  await expect(page.locator('#gardner-medwin-2005')).toBeInViewport();
  await expect(page.locator('#gardner-medwin-2005')).toContainText('right 1, 2 or 3');
  const back = page.locator('#juvinall').getByRole('link', { name: 'What pressure does' });
  await expect(back).toHaveAttribute('href', LESSON);
});
