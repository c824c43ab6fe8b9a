import type { Page } from '@playwright/test';

/** What 15 mm on each side leave, at 96 to the inch: Letter is 8.5 inches wide, A4 210 mm (ISO 216). */
export const BETWEEN = { Letter: 702, A4: 680 } as const;

/** The least letters on paper: 10 pt to read, 7 pt to look up in a chart. A point is 1/72 inch, a CSS pixel 1/96. */
const LEAST = { words: (10 * 96) / 72, chart: (7 * 96) / 72 };
/** Rounding of scales and of rem [px]. */
const SLACK = 0.05;

/** What is wrong with a page as it is laid out for a sheet with so many pixels between its margins. */
export async function faultsOnPaper(page: Page, width: number): Promise<readonly string[]> {
  await page.setViewportSize({ width, height: 942 });
  await page.emulateMedia({ media: 'print' });
  return page.evaluate(
    async ({ least, slack }) => {
      const twice = () =>
        new Promise((done) => requestAnimationFrame(() => requestAnimationFrame(done)));
      await twice();
      const faults = new Set<string>();
      // Half a sheet: anything lower finds room on the next one.
      const MOST_UNBROKEN = 470;
      const seen = [...document.querySelectorAll<HTMLElement | SVGElement>('body *')].filter(
        (one) =>
          one.checkVisibility() &&
          one.closest('.visually-hidden, defs, title, desc, .skip') === null &&
          one.getBoundingClientRect().width > 0,
      );
      const named = (one: Element) => `${one.tagName}.${one.getAttribute('class') ?? ''}`;
      const colours = [
        'color',
        'backgroundColor',
        'borderTopColor',
        'borderBottomColor',
        'fill',
        'stroke',
      ] as const;
      for (const one of seen) {
        const style = getComputedStyle(one);
        for (const property of colours) {
          const [r, g, b, alpha = '1'] = style[property].match(/[\d.]+/gu) ?? [];
          if (!style[property].startsWith('rgb') || alpha === '0') continue;
          if (r !== g || g !== b) faults.add(`hue: ${named(one)} ${property} ${style[property]}`);
        }
        // The printer cannot break it, and what has no room on the page is lost.
        const scrolls = style.overflowY !== 'visible';
        if (scrolls && one instanceof HTMLElement && one.offsetHeight > MOST_UNBROKEN) {
          faults.add(`not to be broken: ${named(one)} ${one.offsetHeight} px high`);
        }
        const { right } = one.getBoundingClientRect();
        if (right > innerWidth + 1 && one.closest('svg') === null) {
          faults.add(`wide: ${named(one)} to ${right.toFixed(0)}`);
        }
        const says = [...one.childNodes].some(
          ({ nodeType, textContent }) => nodeType === Node.TEXT_NODE && textContent?.trim() !== '',
        );
        // An index or an exponent is smaller by its nature.
        if (!says || one.closest('math, sub, sup') !== null) continue;
        const size = parseFloat(style.fontSize);
        if (one instanceof SVGGraphicsElement) {
          const scale = one.getScreenCTM();
          const px = size * Math.hypot(scale?.c ?? 0, scale?.d ?? 0);
          if (px < least.chart - slack)
            faults.add(`small in a picture: ${one.textContent} ${px.toFixed(1)} px`);
        } else if (size < least.words - slack) {
          faults.add(`small: ${named(one)} ${one.textContent.trim().slice(0, 30)} ${size} px`);
        }
      }
      return [...faults];
    },
    { least: LEAST, slack: SLACK },
  );
}
