// What has to be in sight together: picture, words and the control in hand, whole, in every stage and on every screen.
import type { Locator } from '@playwright/test';
import { expect } from '../e2e/fixtures.ts';

/** Rounding of the browser's own layout. */
const SLACK = 1;
/** What the lines of a chart have at the least once the answer is out: a thumb's breadth and a half [px]. */
const LEAST_PLOT = 60;

/**
 * Brings each control of the stage that can be pressed, typed into or moved into view, as the browser
 * does for one that gets the focus, and names what is not in sight with it, whole. In one visit: a
 * round trip for each control takes longer than all the looking.
 */
export async function expectAllInSight(sim: Locator, where: string): Promise<void> {
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
export async function expectApart(sim: Locator, where: string): Promise<void> {
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
 * A prediction as it stands before anybody has scrolled in it: picture, question, answers, how sure one is and Run are on
 * the screen together, and Run lies on none of them.
 */
export async function expectAsked(sim: Locator, where: string): Promise<void> {
  const hidden = await sim.evaluate((section, slack) => {
    const go = section.querySelector('.sim-go')?.getBoundingClientRect() ?? new DOMRect();
    const asked = section.querySelectorAll(
      '.sim-picture, .sim-go, .sim-controls :is(legend, label)',
    );
    return [...asked].flatMap((one) => {
      const { top, left, bottom, right } = one.getBoundingClientRect();
      const foot = Math.round(bottom);
      const name = one.textContent.trim().slice(0, 40) || one.className;
      if (top < -slack || bottom > innerHeight + slack) {
        return [`${name}: from ${Math.round(top)} to ${foot} of ${innerHeight} px`];
      }
      const under = bottom > go.top + slack && left < go.right && right > go.left;
      return under && !one.matches('.sim-go') ? [`${name}: to ${foot} px, under Run`] : [];
    });
  }, SLACK);
  expect(hidden, where).toEqual([]);
}

/** The picture, what is said and the head of the stage, where a change of stage has left the page. */
export async function expectHeld(sim: Locator, where: string): Promise<void> {
  const { picture, head, height } = await sim.evaluate(async (section) => {
    // On a busy machine the page takes some frames to come to rest: read once it has stood for ten of them.
    const foot = () => section.querySelector('.sim-picture')?.getBoundingClientRect().bottom;
    for (let still = 0, tries = 0, before = foot(); still < 10 && tries < 300; tries += 1) {
      await new Promise(requestAnimationFrame);
      still = foot() === before ? still + 1 : 0;
      before = foot();
    }
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
