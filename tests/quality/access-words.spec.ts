// What a screen reader is given of each simulation in each stage, by rules that came of listening to all of them: everything has a name,
// nothing is said twice in a row, a value has its unit, what moves is said, and not faster than anybody could follow.
import type { Locator } from '@playwright/test';
import { expect, test } from '../e2e/fixtures.ts';
import { simulationPages } from '../e2e/pages.ts';
import { keepFigures, looked, none } from './figures.ts';
import { openFolds, openOwnControls, walkStages } from './stages.ts';

/** Numbers that count something which their label names: "of 100 cars", "items", "in your money". */
const COUNTED = /100 cars|in your money|loaner|You keep|in a year|Days from|a second|[Ii]tems/u;

/** What breaks the rules in one stage. */
const unsaid = (sim: Locator, counted: RegExp) =>
  sim.evaluate((section, source) => {
    const wrong: string[] = [];
    const named = (one: Element) =>
      (
        one.getAttribute('aria-label') ??
        (one.getAttribute('aria-labelledby') ?? '')
          .split(' ')
          .map((id) => document.getElementById(id)?.textContent ?? '')
          .join(' ')
      ).trim();
    const shown = (one: Element) =>
      one.checkVisibility() && one.closest('[aria-hidden="true"]') === null;
    for (const picture of section.querySelectorAll('svg')) {
      if (!shown(picture)) continue;
      if (named(picture) === '')
        wrong.push(`a picture without a name: ${picture.getAttribute('class') ?? ''}`);
      else if (picture.getAttribute('role') === 'img' && named(picture).length < 8)
        wrong.push(`a picture called “${named(picture)}”`);
    }
    for (const figure of section.querySelectorAll('figure')) {
      if (shown(figure) && named(figure) === '' && figure.querySelector('figcaption') === null)
        wrong.push('a figure without a name');
    }
    for (const chart of section.querySelectorAll('figure.chart')) {
      if (!shown(chart)) continue;
      const takeaway = chart.querySelector('.chart-takeaway')?.textContent.trim() ?? '';
      if (!/\w.*[.!?)]$/u.test(takeaway))
        wrong.push(`${named(chart)} says no sentence: ${takeaway}`);
      if (chart.querySelector('.data-table') === null) wrong.push(`${named(chart)} has no table`);
    }
    for (const slider of section.querySelectorAll('input[type="range"], [role="slider"]')) {
      if (!shown(slider)) continue;
      const label =
        slider.getAttribute('aria-label') ??
        (slider as HTMLInputElement).labels?.[0]?.textContent ??
        '';
      const value = slider.getAttribute('aria-valuetext') ?? '';
      const bare = /^[−-]?[\d.,]+$/u.test(value);
      if (label.trim() === '') wrong.push('a slider without a name');
      if (value === '' || (bare && !new RegExp(source, 'u').test(label)))
        wrong.push(`${label}: ${value} has no unit`);
    }
    for (const list of section.querySelectorAll('.share-list li')) {
      if (!/\d|far down|cannot/u.test(list.textContent))
        wrong.push(`${list.textContent} has no share`);
    }
    const texts = document.createTreeWalker(section, NodeFilter.SHOW_TEXT);
    for (let node = texts.nextNode(); node !== null; node = texts.nextNode()) {
      const words = node.nodeValue ?? '';
      // Left over from a sum that failed, and a word that was written twice.
      const [junk] = /NaN|undefined|\[object|\bnull\b|\b(\w{2,}) \1\b/u.exec(words) ?? [];
      if (junk !== undefined) wrong.push(`says “${junk}”`);
    }
    return wrong;
  }, counted.source);

const SECOND = 1000;
/** Twice a second, and the one that was on its way when the second began. */
const MOST = 3;
/** After which the last sentence has been said, at that pace [ms]. */
const LAST_WORD = 650;

/** Moves a slider to and fro for a while, faster than a hand; how often the state was told meanwhile. It ends elsewhere than it began. */
async function swing(element: Element, lasts: number): Promise<number> {
  const range = element as HTMLInputElement;
  const status = range.closest('.sim')?.querySelector('.sim-picture > [role="status"]');
  let times = 0;
  const watch = new MutationObserver(() => (times += 1));
  if (status) watch.observe(status, { subtree: true, childList: true, characterData: true });
  const [min, max, first] = [Number(range.min), Number(range.max), Number(range.value)];
  const put = (value: number) => {
    range.value = String(value);
    range.dispatchEvent(new Event('input', { bubbles: true }));
  };
  const began = performance.now();
  for (let n = 0; performance.now() - began < lasts; n += 1) {
    put(min + ((max - min) * (n % 21)) / 20);
    await new Promise((done) => setTimeout(done, 16));
  }
  watch.disconnect();
  put(first - min > max - first ? min : max);
  return times;
}

/** Everything that is said of the state, in one string. */
const said = (sim: Locator) =>
  sim.evaluate((section) =>
    [
      ...[
        ...section.querySelectorAll('[role="status"], desc, .chart-takeaway, svg[aria-label]'),
      ].map((one) => one.getAttribute('aria-label') ?? one.textContent),
      ...[...section.querySelectorAll('.sim-picture [role="slider"]')].map((one) =>
        one.getAttribute('aria-valuetext'),
      ),
    ].join(' | '),
  );

test('everything in a simulation has a name, a unit and a sentence', async ({ page }) => {
  test.setTimeout(900_000);
  const wrong: string[] = [];
  let stages = 0;
  for (const { address, ids } of simulationPages) {
    for (const id of ids) {
      await page.goto(address);
      await walkStages(page, id, async (stage, sim) => {
        if (stage === 'run') return;
        stages += 1;
        await openFolds(sim);
        wrong.push(...(await unsaid(sim, COUNTED)).map((one) => `${id}, ${stage}: ${one}`));
      });
    }
  }
  keepFigures('access-words-names', [
    looked('stages listened to', stages, 27 * 4),
    none('pictures, sliders and lists that leave something unsaid, and words said twice', wrong),
  ]);
  expect(wrong).toEqual([]);
});

test('what a control moves is said, at most twice a second', async ({ page }) => {
  test.setTimeout(900_000);
  const wrong = { silent: [] as string[], flooding: [] as string[] };
  let moved = 0;
  for (const { address, ids } of simulationPages) {
    for (const id of ids) {
      await page.goto(address);
      const sim = await openOwnControls(page, id);
      const before = await said(sim);
      const [slider] = await sim.locator('.sim-controls input[type="range"]').all();
      if (slider) {
        moved += 1;
        const times = await slider.evaluate(swing, SECOND);
        if (times > MOST) wrong.flooding.push(`${id}: ${times} times in a second`);
      }
      const others = sim.locator(
        '.sim-controls :is(button[aria-pressed], input[type="radio"]:not(:checked), input[type="checkbox"]):visible',
      );
      await page.waitForTimeout(LAST_WORD);
      let heard = (await said(sim)) !== before;
      for (let i = 0; !heard && i < Math.min(6, await others.count()); i += 1) {
        await others.nth(i).press('Space');
        await page.waitForTimeout(LAST_WORD);
        heard = (await said(sim)) !== before;
      }
      if (!heard) wrong.silent.push(id);
    }
  }
  keepFigures('access-words-moves', [
    looked('simulations with a slider that was swung for a second', moved, 15),
    none('simulations that say nothing of what was moved', wrong.silent),
    none('simulations that speak more than twice a second', wrong.flooding),
  ]);
  expect(wrong).toEqual({ silent: [], flooding: [] });
});
