import type { Locator } from '@playwright/test';
import { expect } from './fixtures.ts';

/** A font's box is taller than its letters: names whose boxes share less than this [px] do not touch. */
const TOUCH = { across: 2, down: 6 };

/**
 * No name in the chart of a simulation touches another, whatever is set in your controls, in either unit system. Asked on
 * the narrowest screen that the bench is made for: what finds its place there finds it on a wide one.
 */
export async function expectNamesApart(sim: Locator, where: string): Promise<void> {
  const touching = await sim.evaluate(async (section, least) => {
    const found = new Map<string, string>();
    const settled = () => new Promise((done) => requestAnimationFrame(() => setTimeout(done)));
    const look = (where: string) => {
      for (const svg of section.querySelectorAll('.sim-picture .chart svg')) {
        const names = [...svg.querySelectorAll('text')]
          .map((text) => ({ words: text.textContent, box: text.getBoundingClientRect() }))
          .filter(({ box }) => box.width > 0);
        names.forEach(({ words: one, box: a }, i) => {
          for (const { words: other, box: b } of names.slice(i + 1)) {
            const across = Math.min(a.right, b.right) - Math.max(a.left, b.left);
            const down = Math.min(a.bottom, b.bottom) - Math.max(a.top, b.top);
            if (across > least.across && down > least.down) {
              found.set(`${one} and ${other}`.replace(/[\d.,−-]+/gu, '#'), where);
            }
          }
        });
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
    return [...found].map(([names, where]) => `${names}: ${where}`);
  }, TOUCH);
  expect(touching, where).toEqual([]);
}
