import type { Page } from '@playwright/test';

/** What WCAG 2.2, 1.4.12 lets a reader set. */
export const SPACING =
  '* { line-height: 1.5 !important; letter-spacing: 0.12em !important; word-spacing: 0.16em !important; } p { margin-block-end: 2em !important; }';

/** What is cut off, what lies over what, and whether the page scrolls sideways, in a part of the page as it is laid out now. */
export const laidOut = (page: Page, part: string, spaced = false) =>
  page.evaluate(
    async ({ part, spacing }) => {
      const sheet = new CSSStyleSheet();
      // What is out of sight is laid out roughly until somebody comes near it.
      sheet.replaceSync(`* { content-visibility: visible !important; } ${spacing}`);
      document.adoptedStyleSheets = [...document.adoptedStyleSheets, sheet];
      await new Promise((done) => requestAnimationFrame(() => requestAnimationFrame(done)));
      const wrong: string[] = [];
      const root = document.documentElement;
      if (root.scrollWidth > root.clientWidth) {
        wrong.push(`scrolls sideways, ${root.scrollWidth} in ${root.clientWidth} px`);
      }
      const where = document.querySelector(part) ?? document.body;
      const named = (one: Element | null) =>
        `${one?.tagName.toLowerCase() ?? ''}.${(one?.getAttribute('class') ?? '').split(' ')[0] ?? ''}`;
      const apart = '.visually-hidden, [hidden], svg, math, [popover], option';
      /** For the ear alone, or not there: nothing of it is seen. */
      const unseen = (one: Element): boolean => {
        if (one.closest(apart) || !one.checkVisibility()) return true;
        for (let at: Element | null = one; at !== null && at !== where; at = at.parentElement) {
          const { clipPath, position } = getComputedStyle(at);
          if (position === 'absolute' && clipPath === 'inset(50%)') return true;
        }
        return false;
      };
      /** In a box of its own that scrolls sideways, as a wide table. */
      const scrolls = (one: Element): boolean => {
        for (let at: Element | null = one; at !== null && at !== where; at = at.parentElement) {
          if (['auto', 'scroll'].includes(getComputedStyle(at).overflowX)) return true;
        }
        return false;
      };
      for (const one of where.querySelectorAll<HTMLElement>('*')) {
        if (unseen(one)) continue;
        const { overflowX, overflowY } = getComputedStyle(one);
        const cuts = (how: string) => how === 'hidden' || how === 'clip';
        const across = cuts(overflowX) && one.scrollWidth > one.clientWidth + 2;
        const down = cuts(overflowY) && one.scrollHeight > one.clientHeight + 2;
        if ((across || down) && one.textContent.trim() !== '') {
          wrong.push(`${named(one)} is cut: ${one.textContent.trim().slice(0, 40)}`);
        }
        // A control whose words stick out of it.
        if (
          one.matches('button:not(.term), .button, summary, select') &&
          one.scrollWidth > one.clientWidth + 2
        ) {
          wrong.push(`${named(one)} is too narrow: ${one.textContent.trim().slice(0, 40)}`);
        }
      }
      const lines: { box: DOMRect; of: Element; words: string }[] = [];
      const walker = document.createTreeWalker(where, NodeFilter.SHOW_TEXT);
      for (let node = walker.nextNode(); node !== null; node = walker.nextNode()) {
        const of = node.parentElement;
        const words = node.nodeValue?.trim() ?? '';
        if (of === null || words === '' || unseen(of)) continue;
        // What sticks to the screen lies over what passes, and a table of its own scrolls by itself.
        if (
          of.closest(
            '.sim-picture, .sim-go, .sheet-make, header, .chart-pad, script, style, noscript, .katex',
          )
        )
          continue;
        const range = document.createRange();
        range.selectNodeContents(node);
        const scroller = scrolls(of);
        for (const box of range.getClientRects()) {
          if (box.width < 2 || box.height < 2) continue;
          if (!scroller && (box.right > root.clientWidth + 2 || box.left < -2)) {
            wrong.push(`off the page: ${words.slice(0, 40)}`);
          }
          if (!scroller) lines.push({ box, of, words });
        }
      }
      lines.sort((a, b) => a.box.top - b.box.top);
      for (const [i, a] of lines.entries()) {
        for (let j = i + 1; j < lines.length; j += 1) {
          const b = lines[j];
          if (b === undefined || b.box.top > a.box.bottom) break;
          if (a.of === b.of) continue;
          const across = Math.min(a.box.right, b.box.right) - Math.max(a.box.left, b.box.left);
          const down = Math.min(a.box.bottom, b.box.bottom) - Math.max(a.box.top, b.box.top);
          // The box of a line is taller than its letters.
          if (across > 3 && down > 0.45 * Math.min(a.box.height, b.box.height)) {
            wrong.push(`“${a.words.slice(0, 30)}” and “${b.words.slice(0, 30)}” overlap`);
          }
        }
      }
      document.adoptedStyleSheets = document.adoptedStyleSheets.filter((one) => one !== sheet);
      return [...new Set(wrong)];
    },
    { part, spacing: spaced ? SPACING : '' },
  );

interface Setting {
  readonly name: string;
  readonly size: { readonly width: number; readonly height: number };
  readonly text?: string;
  readonly spaced?: boolean;
}
/** 1280 x 1024 px at 400 %, the narrowest phone, text twice as large, and a reader's own spacing. */
export const SETTINGS: readonly Setting[] = [
  { name: '320 x 256, as at 400 %', size: { width: 320, height: 256 } },
  { name: '320 px', size: { width: 320, height: 640 } },
  { name: 'text at 200 %', size: { width: 390, height: 664 }, text: '225%' },
  { name: 'spaced on a phone', size: { width: 390, height: 664 }, spaced: true },
  { name: 'spaced on a desk', size: { width: 1280, height: 720 }, spaced: true },
];

/** Every setting in turn, and back to a phone. */
export async function laidOutInEach(page: Page, part: string, where: string): Promise<string[]> {
  const wrong: string[] = [];
  for (const { name, size, text = '', spaced = false } of SETTINGS) {
    await page.setViewportSize(size);
    await page.evaluate((large) => (document.documentElement.style.fontSize = large), text);
    wrong.push(...(await laidOut(page, part, spaced)).map((one) => `${where}, ${name}: ${one}`));
  }
  await page.evaluate(() => (document.documentElement.style.fontSize = ''));
  return wrong;
}
