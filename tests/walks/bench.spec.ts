/**
 * The bench: each simulation is walked from its prediction to your own controls, by the keyboard alone on a phone, and on
 * the way everything that has to hold in every stage is looked at on every screen. One walk for all of it, since opening a
 * page and waking its simulations is what takes the time.
 */
import type { Locator, Page } from '@playwright/test';
import { expect, test } from '../e2e/fixtures.ts';
import { expectAllInSight, expectApart, expectAsked, expectHeld } from './in-sight.ts';
import { predictByKeys, tabTo } from './keys.ts';
import { expectPageReadable, expectReadable, readOn } from '../e2e/letters.ts';
import { expectNamesApart } from '../e2e/names.ts';
import { simulationPages } from '../e2e/pages.ts';

interface Screen {
  readonly width: number;
  readonly height: number;
}
/** Come to on a phone, where a change of stage can scroll the picture away, and then looked at on a desk. */
const UPRIGHT = { on: { width: 390, height: 664 }, thenOn: [{ width: 1366, height: 768 }] };
const ON_ITS_SIDE = {
  on: { width: 844, height: 390 },
  thenOn: [
    { width: 1920, height: 1080 },
    // A small phone on its side.
    { width: 667, height: 375 },
  ],
};
const named = ({ width, height }: Screen) => `${width} x ${height}`;

test('some built page holds a simulation', () => {
  // Without this, a change of markup would leave the tests below with nothing to look at.
  expect(simulationPages.length).toBeGreaterThan(0);
});

/** Where a change of stage leaves it: on a low screen its head has gone by. */
const comeBack = (sim: Locator) =>
  sim.evaluate((section) => {
    const low = innerHeight < 480 ? section.querySelector('.sim-bench') : null;
    (low ?? section).scrollIntoView({ block: 'start' });
  });

async function resize(page: Page, sim: Locator, to: Screen): Promise<void> {
  await page.setViewportSize(to);
  // Pictures take their measure from the page, a frame later; and the page is another one.
  await sim.evaluate(
    () => new Promise((done) => requestAnimationFrame(() => requestAnimationFrame(done))),
  );
  await comeBack(sim);
}

type Look = (stage: string) => Promise<void>;

/** What holds in every stage, on each of the screens; it ends on the first. */
const lookOn =
  (page: Page, sim: Locator, id: string, { on, thenOn }: typeof UPRIGHT): Look =>
  async (stage) => {
    const here = (size: Screen) => `${id}, ${stage}, ${named(size)}`;
    await expectAllInSight(sim, here(on));
    for (const size of [...thenOn, on]) {
      await resize(page, sim, size);
      if (size !== on) await expectAllInSight(sim, here(size));
      await expectApart(sim, here(size));
      if (!readOn(size.width)) continue;
      await expectReadable(sim.locator('.sim-bench'), size.width, here(size));
      const below = sim.locator('.sim-below');
      if ((await below.locator('svg').count()) === 0) continue;
      // A picture that is out of sight is drawn for the screen as it was.
      await below.evaluate(async (one) => {
        for (const svg of one.querySelectorAll('svg')) {
          svg.scrollIntoView({ block: 'center' });
          await new Promise((done) => requestAnimationFrame(() => requestAnimationFrame(done)));
        }
      });
      await expectReadable(below, size.width, here(size));
    }
    await comeBack(sim);
  };

const head = (sim: Locator, words: string | RegExp) =>
  sim.locator('.stage-head', { hasText: words });

async function open(page: Page, id: string): Promise<Locator> {
  const sim = page.locator(`#${id}`);
  await sim.evaluate((section) => section.scrollIntoView({ block: 'start' }));
  await expect(sim).toHaveAttribute('data-ready', 'true');
  return sim;
}

async function openFolds(sim: Locator): Promise<void> {
  await sim.locator('.more > summary').evaluateAll((all) => {
    for (const one of all) (one.parentElement as HTMLDetailsElement).open = true;
  });
}

for (const { address, ids } of simulationPages) {
  test(`${address} by keyboard alone on a phone, upright: all in sight, readable, names apart`, async ({
    page,
  }) => {
    test.setTimeout(150_000);
    await page.setViewportSize(UPRIGHT.on);
    await page.goto(address);
    for (const id of ids) await open(page, id);
    await expectPageReadable(page, UPRIGHT.on.width);
    for (const id of ids) {
      const sim = await open(page, id);
      const look = lookOn(page, sim, id, UPRIGHT);
      await expectAsked(sim, `${id}, predict`);
      await look('predict');
      await predictByKeys(page, sim);

      // Prediction and outcome; the heading that has the focus reads them out. Whoever lost the focus to the page would
      // hear nothing and start at the top.
      await expect(head(sim, 'What it did')).toBeFocused();
      const told = sim.locator(`#${id}-compare`);
      await expect(head(sim, 'What it did')).toHaveAttribute('aria-describedby', `${id}-compare`);
      await expect(told).toContainText('You said');
      // In its own words, not the option word for word alone.
      await expect(told).toContainText(/The model says.{20,}/s);
      // The state in words is also spoken where it changes: see LiveText.
      await expect(sim.locator('.sim-picture > [role="status"]')).not.toBeEmpty();
      // The pictures below are fetched with the answer.
      await expect(sim.locator('.sim-below > .sim-stage')).toHaveCount(0);
      await expectHeld(sim, `${id}, compare`);
      await look('compare');

      await tabTo(page, /^On to the tasks$/);
      await page.keyboard.press('Enter');
      await expect(head(sim, /^Task 1 of \d/)).toBeFocused();
      await expectHeld(sim, `${id}, tasks`);
      await look('tasks');
      await tabTo(page, /^Give me a hint$/);
      await page.keyboard.press('Enter');
      await expect(sim.locator('.task-result')).not.toBeEmpty();
      await sim.evaluate((section) => section.querySelector('.sim-bench')?.scrollIntoView());
      await expect(sim.locator('.task-result'), `${id}, hint`).toBeInViewport({ ratio: 1 });

      // Backwards to the way on, which stands in the simulation's head.
      await tabTo(page, /^Your controls$/, 'Shift+Tab');
      await page.keyboard.press('Enter');
      await expect(head(sim, 'Your controls')).toBeFocused();
      await expectHeld(sim, `${id}, your controls`);
      // From the heading the first stop is a control.
      await page.keyboard.press('Tab');
      await expect(sim.locator('.sim-controls :focus')).toHaveCount(1);
      await openFolds(sim);
      await look('your controls');
      await expectNamesApart(sim, id);
      await sim.getByRole('button', { name: 'Predict again' }).press('Enter');
      await expect(sim.locator('.choice-stack legend')).toBeFocused();
    }
  });

  const { on, thenOn } = ON_ITS_SIDE;
  test(`${address} at ${[on, ...thenOn].map(named).join(' and ')}: all in sight, readable`, async ({
    page,
  }) => {
    test.setTimeout(150_000);
    await page.setViewportSize(on);
    await page.goto(address);
    for (const id of ids) await open(page, id);
    for (const size of [...thenOn, on]) {
      await page.setViewportSize(size);
      await expectPageReadable(page, size.width);
    }
    for (const id of ids) {
      const sim = await open(page, id);
      const look = lookOn(page, sim, id, ON_ITS_SIDE);
      await expectAsked(sim, `${id}, predict`);
      for (const size of thenOn.filter(({ height }) => height < 480)) {
        await page.setViewportSize(size);
        await open(page, id);
        await expectAsked(sim, `${id}, predict, ${named(size)}`);
      }
      await resize(page, sim, on);
      await look('predict');
      await sim.locator('.choice-stack input').first().press('Space');
      await sim.locator('.choice-row input').first().press('Space');
      await sim.locator('button[type="submit"]').press('Enter');
      const onward = sim.getByRole('button', { name: 'On to the tasks' });
      await expect(head(sim, 'What it did')).toBeFocused();
      await expect(sim.locator('.sim-below > .sim-stage')).toHaveCount(0);
      await expectHeld(sim, `${id}, compare`);
      // Upright, what came out is read on the way to what comes next.
      await expect(onward, `${id}, compare`).toBeInViewport({ ratio: 1 });
      await look('compare');
      await onward.press('Enter');
      await expect(head(sim, /^Task 1 of/)).toBeFocused();
      await expectHeld(sim, `${id}, tasks`);
      const hint = sim.getByRole('button', { name: 'Give me a hint' });
      await expect(hint, `${id}, tasks`).toBeInViewport({ ratio: 1 });
      await look('tasks');
      await hint.press('Enter');
      await sim.evaluate((section) => section.querySelector('.sim-bench')?.scrollIntoView());
      await expect(sim.locator('.task-result'), `${id}, hint`).toBeInViewport({ ratio: 1 });
      await sim.getByRole('button', { name: 'Your controls' }).press('Enter');
      await expect(head(sim, 'Your controls')).toBeFocused();
      await expectHeld(sim, `${id}, your controls`);
      await openFolds(sim);
      await look('your controls');
    }
  });
}

for (const id of ['engagement', 'whole-car'])
  for (const { on } of [UPRIGHT, ON_ITS_SIDE])
    test(`${id} at ${named(on)}: the picture is whole while its player is still on the way, and stays where it is`, async ({
      page,
    }) => {
      let arrive = () => {};
      const asked = new Promise<void>((done) => {
        void page.route(/\/Hand\.[^/]*\.js$/, async (route) => {
          done();
          await new Promise<void>((go) => (arrive = go));
          await route.continue();
        });
      });
      await page.setViewportSize(on);
      const where = simulationPages.find(({ ids }) => ids.includes(id));
      await page.goto(where?.address ?? '');
      const sim = await open(page, id);
      await sim.locator('.choice-stack input').first().press('Space');
      await sim.locator('.choice-row input').first().press('Space');
      await sim.locator('button[type="submit"]').press('Enter');
      await asked;
      await expectHeld(sim, `${id}, without its player`);
      arrive();
      await expect(sim.locator('.player')).toBeVisible();
      await expectHeld(sim, `${id}, with its player`);
    });
