/** A meeting on the wall, by keyboard alone: votes, sizes, the second window, blank, reload, the code for phones. */
import jsQR from 'jsqr';
import type { Page } from '@playwright/test';
import { axeOn } from './axe.ts';
import { expect, test } from './fixtures.ts';
import { tooSmall, wall, WALL } from './wall.ts';

const MEETING = '/meetings/hot-only/';
const SCENES = 9;
const heading = (page: Page) => page.locator('.stage-scene > h2');
const step = async (page: Page, key = 'PageDown') => page.keyboard.press(key);

async function start(page: Page, address = MEETING): Promise<void> {
  await page.goto(address);
  await expect(page.locator('.meeting-start')).toHaveAttribute('data-ready', 'true');
  await page.getByRole('button', { name: 'Start the meeting' }).press('Enter');
  await expect(wall(page)).toBeVisible();
  await expect(heading(page)).toBeFocused();
}

test('is walked by keyboard: hands, bars, answer, and every letter 24 px or more at 1920 x 1080', async ({
  page,
}) => {
  await page.setViewportSize(WALL);
  await start(page);
  await expect(wall(page).locator('header')).toContainText(`1 of ${SCENES}`);
  for (let press = 0; press < 30; press += 1) {
    if (await page.locator('.stage-simulation').count())
      await expect(page.locator('.stage-simulation .sim:not(.sim-asking)')).toBeVisible();
    await expect.poll(() => tooSmall(page), `press ${press}`).toEqual([]);
    const counters = page.locator('.stage-counter');
    if (await counters.count()) {
      await page.keyboard.press('1');
      await page.keyboard.press('2');
      await page.keyboard.press('2');
      await page.keyboard.press('Shift+Digit1');
      await expect(counters.first().locator('input')).toHaveValue('0');
      await expect(page.locator('.stage-bar')).toHaveCount(0);
      await step(page, 'ArrowRight');
      await expect(page.locator('.stage-bar strong').nth(1)).toHaveText('2');
      await expect(page.locator('.stage-right')).toHaveCount(0);
      expect(await tooSmall(page)).toEqual([]);
      await step(page, ' ');
      await expect(page.locator('.stage-right')).toHaveCount(1);
      await expect(page.locator('.stage-why').first()).toBeVisible();
      expect(await tooSmall(page)).toEqual([]);
    }
    const before = page.url();
    // The case is a page of its own; its letters are another matter.
    if (await page.locator('.scene-case').count()) break;
    await step(page);
    if (page.url() === before) break;
  }
  await page.keyboard.press('End');
  await expect(wall(page).locator('header')).toContainText(`${SCENES} of ${SCENES}`);
  await page.keyboard.press('Home');
  await expect(wall(page).locator('header')).toContainText(`1 of ${SCENES}`);
  await page.keyboard.press('Escape');
  await expect(wall(page)).toHaveCount(0);
  expect(new URL(page.url()).hash).toBe('');
});

test('a simulation opens at the very state, and the next press runs it to the other', async ({
  page,
}) => {
  await page.goto(`${MEETING}#stage-4-1`);
  const cursor = page.locator('.stage-simulation input[type="range"]').first();
  await expect(cursor).toBeVisible();
  const cold = await cursor.inputValue();
  await step(page);
  // 20 °C to 100 °C, in whichever unit the slider has: hot is more.
  await expect.poll(() => cursor.inputValue()).not.toBe(cold);
  await expect
    .poll(async () => Number(await cursor.inputValue()))
    .toBeGreaterThan(Number(cold) + 70);
  // The arrows belong to the slider that has the focus, and a clicker goes on all the same.
  await cursor.focus();
  await step(page, 'ArrowLeft');
  await expect(heading(page)).toHaveText('Warm it and watch the ring');
  await step(page);
  await expect(heading(page)).toHaveText('Which ranges does it take?');
});

test('a reload comes back to the same step with its hands, and another tab knows nothing of them', async ({
  page,
  context,
}) => {
  await start(page);
  await step(page);
  for (let i = 0; i < 3; i += 1) await page.keyboard.press('2');
  await step(page);
  await expect(page.locator('.stage-bar strong').nth(1)).toHaveText('3');
  await page.reload();
  await expect(page.locator('.stage-bar strong').nth(1)).toHaveText('3');
  expect(await page.evaluate(() => Object.entries(localStorage).join())).not.toContain('hands');
  const other = await context.newPage();
  await other.goto(page.url());
  await expect(other.locator('.stage-bar strong').nth(1)).toHaveText('0');
  await other.close();
});

test('B and the full stop blank the wall, and any step brings it back without going on', async ({
  page,
}) => {
  await start(page);
  for (const key of ['b', '.']) {
    await page.keyboard.press(key);
    await expect(page.locator('.stage-blank')).toBeVisible();
    await step(page);
    await expect(page.locator('.stage-blank')).toHaveCount(0);
    await expect(wall(page).locator('header')).toContainText('1 of');
  }
  await page.keyboard.press('?');
  await expect(page.locator('.stage-keys')).toBeVisible();
  await page.keyboard.press('Escape');
  await expect(page.locator('.stage-keys')).toHaveCount(0);
  await page.keyboard.press('t');
  await expect(page.locator('.stage-clock')).toHaveCount(0);
});

test('the second window has the notes, and each steers the other', async ({ page }) => {
  await start(page);
  const [notes] = await Promise.all([page.waitForEvent('popup'), page.keyboard.press('n')]);
  await expect(notes.locator('.notes-window')).toContainText('Scene 1 of');
  await expect(notes.locator('.notes-text')).toContainText('Read the customer aloud');
  await expect(notes.locator('.notes-next')).toContainText('What has changed since the morning?');
  await expect(notes.locator('.site-header')).toBeHidden();
  await notes.getByRole('button', { name: 'Next' }).click();
  await expect(heading(page)).toHaveText('What has changed since the morning?');
  const stem = (await page.locator('.stage-stem').textContent()) ?? '-';
  await expect(notes.locator('.notes-wall')).toContainText(`On the wall: ${stem}`);
  const more = notes.getByRole('button', { name: 'One more hand: 2' });
  const before = await more.boundingBox();
  await notes.getByRole('button', { name: 'One more hand: 2' }).click();
  await expect(page.locator('.stage-counter input').nth(1)).toHaveValue('1');
  await expect(notes.locator('.notes-votes')).toContainText('1 hand');
  expect(await more.boundingBox()).toEqual(before);
  await step(page);
  await expect(notes.locator('.notes-next')).toContainText('the answer');
  await notes.keyboard.press('PageDown');
  await expect(page.locator('.stage-right')).toHaveCount(1);
  await notes.getByRole('button', { name: 'Blank the wall' }).click();
  await expect(page.locator('.stage-blank')).toBeVisible();
  await page.keyboard.press('Escape');
  await page.keyboard.press('Escape');
  await expect(notes.locator('.notes-window')).toContainText(
    'The meeting is off the wall. Press Go on at scene 2 in the other window.',
  );
});

test('hands that are typed are done with Enter, and then the keys step again', async ({ page }) => {
  await start(page);
  await step(page);
  await page.getByLabel('Hands for 2').fill('6');
  await page.keyboard.press('Enter');
  await step(page, 'ArrowRight');
  await expect(page.locator('.stage-bar strong').nth(1)).toHaveText('6');
  await step(page, 'ArrowLeft');
  // A clicker steps even out of the field.
  await page.getByLabel('Hands for 1').fill('2');
  await step(page);
  await expect(page.locator('.stage-bar strong').first()).toHaveText('2');
});

test('left by mistake it goes on where it was, and started it begins with no hands', async ({
  page,
}) => {
  await start(page);
  await step(page);
  await page.keyboard.press('2');
  await page.keyboard.press('Escape');
  await expect(page.locator('.meeting-start .act')).toHaveText('Go on at scene 2');
  await page.getByRole('button', { name: 'Go on at scene 2' }).click();
  await expect(heading(page)).toHaveText('What has changed since the morning?');
  await expect(page.getByLabel('Hands for 2')).toHaveValue('1');
  const over = page.getByRole('button', { name: 'Start over; the hands are cleared' });
  await page.keyboard.press('Escape');
  // Pressed by mistake and left again, it still has the hands.
  await over.click();
  await expect(heading(page)).toBeFocused();
  await page.keyboard.press('Escape');
  await page.getByRole('button', { name: 'Go on at scene 1' }).click();
  await expect(heading(page)).toBeFocused();
  await step(page);
  await expect(page.getByLabel('Hands for 2')).toHaveValue('1');
  await page.keyboard.press('Escape');
  await over.click();
  await expect(wall(page).locator('header')).toContainText(`1 of ${SCENES}`);
  await expect(heading(page)).toBeFocused();
  await step(page);
  await expect(page.getByLabel('Hands for 2')).toHaveValue('0');
});

for (const scheme of ['light', 'dark'] as const)
  test(`a blank wall is black from edge to edge, whatever the pointer rests on, ${scheme}`, async ({
    page,
  }) => {
    await page.emulateMedia({ colorScheme: scheme });
    await page.setViewportSize(WALL);
    await start(page);
    await page.mouse.move(900, 500);
    expect(await wall(page).boundingBox()).toEqual({ x: 0, y: 0, ...WALL });
    await page.keyboard.press('b');
    const blank = page.locator('.stage-blank');
    await expect(blank).toBeFocused();
    for (const x of [900, 3]) {
      await page.mouse.move(x, 3);
      await expect(blank).toHaveCSS('background-color', 'rgb(0, 0, 0)');
      await expect(blank).toHaveCSS('cursor', 'none');
      await expect(blank).toHaveCSS('outline-style', 'none');
    }
    expect(await blank.boundingBox()).toEqual({ x: 0, y: 0, ...WALL });
    const [least, most] = await page.evaluate(
      async (bytes) => {
        const bitmap = await createImageBitmap(new Blob([new Uint8Array(bytes)]));
        const context = new OffscreenCanvas(bitmap.width, bitmap.height).getContext('2d');
        context?.drawImage(bitmap, 0, 0);
        const { data } = context?.getImageData(0, 0, bitmap.width, bitmap.height) ?? { data: [] };
        let [least, most] = [255, 0];
        for (let i = 0; i < data.length; i += 4) {
          const value = data[i] ?? 0;
          least = Math.min(least, value);
          most = Math.max(most, value);
        }
        return [least, most];
      },
      [...(await page.screenshot())],
    );
    expect([least, most]).toEqual([0, 0]);
  });

test('under the black no key does what nobody sees, and Escape brings the wall back first', async ({
  page,
}) => {
  await start(page);
  await step(page);
  await page.getByRole('button', { name: 'One more hand for 2' }).focus();
  for (const key of ['?', 'q', 'Escape', 'Enter', ' ']) {
    await page.keyboard.press('b');
    await page.keyboard.press('1');
    await expect(page.locator('.stage-blank')).toBeFocused();
    await page.keyboard.press(key);
    await expect(page.locator('.stage-blank'), key).toHaveCount(0);
    await expect(page.locator('.stage-over'), key).toHaveCount(0);
  }
  await expect(wall(page)).toBeVisible();
  await expect(page.getByRole('button', { name: 'One more hand for 2' })).toBeFocused();
  await expect(page.getByLabel('Hands for 1')).toHaveValue('0');
  await expect(page.getByLabel('Hands for 2')).toHaveValue('0');
});

test('Escape closes the menu before it leaves, and so does a press elsewhere', async ({ page }) => {
  await start(page);
  const menu = page.locator('.stage-more');
  const more = menu.locator('summary');
  const pause = page.getByRole('button', { name: 'Pause the clock' });
  await more.click();
  await pause.focus();
  await page.keyboard.press('Escape');
  await expect(pause).toBeHidden();
  await expect(more).toBeFocused();
  await more.press('Enter');
  await expect(pause).toBeVisible();
  await heading(page).click();
  await expect(pause).toBeHidden();
  await expect(wall(page)).toBeVisible();
  await more.click();
  await more.click();
  await expect(pause).toBeHidden();
  await page.keyboard.press('Escape');
  await expect(wall(page)).toHaveCount(0);
});

test('a clock that stands says so', async ({ page }) => {
  await start(page);
  await page.keyboard.press('p');
  await expect(page.locator('.stage-clock')).toHaveText(/^\d+:\d\d left, paused$/);
  await page.keyboard.press('p');
  await expect(page.locator('.stage-clock')).toHaveText(/^\d+:\d\d left$/);
});

test('a count that is typed takes the place of the old one, and what is no count is told and stays', async ({
  page,
}) => {
  await start(page);
  await step(page);
  const field = page.getByLabel('Hands for 2');
  await field.click({ position: { x: 3, y: 20 } });
  await page.keyboard.type('7');
  await expect(field).toHaveValue('7');
  // A second press, into the field that has the focus, before its figure.
  await field.click({ position: { x: 3, y: 20 } });
  await page.keyboard.type('12');
  await expect(field).toHaveValue('12');
  for (const text of ['abc', '-3', '2.5', '1000']) {
    await field.fill(text);
    await page.keyboard.press('Enter');
    await expect(field).toHaveValue(text);
    await expect(page.getByText('Hands are a whole number from 0 to 999.')).toBeVisible();
  }
  await page.getByRole('button', { name: 'One more hand for 2' }).click();
  await expect(page.getByText('Hands are a whole number')).toHaveCount(0);
  const options = await page.locator('.stage-options > li').count();
  await expect(page.getByText(`Keys 1 to ${options} add one`)).toBeVisible();
  // A clicker that comes before Enter takes the count along.
  await field.click();
  await page.keyboard.type('9');
  await step(page);
  await expect(page.locator('.stage-bar strong').nth(1)).toHaveText('9');
});

test('under a finger nothing is said of keys', async ({ browser, baseURL }) => {
  const context = await browser.newContext({
    ...{ baseURL: baseURL ?? '', serviceWorkers: 'block' as const },
    ...{ viewport: { width: 844, height: 390 }, hasTouch: true, isMobile: true },
  });
  const page = await context.newPage();
  await start(page);
  await expect(page.getByText('F full screen, arrow keys step')).toBeHidden();
  await step(page);
  await expect(page.getByText('Count hands.')).toBeVisible();
  await expect(page.getByText('add one, with Shift')).toBeHidden();
  await context.close();
});

for (const [width, height] of [
  [1920, 1080],
  [1366, 768],
] as const)
  test(`opened controls lie over nothing and come into sight, ${width} x ${height}`, async ({
    page,
  }) => {
    await page.setViewportSize({ width, height });
    await page.goto('/meetings/chose-park-by-itself/#stage-5-1');
    await expect(page.locator('.stage-simulation .sim:not(.sim-asking)')).toBeVisible();
    await page.locator('.stage .more > summary').click();
    const foot = (await page.locator('.stage-foot').boundingBox())?.y ?? 0;
    const bottom = async () => {
      const box = await page.locator('.stage .more').boundingBox();
      return (box?.y ?? 0) + (box?.height ?? 0);
    };
    // Within what a browser rounds.
    await expect.poll(bottom).toBeLessThanOrEqual(foot + 1);
    const parts = page.locator(
      '.stage .sim-stage > fieldset, .stage .sim-stage > .more > summary, .stage .more-body > *',
    );
    const boxes = await parts.evaluateAll((all) =>
      all.map((one) => {
        const { left, top, right, bottom } = one.getBoundingClientRect();
        return { left, top, right, bottom };
      }),
    );
    expect(boxes.length).toBeGreaterThanOrEqual(6);
    for (const [i, a] of boxes.entries())
      for (const b of boxes.slice(i + 1))
        expect(
          Math.min(a.right, b.right) - Math.max(a.left, b.left) > 1 &&
            Math.min(a.bottom, b.bottom) - Math.max(a.top, b.top) > 1,
          JSON.stringify([a, b]),
        ).toBe(false);
  });

test('a car shows one part at a time, and its answer not before it is asked for', async ({
  page,
}) => {
  await page.goto(`${MEETING}#stage-8-2`);
  await expect(page.locator('.case-talk')).toBeVisible();
  await expect(page.locator('.case-conclude')).toBeHidden();
  // What was spent stands in the line of the parts, over nothing.
  const [spent, parts] = await Promise.all([
    page.locator('.case-bar').boundingBox(),
    page.locator('.stage-parts').boundingBox(),
  ]);
  expect(spent?.y).toBe(parts?.y);
  await page.getByRole('button', { name: 'In which ranges?' }).click();
  await page.getByRole('button', { name: 'What is it?' }).click();
  await expect(page.locator('.case-talk')).toBeHidden();
  await page.getByLabel('What is wrong').selectOption('transferSeal');
  await page.getByLabel('Transfer seal and bridge part').check();
  await page.getByRole('button', { name: 'Hand it in' }).click();
  await expect(page.locator('#case-outcome').getByRole('heading').first()).toBeVisible();
  await page.reload();
  await expect(page.getByText('was handed in on this device before')).toBeVisible();
  await expect(page.locator('#case-outcome')).toHaveCount(0);
  await page.getByRole('button', { name: 'Work it from the start' }).click();
  await expect(page.locator('.case-bar')).toContainText('0 min');
});

test('says it when the browser blocked the second window', async ({ page }) => {
  await page.addInitScript(() => {
    window.open = () => null;
  });
  await start(page);
  await page.keyboard.press('n');
  await expect(wall(page).getByText('The browser blocked the second window')).toBeVisible();
});

/** What a phone would read off the wall. */
async function readCode(page: Page): Promise<string | undefined> {
  const picture = await page.locator('.stage-squares').screenshot();
  const { width, height, grays } = await page.evaluate(
    async (bytes) => {
      const bitmap = await createImageBitmap(
        new Blob([new Uint8Array(bytes)], { type: 'image/png' }),
      );
      const canvas = new OffscreenCanvas(bitmap.width, bitmap.height);
      const context = canvas.getContext('2d');
      if (!context) throw new Error('no canvas');
      context.drawImage(bitmap, 0, 0);
      const { data } = context.getImageData(0, 0, bitmap.width, bitmap.height);
      return {
        width: bitmap.width,
        height: bitmap.height,
        // One letter for each pixel: a million numbers take seconds to come over.
        grays: Array.from({ length: data.length / 4 }, (_, i) =>
          String.fromCharCode(data[4 * i] ?? 0),
        ).join(''),
      };
    },
    [...picture],
  );
  const data = Uint8ClampedArray.from({ length: 4 * width * height }, (_, i) =>
    i % 4 === 3 ? 255 : grays.charCodeAt(Math.floor(i / 4)),
  );
  return jsQR(data, width, height)?.data;
}

test('the code leads to what is on the wall, and says that phones cannot reach this computer', async ({
  page,
}) => {
  await start(page);
  await page.keyboard.press('q');
  expect(await readCode(page)).toBe(page.url());
  await expect(page.locator('.stage-code')).toContainText('phones cannot reach it');
  await page.goto(`${MEETING}#stage-4-2`);
  await page.reload();
  await expect(page.locator('.stage-simulation .sim:not(.sim-asking)')).toBeVisible();
  await page.keyboard.press('q');
  const address = new URL((await readCode(page)) ?? '');
  expect(address.pathname).toBe('/lessons/holds-cold-slips-hot/');
  expect(address.search).toContain('temp.100');
  expect(address.hash).toBe('#clutch-pressure');
});

for (const scheme of ['light', 'dark'] as const)
  test(`axe finds nothing on the wall, ${scheme}`, async ({ page }) => {
    await page.emulateMedia({ colorScheme: scheme });
    await start(page);
    for (const hash of ['#stage-1-1', '#stage-2-1', '#stage-2-3', '#stage-7-1']) {
      await page.goto(`${MEETING}${hash}`);
      await page.reload();
      await expect(wall(page)).toBeVisible();
      const { violations } = await axeOn(page).include('.stage').analyze();
      expect(violations.map(({ id, nodes }) => [id, nodes[0]?.html])).toEqual([]);
    }
  });

for (const [width, height] of [
  [1366, 768],
  [844, 390],
  [390, 664],
] as const)
  test(`fits ${width} x ${height}: nothing hangs over its side, and a finger gets on`, async ({
    page,
  }) => {
    await page.setViewportSize({ width, height });
    await start(page);
    for (let i = 0; i < 10; i += 1) {
      const over = await wall(page).evaluate((stage) => stage.scrollWidth - stage.clientWidth);
      expect(over).toBeLessThanOrEqual(0);
      const button = page.locator('.stage-foot').getByRole('button', { name: 'Next' });
      expect((await button.boundingBox())?.height ?? 0).toBeGreaterThanOrEqual(48);
      await button.click();
    }
  });

test('one’s own: put together, kept over a reload, shared as a link, started', async ({
  page,
  browser,
  baseURL,
}) => {
  await page.goto('/meetings/own/');
  await expect(page.locator('[data-ready=true]')).toHaveCount(1);
  await page.getByLabel('What it is about').fill('Cold seals');
  await page.getByRole('button', { name: 'Begin' }).click();
  await page.getByRole('button', { name: 'Something to say' }).click();
  await page.getByLabel('Heading, up to').fill('Two seconds');
  await page.getByLabel('Line 1').fill('It waits on cold mornings.');
  await page.getByLabel('A link of this site').fill('https://example.org/');
  await page.getByRole('button', { name: 'Add what it leads to' }).click();
  await expect(page.getByText('That link leads to another site.')).toBeVisible();
  await expect(page.getByLabel('A link of this site')).toHaveValue('https://example.org/');
  const state = '/lessons/thin-gap-open-hole/?gap-or-hole=1~temp.90#gap-or-hole';
  await page.getByLabel('A link of this site').fill(new URL(state, page.url()).href);
  await page.getByRole('button', { name: 'Add what it leads to' }).click();
  await page.getByLabel('A link of this site').fill('hello');
  await page.getByRole('button', { name: 'Add what it leads to' }).click();
  await expect(page.getByText('That is no link.')).toBeVisible();
  await expect(page.getByText('press "Copy a link to this state"')).toBeVisible();
  await page.getByLabel('A link of this site').fill('');
  // By its title and what it is set to, not as it stands in an address.
  const shows = page.locator('.own-scene').nth(1).locator('p', { hasText: 'It shows:' });
  await expect(shows).toContainText(/: 194\u00a0°F/);
  await expect(shows).not.toContainText('gap-or-hole');
  await page.getByRole('button', { name: 'Move scene 2 up' }).click();
  await page.getByLabel('A question of the course').selectOption('parts-that-seal');
  await page.getByRole('button', { name: 'Add this question' }).click();
  await page.getByRole('button', { name: 'A vote of your own' }).click();
  await expect(page.getByText('Scene 4 needs its question.')).toBeVisible();
  await expect(page.getByRole('button', { name: 'Start the meeting' })).toBeDisabled();
  await page.getByRole('button', { name: 'Delete scene 4' }).click();
  await expect
    .poll(() => page.getByRole('button', { name: 'Bring the scene back' }).count())
    .toBe(1);
  // A moment later it is kept.
  await page.waitForTimeout(600);
  await page.reload();
  await expect(page.getByLabel('Title')).toHaveValue('Cold seals');
  await expect(page.locator('.own-scene')).toHaveCount(3);
  await page.evaluate(() => {
    navigator.clipboard.writeText = (text) => {
      document.body.dataset['copied'] = text;
      return Promise.resolve();
    };
  });
  await page.getByRole('button', { name: 'Copy a link to it' }).click();
  const link = (await page.locator('body').getAttribute('data-copied')) ?? '';
  expect(link.length).toBeLessThanOrEqual(2000);
  await page.getByRole('button', { name: 'Start the meeting' }).click();
  await expect(page.locator('.stage-simulation .sim:not(.sim-asking)')).toBeVisible();
  await step(page);
  await expect(heading(page)).toHaveText('Two seconds');
  await page.reload();
  await expect(heading(page)).toHaveText('Two seconds');
  // No code gives the meeting away, with its notes and answers; a question leads to its lesson.
  await page.keyboard.press('q');
  await expect(page.locator('.stage-code')).toContainText('This scene has no code.');
  await page.keyboard.press('Escape');
  await step(page);
  await page.keyboard.press('q');
  await expect(page.locator('.stage-address')).toHaveText(/\/lessons\/parts-that-seal\/$/);
  await expect(page.locator('.stage-code')).toContainText('It opens the lesson');
  await page.keyboard.press('Escape');
  await page.keyboard.press('Escape');
  await expect(page.locator('.own-go .act')).toHaveText('Go on at scene 3');
  await page.goto('about:blank');
  await page.goto(link);
  await page.getByRole('button', { name: 'Keep it here and open it' }).click();
  await expect(page.getByLabel('Title')).toHaveValue('Cold seals');
  // Two of one name are told apart by when they were changed.
  await page.getByRole('button', { name: 'Back to the list' }).click();
  await expect(page.locator('.kept-listed li')).toHaveCount(2);
  for (const one of await page.locator('.kept-listed li').all())
    await expect(one).toContainText(/3 scenes, changed \w+ \d+, \d{4}, \d+:\d\d/);
  await page.goto('about:blank');
  await page.goto(link.replace('#meeting=2.', '#meeting=7.'));
  await expect(page.getByText('made by another version of the site')).toBeVisible();

  // On another device, which has nothing of it but the link.
  const other = await browser.newContext({ baseURL: baseURL ?? '', serviceWorkers: 'block' });
  const there = await other.newPage();
  await there.goto(link);
  await there.getByRole('button', { name: 'Keep it here and open it' }).click();
  await expect(there.getByLabel('Title')).toHaveValue('Cold seals');
  await expect(there.locator('.own-scene')).toHaveCount(3);
  await there.getByRole('button', { name: 'Start the meeting' }).click();
  await expect(there.locator('.stage-simulation .sim:not(.sim-asking)')).toBeVisible();
  await step(there);
  await expect(heading(there)).toHaveText('Two seconds');
  await other.close();
});

test('one’s own: a practice case stands by its title, and its code leads to its page', async ({
  page,
}) => {
  await page.goto('/meetings/own/');
  await expect(page.locator('[data-ready=true]')).toHaveCount(1);
  await page.getByLabel('What it is about').fill('A car');
  await page.getByRole('button', { name: 'Begin' }).click();
  await page.getByLabel('A link of this site').fill('/practise/case/?number=7&level=1&on=training');
  await page.getByRole('button', { name: 'Add what it leads to' }).click();
  const link = page.locator('.own-scene a');
  await expect(link).toHaveText(/\b7\b/);
  await expect(link).not.toContainText('level');
  await page.getByRole('button', { name: 'Start the meeting' }).click();
  await expect(heading(page)).toBeFocused();
  await page.keyboard.press('q');
  await expect(page.locator('.stage-address')).toHaveText(
    /\/practise\/case\/\?number=7&level=1&on=training$/,
  );
});
