import type { Locator } from '@playwright/test';
import { expect, test } from './fixtures.ts';
import { simulationPages } from './pages.ts';

/**
 * The bench: whatever is moved, the picture and what is said of it are in sight with it, whole, in
 * every stage and on every screen.
 */
const SCREENS = [
  { width: 390, height: 664 },
  { width: 844, height: 390 },
  { width: 1366, height: 768 },
  { width: 1920, height: 1080 },
];
/** Rounding of the browser's own layout. */
const SLACK = 1;

/**
 * Brings a control into view as the browser does for one that gets the focus, and names what is not in
 * sight with it, whole.
 */
async function hiddenBy(control: Locator): Promise<readonly string[]> {
  return control.evaluate((element, slack) => {
    element.scrollIntoView({ block: 'nearest' });
    const sim = element.closest('.sim');
    const picture = sim?.querySelector('.sim-picture');
    const says = sim?.querySelector('.sim-picture > .live-text');
    if (!picture) return ['there is no picture'];
    const hidden: string[] = [];
    const inside = (what: string, one: Element) => {
      const { top, bottom, left, right } = one.getBoundingClientRect();
      const whole =
        top >= -slack &&
        left >= -slack &&
        bottom <= innerHeight + slack &&
        right <= innerWidth + slack;
      if (!whole)
        hidden.push(
          `${what} from ${Math.round(top)} to ${Math.round(bottom)} of ${innerHeight} px`,
        );
    };
    inside('the picture', picture);
    if (says) inside('what is said', says);
    // A radio button and its words are one target.
    const target = element.closest('label') ?? element;
    inside('the control', target);
    const [seen, here] = [picture.getBoundingClientRect(), target.getBoundingClientRect()];
    const covered =
      here.top < seen.bottom - slack &&
      here.bottom > seen.top + slack &&
      here.left < seen.right - slack &&
      here.right > seen.left + slack;
    if (covered)
      hidden.push(
        `the control from ${Math.round(here.top)} px lies under the picture, which ends at ${Math.round(seen.bottom)}`,
      );
    return hidden;
  }, SLACK);
}

/** Every control of the stage that can be pressed, typed into or moved. */
async function expectAllInSight(sim: Locator, where: string): Promise<void> {
  const controls = sim.locator('.sim-controls :is(input, button, select, summary):visible');
  const count = await controls.count();
  expect(count, where).toBeGreaterThan(0);
  for (let i = 0; i < count; i += 1) {
    const control = controls.nth(i);
    const name = await control.evaluate(
      (one) => one.getAttribute('aria-label') ?? (one.id || one.textContent.trim()),
    );
    expect(await hiddenBy(control), `${where}, ${name}`).toEqual([]);
  }
}

/** The picture, what is said and the head of the stage, where a change of stage has left the page. */
async function expectHeld(sim: Locator, where: string): Promise<void> {
  const { picture, head, height } = await sim.evaluate((section) => {
    const box = (selector: string) => {
      const { top, bottom } =
        section.querySelector(selector)?.getBoundingClientRect() ?? new DOMRect();
      return { top, bottom };
    };
    return {
      picture: box('.sim-picture'),
      head: box('.sim-controls :is(.stage-head, legend)'),
      height: innerHeight,
    };
  });
  expect(picture.top, `${where}: the picture begins on the screen`).toBeGreaterThanOrEqual(-SLACK);
  expect(picture.bottom, `${where}: the picture ends on the screen`).toBeLessThanOrEqual(
    height + SLACK,
  );
  expect(head.bottom, `${where}: the head of the stage is on the screen`).toBeLessThanOrEqual(
    height + SLACK,
  );
  expect(head.top, `${where}: the head of the stage is on the screen`).toBeGreaterThanOrEqual(
    -SLACK,
  );
}

for (const { address, ids } of simulationPages) {
  for (const screen of SCREENS) {
    test(`${address} at ${screen.width} x ${screen.height}: picture, words and controls together`, async ({
      page,
    }) => {
      test.setTimeout(120_000);
      await page.setViewportSize(screen);
      await page.emulateMedia({ reducedMotion: 'reduce' });
      await page.goto(address);
      for (const id of ids) {
        const sim = page.locator(`#${id}`);
        await sim.evaluate((section) => section.scrollIntoView({ block: 'start' }));
        await expect(sim).toHaveAttribute('data-ready', 'true');
        await expectAllInSight(sim, `${id}, predict`);
        await sim.locator('.choice-stack input').first().press('Space');
        await sim.locator('.choice-row input').first().press('Space');
        const run = sim.locator('button[type="submit"]');
        await run.press('Enter');
        const onward = sim.getByRole('button', { name: 'On to the tasks' });
        await expect(sim.locator('.stage-head', { hasText: 'What it did' })).toBeFocused();
        await expectHeld(sim, `${id}, compare`);
        await expectAllInSight(sim, `${id}, compare`);
        await onward.press('Enter');
        await expect(sim.locator('.stage-head', { hasText: /^Task 1 of/ })).toBeFocused();
        await expectHeld(sim, `${id}, tasks`);
        await expectAllInSight(sim, `${id}, tasks`);
        await sim.getByRole('button', { name: 'Your controls' }).press('Enter');
        await expect(sim.locator('.stage-head', { hasText: 'Your controls' })).toBeFocused();
        await expectHeld(sim, `${id}, your controls`);
        await sim.locator('.more > summary').evaluateAll((all) => {
          for (const one of all) (one.parentElement as HTMLDetailsElement).open = true;
        });
        await expectAllInSight(sim, `${id}, your controls`);
      }
    });
  }
}
