import type { Page } from '@playwright/test';

/** WCAG 2.2, 1.4.11 and 2.4.13: what shows the focus has 3:1 against what it lies on; ours is at least 2 px wide. */
const RING = { contrast: 3, width: 2 };

/** What is wrong with the focus as it stands; an empty list where it can be seen. Marks the element with its place in the tab order. */
export interface Stop {
  readonly name: string;
  readonly wrong: readonly string[];
}

/** Where the focus is, and what is wrong with it; null where it has left the page. */
export const stopAt = (page: Page, place: number): Promise<Stop | null> =>
  page.evaluate(
    ({ place, least }) => {
      const one = document.activeElement;
      if (one === null || one === document.body || one === document.documentElement) return null;
      if (one.hasAttribute('data-stop')) return null;
      one.setAttribute('data-stop', String(place));
      const name = (
        one.getAttribute('aria-label') ??
        one.closest('label')?.textContent ??
        (one.textContent || one.id)
      )
        .trim()
        .replace(/\s+/gu, ' ')
        .slice(0, 60);
      const wrong: string[] = [];

      // WCAG 2.2, "relative luminance" and "contrast ratio".
      const rgba = (text: string) => (text.match(/[\d.]+/gu) ?? []).map(Number);
      const luminance = (text: string) => {
        const [r = 0, g = 0, b = 0] = rgba(text).map((channel) => {
          const c = channel / 255;
          return c <= 0.04045 ? c / 12.92 : ((c + 0.055) / 1.055) ** 2.4;
        });
        return 0.2126 * r + 0.7152 * g + 0.0722 * b;
      };
      const contrast = (a: string, b: string) => {
        const [dark = 0, light = 0] = [luminance(a), luminance(b)].sort((x, y) => x - y);
        return (light + 0.05) / (dark + 0.05);
      };
      const ground = (from: Element | null): string => {
        for (let at = from; at !== null; at = at.parentElement) {
          const colour = getComputedStyle(at).backgroundColor;
          if ((rgba(colour)[3] ?? 1) > 0.5) return colour;
        }
        return 'rgb(255, 255, 255)';
      };
      // The switch of units draws the ring round its label, since the input itself is see-through.
      const label = one.closest('label');
      const ringed = [label, one].find((candidate) => {
        if (candidate === null) return false;
        const { outlineStyle, outlineWidth } = getComputedStyle(candidate);
        return outlineStyle !== 'none' && parseFloat(outlineWidth) >= least.width;
      });
      if (ringed === undefined) wrong.push('shows no focus');
      else if (ringed !== null) {
        const { outlineColor, outlineOffset } = getComputedStyle(ringed);
        const on = parseFloat(outlineOffset) < 0 ? ground(ringed) : ground(ringed.parentElement);
        if (contrast(outlineColor, on) < least.contrast) {
          wrong.push(`focus ${outlineColor} on ${on}`);
        }
      }

      // WCAG 2.2, 2.4.11: not entirely hidden by what the page itself lays over it.
      const boxes = [...(label ?? one).getClientRects()].filter(
        ({ width, height }) => width > 1 && height > 1,
      );
      const mine = label ?? one;
      const free = boxes.some((box) =>
        [0.1, 0.3, 0.5, 0.7, 0.9].some((down) =>
          [0.1, 0.3, 0.5, 0.7, 0.9].some((across) => {
            const hit = document.elementFromPoint(
              box.left + across * box.width,
              box.top + down * box.height,
            );
            return hit !== null && (mine.contains(hit) || hit.contains(mine));
          }),
        ),
      );
      const covered = boxes.every((box) =>
        [0.1, 0.3, 0.5, 0.7, 0.9].every((down) =>
          [0.1, 0.3, 0.5, 0.7, 0.9].every((across) => {
            const [x, y] = [box.left + across * box.width, box.top + down * box.height];
            const hit = document.elementFromPoint(x, y);
            const over = hit?.closest('.sim-picture, .sim-go, header, [popover]');
            return hit === null || (over !== null && over !== undefined && !over.contains(mine));
          }),
        ),
      );
      if (boxes.length === 0 || !free || covered) wrong.push('is hidden');
      return { name, wrong };
    },
    { place, least: RING },
  );

/** Presses Tab from where the focus is until it has left the page or come round, at most `most` times. */
export async function walkTab(page: Page, within: string | null, most: number) {
  const stops: Stop[] = [];
  for (let place = 0; place < most; place += 1) {
    const stop = await stopAt(page, place);
    if (stop === null) return { stops, ended: true };
    const inside =
      within === null ||
      (await page.evaluate((part) => document.activeElement?.closest(part) !== null, within));
    if (!inside) return { stops, ended: true };
    stops.push(stop);
    await page.keyboard.press('Tab');
  }
  return { stops, ended: false };
}

/** Pairs of stops in which the focus goes back up the page, or back along a line. What sticks to the screen is laid flat first. */
export const backwards = (page: Page, within: string) =>
  page.evaluate((part) => {
    const sticking = [...document.querySelectorAll<HTMLElement>('body *')].filter(
      (one) => getComputedStyle(one).position === 'sticky',
    );
    for (const one of sticking) one.style.setProperty('position', 'static', 'important');
    const all = [...document.querySelectorAll(`${part} [data-stop]`)]
      .sort((a, b) => Number(a.getAttribute('data-stop')) - Number(b.getAttribute('data-stop')))
      .map((one) => {
        const shown = one.closest('label') ?? one;
        return {
          box: shown.getBoundingClientRect(),
          words:
            (one.getAttribute('aria-label') ?? shown.textContent).trim().slice(0, 40) || one.id,
        };
      });
    for (const one of sticking) one.style.removeProperty('position');
    for (const one of document.querySelectorAll('[data-stop]')) one.removeAttribute('data-stop');
    return all.flatMap((to, i) => {
      const from = all[i - 1];
      if (from === undefined) return [];
      const [a, b] = [from.box, to.box];
      const above = b.bottom <= a.top + 4;
      // To the top of the next column is forward.
      const nextColumn = b.left >= a.right - 4;
      const sameLine =
        Math.min(a.bottom, b.bottom) - Math.max(a.top, b.top) > 0.6 * Math.min(a.height, b.height);
      const back = sameLine && b.right <= a.left + 4;
      return (above && !nextColumn) || back ? [`from ${from.words} back to ${to.words}`] : [];
    });
  }, within);
