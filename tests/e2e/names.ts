import type { Locator } from '@playwright/test';
import { expect } from './fixtures.ts';

/** A font's box is taller than its letters: names whose boxes share less than this [px] do not touch. */
const TOUCH = { across: 2, down: 6 };
/** How far a line may run into the box of a name [px] before it runs through its letters. */
const GRAZE = { across: 4, down: 5 };
/** Where no place in the plot is free at some stop of a slider; as a stage opens there is none. The list only shrinks. */
const STILL_THROUGH: readonly string[] = [
  'a tie through now',
  'a line through to take off# gentle to firm',
  'a tie through thin#gap law ends',
  'a line through crack # gpm#hole # gpm',
  'a line through needed: idleto # rpm',
  'a line through holds from # psi',
  'a line through holds from # kPa',
];

/**
 * No name in the chart of a simulation touches another or has a line through it, whatever is set in your controls, in either
 * unit system. Asked on the narrowest screen that the bench is made for: what finds its place there finds it on a wide one.
 */
export async function expectNamesApart(sim: Locator, where: string): Promise<void> {
  const touching = await sim.evaluate(
    async (section, { least, graze }) => {
      const found = new Map<string, string>();
      const settled = () => new Promise((done) => requestAnimationFrame(() => setTimeout(done)));
      const look = (stop: string, when = '') => {
        for (const svg of section.querySelectorAll('.sim-picture .chart svg')) {
          const names = [...svg.querySelectorAll('text')]
            .map((text) => ({ words: text.textContent, box: text.getBoundingClientRect() }))
            .filter(({ box }) => box.width > 0);
          names.forEach(({ words: one, box: a }, i) => {
            for (const { words: other, box: b } of names.slice(i + 1)) {
              const across = Math.min(a.right, b.right) - Math.max(a.left, b.left);
              const down = Math.min(a.bottom, b.bottom) - Math.max(a.top, b.top);
              if (across > least.across && down > least.down) {
                found.set(`${one} and ${other}`.replace(/[\d.,−-]+/gu, '#'), stop);
              }
            }
          });
          // Names that chose their place; those at the ends stand outside of the plot.
          const inPlot = [...svg.querySelectorAll<SVGTextElement>('.mark-name, .band-name')].map(
            (text) => ({ words: text.textContent, box: text.getBoundingClientRect() }),
          );
          for (const line of svg.querySelectorAll<SVGPathElement>('path.line, path.leader')) {
            const toScreen = line.getScreenCTM();
            const length = line.getTotalLength();
            const what = line.classList.contains('leader') ? 'a tie' : 'a line';
            for (let at = 0; toScreen && at < length; at += 3) {
              const { x, y } = line.getPointAtLength(at).matrixTransform(toScreen);
              for (const { words, box } of inPlot) {
                const through =
                  x > box.left + graze.across &&
                  x < box.right - graze.across &&
                  y > box.top + graze.down &&
                  y < box.bottom - graze.down;
                if (through)
                  found.set(`${when}${what} through ${words}`.replace(/[\d.,−-]+/gu, '#'), stop);
              }
            }
          }
        }
      };
      const sliders = [
        ...section.querySelectorAll<HTMLInputElement>('.sim-controls input[type="range"]'),
      ];
      const move = async (slider: HTMLInputElement, stops: number) => {
        const before = slider.value;
        const [min, max] = [Number(slider.min), Number(slider.max)];
        for (let i = 0; i <= stops; i += 1) {
          slider.value = String(min + ((max - min) * i) / stops);
          slider.dispatchEvent(new Event('input', { bubbles: true }));
          await settled();
          look(`${slider.id} at ${slider.value}`);
        }
        slider.value = before;
        slider.dispatchEvent(new Event('input', { bubbles: true }));
      };
      for (const units of ['us', 'si']) {
        document.documentElement.dataset['units'] = units;
        await settled();
        look('as it opens', 'at once, ');
        for (const slider of sliders) await move(slider, 6);
      }
      const [first] = sliders;
      for (const radio of section.querySelectorAll<HTMLInputElement>(
        '.sim-controls input[type="radio"]',
      )) {
        radio.click();
        await settled();
        if (first) await move(first, 4);
      }
      // Numbers have no-break spaces in them.
      return [...found].map(([names, where]) => `${names}: ${where}`.replace(/\s/gu, ' '));
    },
    { least: TOUCH, graze: GRAZE },
  );
  expect(
    touching.filter((one) => !STILL_THROUGH.some((known) => one.startsWith(`${known}:`))),
    where,
  ).toEqual([]);
}
