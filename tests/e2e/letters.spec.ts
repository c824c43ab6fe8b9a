import { expect, test } from './fixtures.ts';
import { simulationPages } from './pages.ts';

/** Read from 6 m off a projector, and at arm's length on a phone [px]. */
const SCREENS = [
  { width: 1920, height: 1080, least: 24 },
  { width: 390, height: 664, least: 12 },
];
/** Rounding of scales. */
const SLACK = 0.05;

for (const { address, ids } of [...simulationPages, { address: '/', ids: [] as string[] }]) {
  test(`the letters in the pictures of ${address} are large enough`, async ({ page }) => {
    await page.emulateMedia({ reducedMotion: 'reduce' });
    await page.goto(address);
    for (const { width, height, least } of SCREENS) {
      await page.setViewportSize({ width, height });
      for (const id of ids) {
        const sim = page.locator(`#${id}`);
        await sim.evaluate((section) => section.scrollIntoView({ block: 'start' }));
        await expect(sim).toHaveAttribute('data-ready', 'true');
      }
      const small = () =>
        page.evaluate((enough) => {
          const texts = [...document.querySelectorAll<SVGTextElement>('main svg text')].filter(
            (text) => text.checkVisibility() && text.getBoundingClientRect().width > 0,
          );
          if (texts.length === 0) return ['no picture with letters was found'];
          return texts.flatMap((text) => {
            const scale = text.getScreenCTM();
            const px =
              parseFloat(getComputedStyle(text).fontSize) *
              Math.hypot(scale?.c ?? 0, scale?.d ?? 0);
            return px < enough ? [`${text.textContent}: ${px.toFixed(1)} px`] : [];
          });
        }, least - SLACK);
      // A chart takes its measure from the page, a frame or two after the page has changed.
      await expect.poll(small, `${width} px wide`).toEqual([]);
    }
  });
}
