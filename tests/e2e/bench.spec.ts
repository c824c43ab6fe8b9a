import type { Locator } from '@playwright/test';
import { expect, test } from './fixtures.ts';
import { simulationPages } from './pages.ts';

/**
 * The bench: whatever is moved, the picture and what is said of it are in sight with it, whole, in
 * every stage and on every screen.
 */
const VISITS = [
  { on: { width: 390, height: 664 }, thenOn: [{ width: 1366, height: 768 }] },
  {
    on: { width: 844, height: 390 },
    thenOn: [
      { width: 1920, height: 1080 },
      // A small phone on its side.
      { width: 667, height: 375 },
    ],
  },
];
/** Rounding of the browser's own layout. */
const SLACK = 1;
/** What the lines of a chart have at the least once the answer is out: a thumb's breadth and a half [px]. */
const LEAST_PLOT = 60;

/**
 * Brings each control of the stage that can be pressed, typed into or moved into view, as the browser
 * does for one that gets the focus, and names what is not in sight with it, whole. In one visit: a
 * round trip for each control takes longer than all the looking.
 */
async function expectAllInSight(sim: Locator, where: string): Promise<void> {
  const { looked, hidden } = await sim.evaluate((section, slack) => {
    const picture = section.querySelector('.sim-picture');
    const says = section.querySelector('.sim-picture > .live-text');
    const controls = [
      ...section.querySelectorAll('.sim-controls :is(input, button, select, summary)'),
    ].filter((one) => one.checkVisibility() && one.getClientRects().length > 0);
    const hidden: string[] = [];
    for (const control of controls) {
      const name = control.getAttribute('aria-label') ?? (control.id || control.textContent.trim());
      control.scrollIntoView({ block: 'nearest' });
      const inside = (what: string, one: Element | null) => {
        const box = one?.getBoundingClientRect();
        const whole =
          box &&
          box.top >= -slack &&
          box.left >= -slack &&
          box.bottom <= innerHeight + slack &&
          box.right <= innerWidth + slack;
        if (whole) return;
        const place = box
          ? `from ${Math.round(box.top)} to ${Math.round(box.bottom)} of ${innerHeight} px`
          : 'nowhere';
        hidden.push(`${name}: ${what} ${place}`);
      };
      inside('the picture', picture);
      if (says) inside('what is said', says);
      // A radio button and its words are one target.
      const target = control.closest('label') ?? control;
      inside('the control', target);
      const seen = picture?.getBoundingClientRect() ?? new DOMRect();
      const here = target.getBoundingClientRect();
      const covered =
        here.top < seen.bottom - slack &&
        here.bottom > seen.top + slack &&
        here.left < seen.right - slack &&
        here.right > seen.left + slack;
      if (covered) {
        hidden.push(
          `${name}: from ${Math.round(here.top)} px under the picture, which ends at ${Math.round(seen.bottom)}`,
        );
      }
      // On a phone Run stands at the foot of the screen, over what passes.
      const go = section.querySelector('.sim-go');
      if (go && !go.contains(control) && here.bottom > go.getBoundingClientRect().top + slack) {
        const stacked = go.getBoundingClientRect().left < here.right;
        if (stacked) hidden.push(`${name}: to ${Math.round(here.bottom)} px, under Run`);
      }
    }
    return { looked: controls.length, hidden };
  }, SLACK);
  expect(looked, where).toBeGreaterThan(0);
  expect(hidden, where).toEqual([]);
}

/**
 * Letters of a picture stay in the picture's column, off the controls; and the lines of a chart have a plot to be read
 * in, not a stripe.
 */
async function expectApart(sim: Locator, where: string): Promise<void> {
  const wrong = await sim.evaluate((section, least) => {
    const picture = section.querySelector('.sim-picture');
    const right = (picture?.getBoundingClientRect().right ?? 0) + 2;
    const shown = (one: Element) => one.checkVisibility() && one.getClientRects().length > 0;
    const out = [...section.querySelectorAll('.sim-picture svg text')]
      .filter((text) => shown(text) && text.getBoundingClientRect().right > right)
      .map((text) => `${text.textContent} sticks out of the picture`);
    const low = [...section.querySelectorAll('.sim-picture .chart .axis')]
      .filter(() => !section.matches('.sim-asking'))
      .filter((axis) => shown(axis) && axis.getBoundingClientRect().height < least)
      .map((axis) => `a plot of ${Math.round(axis.getBoundingClientRect().height)} px`);
    return [...out, ...low];
  }, LEAST_PLOT);
  expect(wrong, where).toEqual([]);
}

/**
 * A prediction as it stands before anybody has scrolled in it: Run is on the screen and lies neither on the question nor
 * on an answer. On its side a phone shows all of it, picture, answers and confidence.
 */
async function expectAsked(sim: Locator, all: boolean, where: string): Promise<void> {
  const hidden = await sim.evaluate(
    (section, { all, slack }) => {
      const go = section.querySelector('.sim-go')?.getBoundingClientRect() ?? new DOMRect();
      const least = [...section.querySelectorAll('.sim-picture, .choice-stack legend, .sim-go')];
      const rest = section.querySelectorAll(all ? '.sim-controls label' : '.choice-stack label');
      return [...least, ...rest].flatMap((one) => {
        const { top, left, bottom, right } = one.getBoundingClientRect();
        const foot = Math.round(bottom);
        const name = one.textContent.trim().slice(0, 40) || one.className;
        if (top < -slack || bottom > innerHeight + slack) {
          return [`${name}: from ${Math.round(top)} to ${foot} of ${innerHeight} px`];
        }
        const under = bottom > go.top + slack && left < go.right && right > go.left;
        return under && !one.matches('.sim-go') ? [`${name}: to ${foot} px, under Run`] : [];
      });
    },
    { all, slack: SLACK },
  );
  expect(hidden, where).toEqual([]);
}

/** The picture, what is said and the head of the stage, where a change of stage has left the page. */
async function expectHeld(sim: Locator, where: string): Promise<void> {
  const { picture, head, height } = await sim.evaluate((section) => {
    const box = (selector: string) => {
      const { top, left, bottom, right } =
        section.querySelector(selector)?.getBoundingClientRect() ?? new DOMRect();
      return { top, left, bottom, right };
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
  // Below the picture, or beside it.
  expect(
    head.top,
    `${where}: the head of the stage is not under the picture`,
  ).toBeGreaterThanOrEqual((head.left < picture.right ? picture.bottom : 0) - SLACK);
}

// Each stage is come to on a phone, where a change of stage can scroll the picture away, and then looked at
// on a desk: opening a page and waking its simulations is what takes the time.
for (const { address, ids } of simulationPages) {
  for (const { on, thenOn } of VISITS) {
    const sizes = [on, ...thenOn].map(({ width, height }) => `${width} x ${height}`).join(' and ');
    test(`${address} at ${sizes}: picture, words and controls together`, async ({ page }) => {
      test.setTimeout(120_000);
      await page.setViewportSize(on);
      await page.goto(address);
      for (const id of ids) {
        const sim = page.locator(`#${id}`);
        const resizedTo = async (size: typeof on) => {
          await page.setViewportSize(size);
          // Pictures take their measure from the page, a frame later; and the page is another one.
          await sim.evaluate(async (section) => {
            await new Promise((done) => requestAnimationFrame(() => requestAnimationFrame(done)));
            // Where a change of stage leaves a phone: its head has gone by.
            const low = innerHeight < 480 ? section.querySelector('.sim-bench') : null;
            (low ?? section).scrollIntoView({ block: 'start' });
          });
        };
        const inSight = async (stage: string) => {
          await expectAllInSight(sim, `${id}, ${stage}, ${on.width} x ${on.height}`);
          for (const size of thenOn) {
            await resizedTo(size);
            await expectAllInSight(sim, `${id}, ${stage}, ${size.width} x ${size.height}`);
            await expectApart(sim, `${id}, ${stage}, ${size.width} x ${size.height}`);
          }
          await resizedTo(on);
          await expectApart(sim, `${id}, ${stage}, ${on.width} x ${on.height}`);
        };
        await sim.evaluate((section) => section.scrollIntoView({ block: 'start' }));
        await expect(sim).toHaveAttribute('data-ready', 'true');
        const low = on.height === 390;
        await expectAsked(sim, low, `${id}, predict, ${on.width} x ${on.height}`);
        for (const size of thenOn.filter(({ height }) => height < 480)) {
          await resizedTo(size);
          await sim.evaluate((section) => section.scrollIntoView({ block: 'start' }));
          await expectAsked(sim, true, `${id}, predict, ${size.width} x ${size.height}`);
          await resizedTo(on);
        }
        await inSight('predict');
        await sim.locator('.choice-stack input').first().press('Space');
        await sim.locator('.choice-row input').first().press('Space');
        const run = sim.locator('button[type="submit"]');
        await run.press('Enter');
        const onward = sim.getByRole('button', { name: 'On to the tasks' });
        await expect(sim.locator('.stage-head', { hasText: 'What it did' })).toBeFocused();
        await expectHeld(sim, `${id}, compare`);
        // Upright, what came out is read on the way to what comes next.
        if (low) await expect(onward, `${id}, compare`).toBeInViewport({ ratio: 1 });
        await inSight('compare');
        await onward.press('Enter');
        await expect(sim.locator('.stage-head', { hasText: /^Task 1 of/ })).toBeFocused();
        await expectHeld(sim, `${id}, tasks`);
        const hint = sim.getByRole('button', { name: 'Give me a hint' });
        if (low) await expect(hint, `${id}, tasks`).toBeInViewport({ ratio: 1 });
        await inSight('tasks');
        await hint.press('Enter');
        await sim.evaluate((section) => section.querySelector('.sim-bench')?.scrollIntoView());
        await expect(sim.locator('.task-result'), `${id}, hint`).toBeInViewport({ ratio: 1 });
        await sim.getByRole('button', { name: 'Your controls' }).press('Enter');
        await expect(sim.locator('.stage-head', { hasText: 'Your controls' })).toBeFocused();
        await expectHeld(sim, `${id}, your controls`);
        await sim.locator('.more > summary').evaluateAll((all) => {
          for (const one of all) (one.parentElement as HTMLDetailsElement).open = true;
        });
        await inSight('your controls');
      }
    });
  }
}
