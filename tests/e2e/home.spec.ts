import { expect, test } from './fixtures.ts';

/** The temperature in "… lets go at 189 °F." */
const edgeIn = (sentence: string | null): number =>
  Number(/lets go at (\d+)/u.exec(sentence ?? '')?.[1]);

test('the headline turns at the temperature it names, by keyboard alone', async ({ page }) => {
  await page.goto('/');
  const bench = page.locator('.home-circuit[data-ready="true"]');
  const field = bench.locator('#home-temp-field');
  const says = bench.locator('.live-text');
  const warm = async (temp: number) => {
    await field.fill(`${temp} F`);
    await field.press('Enter');
  };
  await expect(bench.locator('h1')).toHaveClass('now-holds');
  await expect(bench.locator('#home-crack')).toHaveCount(0);
  const edge = edgeIn(await says.textContent());
  expect(edge).toBeGreaterThan(100);
  // The edge is printed to a whole degree: one to either side is past the rounding.
  await warm(edge - 1);
  await expect(bench.locator('h1')).toHaveClass('now-holds');
  await warm(edge + 1);
  await expect(bench.locator('h1')).toHaveClass('now-slips');
  await expect(bench.locator('.home-picture svg')).toContainText('slips');

  // The second handle is there now, and a wider crack lets go sooner.
  await bench.locator('#home-crack').press('ArrowRight');
  await expect.poll(async () => edgeIn(await says.textContent())).toBeLessThan(edge);
});

/** A phone with the bars of its browser, and on its side, where the second handle has room as well. */
const PHONES = [
  { width: 390, height: 664, parts: ['h1', '.home-picture svg', '#home-temp', '.live-text'] },
  {
    width: 844,
    height: 390,
    parts: ['h1', '.home-picture svg', '#home-temp', '.live-text', '#home-crack'],
  },
];
for (const { width, height, parts } of PHONES) {
  test(`at ${width} x ${height} the headline, the picture and the handles share the first screen`, async ({
    page,
  }) => {
    await page.setViewportSize({ width, height });
    await page.goto('/');
    await page.locator('#home-temp').press('End');
    await expect(page.locator('#home-crack')).toBeAttached();
    await page.evaluate(() => {
      scrollTo(0, 0);
    });
    for (const part of parts) {
      const one = page.locator(`.home-circuit ${part}`).first();
      await expect(one, part).toBeInViewport({ ratio: 1 });
    }
  });
}

test('without a script the circuit is drawn and said all the same', async ({
  browser,
  baseURL,
}) => {
  const context = await browser.newContext({ javaScriptEnabled: false });
  const page = await context.newPage();
  await page.goto(baseURL ?? '/');
  await expect(page.locator('.home-picture svg')).toContainText('Transfer seal');
  await expect(page.locator('.home-circuit .live-text')).toContainText('A gentle take-off needs');
  await context.close();
});

test('the crack is pulled open in the drawing, once the first handle has been moved', async ({
  page,
}) => {
  await page.goto('/');
  await expect(page.locator('.home-circuit')).toHaveAttribute('data-ready', 'true');
  const grip = page.locator('.home-picture .dw-grip');
  await expect(grip).toHaveCount(0);
  await page.locator('#home-temp').press('ArrowRight');
  const crack = page.locator('#home-crack');
  const before = Number(await crack.inputValue());
  const { x, y, width, height } = (await grip.boundingBox()) ?? new DOMRect();
  await page.mouse.move(x + width / 2, y + height / 2);
  await page.mouse.down();
  await page.mouse.move(x + width / 2, y + height / 2 + 25, { steps: 4 });
  await page.mouse.up();
  expect(Number(await crack.inputValue())).toBeGreaterThan(before);
});
