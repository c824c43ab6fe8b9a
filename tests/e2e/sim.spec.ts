import type { Locator, Page } from '@playwright/test';
import { letsGoAtC } from '../../src/car/lets-go.ts';
import { makeCar, REFERENCE_CRACK_MM } from '../../src/car/car.ts';
import { expect, test } from './fixtures.ts';
import { keptAnswers } from './kept-answers.ts';
import { simulationPages as pages } from './pages.ts';

async function open(page: Page, id: string): Promise<Locator> {
  const sim = page.locator(`#${id}`);
  await sim.scrollIntoViewIfNeeded();
  await expect(sim).toHaveAttribute('data-ready', 'true');
  return sim;
}

/** The heading that has the focus. Whoever lost it to the page would hear nothing and start at the top. */
const head = (sim: Locator, words: string | RegExp) =>
  sim.locator('.stage-head', { hasText: words });

const holder = pages.find(({ ids }) => ids.includes('clutch-pressure'));

test('finishing every task leads to your controls, the focus with it at each step', async ({
  page,
}) => {
  test.skip(holder === undefined, 'No built page holds the clutch-pressure simulation.');
  await page.goto(holder?.address ?? '/');
  const sim = await open(page, 'clutch-pressure');
  await sim.locator('.choice-stack input').first().press('Space');
  await sim.locator('.choice-row input').first().press('Space');
  await sim.locator('button[type="submit"]').press('Enter');
  await expect(head(sim, 'What it did')).toBeFocused();
  await sim.getByRole('button', { name: 'On to the tasks' }).press('Enter');

  const type = async (key: string, text: string) => {
    const field = sim.locator(`#clutch-pressure-${key}-field`);
    await field.fill(text);
    await field.press('Enter');
  };
  const past = Math.ceil(letsGoAtC(makeCar({ crackMm: REFERENCE_CRACK_MM }), 'standing'));
  const steps: readonly (() => Promise<void>)[] = [
    () => type('temp', `${past} C`),
    () => type('crack', '0.13 mm'),
    () => type('rpm', '2000'),
    () => sim.getByRole('radio', { name: /^High/ }).press('Space'),
  ];
  for (const [i, step] of steps.entries()) {
    await expect(head(sim, `Task ${i + 1} of ${steps.length}`)).toBeFocused();
    await step();
    await sim.getByRole('button', { name: /^(Next task|On to your controls)$/ }).press('Enter');
  }
  await expect(head(sim, 'Your controls')).toBeFocused();
});

test('a task that is not done yet says how far off it is, and a move to the answer ends it', async ({
  page,
}) => {
  const home = pages.find(({ ids }) => ids.includes('gap-or-hole'));
  test.skip(home === undefined, 'No built page holds the gap-or-hole simulation.');
  await page.goto(home?.address ?? '/');
  const sim = await open(page, 'gap-or-hole');
  await sim.locator('.choice-stack input').first().press('Space');
  await sim.locator('.choice-row input').first().press('Space');
  await sim.locator('button[type="submit"]').press('Enter');
  await expect(head(sim, 'What it did')).toBeFocused();
  await sim.getByRole('button', { name: 'On to the tasks' }).press('Enter');
  await expect(head(sim, /^Task 1 of/)).toBeFocused();
  const result = sim.locator('.task-result');
  await expect(result).toBeEmpty();
  const widthTo = async (text: string) => {
    const field = sim.locator('#gap-or-hole-height-field');
    await field.fill(text);
    await field.press('Enter');
  };
  await widthTo('0.3 mm');
  await expect(result).toContainText('Too low. This crack leaks');
  await widthTo('0.08 mm');
  await expect(result).toContainText('Done.');
});

test('the unit switch reaches the axes of an open simulation, and a move is spoken', async ({
  page,
}) => {
  test.skip(holder === undefined, 'No built page holds the clutch-pressure simulation.');
  await page.goto(holder?.address ?? '/');
  const sim = await open(page, 'clutch-pressure');
  await sim.getByRole('button', { name: 'Your controls' }).press('Enter');
  // The stage has arrived: what scrolls the page has scrolled it before anything else is pressed.
  await expect(head(sim, 'Your controls')).toBeFocused();
  const axis = sim.locator('#clutch-pressure-chart .axis-title').first();
  await expect(axis).toHaveText('Clutch pressure, psi');
  await page.getByRole('radio', { name: /Metric units/ }).check({ force: true });
  await expect(axis).toHaveText('Clutch pressure, kPa');
  await expect(sim.locator('#clutch-pressure-temp-field ~ .unit')).toHaveText('°C');

  const spoken = sim.locator('.sim-picture > [role="status"]');
  const before = await spoken.textContent();
  await sim.locator('#clutch-pressure-temp').press('Home');
  await expect(spoken).not.toHaveText(before ?? '');
});

test('a prediction that was run is kept, once for each run', async ({ page }) => {
  test.skip(holder === undefined, 'No built page holds the clutch-pressure simulation.');
  await page.goto(holder?.address ?? '/');
  const sim = await open(page, 'clutch-pressure');
  for (const n of [0, 1]) {
    await sim.locator('.choice-stack input').nth(n).press('Space');
    await sim.locator('.choice-row input').nth(n).press('Space');
    await sim.locator('button[type="submit"]').press('Enter');
    await expect(head(sim, 'What it did')).toBeFocused();
    await page.getByRole('radio', { name: /Metric units/ }).check({ force: true });
    await sim.getByRole('button', { name: 'Predict again' }).press('Enter');
  }
  await expect.poll(async () => (await keptAnswers(page)).length).toBe(2);
  const kept = await keptAnswers(page);
  expect(kept.map(({ sim: id, confidence }) => [id, confidence])).toEqual([
    ['clutch-pressure', 'guessing'],
    ['clutch-pressure', 'fairly-sure'],
  ]);
});

test('a link that is too long opens your controls with the usual values, and says so', async ({
  page,
}) => {
  test.skip(holder === undefined, 'No built page holds the clutch-pressure simulation.');
  const rest = 'x'.repeat(2001);
  await page.goto(`${holder?.address ?? '/'}?clutch-pressure=1~temp.100&other=${rest}`);
  const sim = await open(page, 'clutch-pressure');
  await expect(head(sim, 'Your controls')).toBeVisible();
  await expect(sim.locator('.sim-notes')).toContainText('longer than 2000 characters');
});

test('a copied link opens the same state in your controls, and leaves the focus alone', async ({
  page,
  context,
}) => {
  test.skip(holder === undefined, 'No built page holds the clutch-pressure simulation.');
  await context.grantPermissions(['clipboard-read', 'clipboard-write']);
  await page.goto(holder?.address ?? '/');
  const sim = await open(page, 'clutch-pressure');
  await sim.getByRole('button', { name: 'Your controls' }).press('Enter');
  await expect(head(sim, 'Your controls')).toBeFocused();
  await sim.locator('#clutch-pressure-temp').press('Home');
  const state = await sim.locator('#clutch-pressure-temp-field').inputValue();
  await sim.getByRole('button', { name: 'Copy a link to this state' }).press('Enter');
  await expect(sim.getByText('Link copied.')).toBeVisible();

  await page.goto(await page.evaluate(() => navigator.clipboard.readText()));
  await expect(head(sim, 'Your controls')).toBeVisible();
  await expect(sim.locator('#clutch-pressure-temp-field')).toHaveValue(state);
  await expect(head(sim, 'Your controls')).not.toBeFocused();
});

test('Reload and Back come to the same stage and values, and leave the focus alone', async ({
  page,
}) => {
  test.skip(holder === undefined, 'No built page holds the clutch-pressure simulation.');
  await page.goto(holder?.address ?? '/');
  let sim = await open(page, 'clutch-pressure');
  await sim.locator('.choice-stack input').first().press('Space');
  await sim.locator('.choice-row input').first().press('Space');
  await sim.locator('button[type="submit"]').press('Enter');
  await expect(head(sim, 'What it did')).toBeFocused();
  const kept = () =>
    page.evaluate(() => {
      const { simulations } = (history.state ?? {}) as {
        simulations?: Record<string, { stage: string; search: string }>;
      };
      return simulations?.['clutch-pressure'];
    });
  await expect.poll(async () => (await kept())?.stage).toBe('compare');
  await expect.poll(async () => (await keptAnswers(page)).length).toBe(1);
  await page.reload();
  sim = await open(page, 'clutch-pressure');
  await expect(head(sim, 'What it did')).toBeVisible();
  await expect(head(sim, 'What it did')).not.toBeFocused();
  expect(await keptAnswers(page), 'a prediction is kept once').toHaveLength(1);

  await sim.getByRole('button', { name: 'Your controls' }).press('Enter');
  await expect(head(sim, 'Your controls')).toBeFocused();
  await sim.locator('#clutch-pressure-temp').press('Home');
  const state = await sim.locator('#clutch-pressure-temp-field').inputValue();
  await expect.poll(async () => (await kept())?.search).toContain('temp.-30');
  await page.goto('/glossary/');
  await page.goBack();
  sim = await open(page, 'clutch-pressure');
  await expect(head(sim, 'Your controls')).toBeVisible();
  await expect(sim.locator('#clutch-pressure-temp-field')).toHaveValue(state);
});

for (const [id, key, along] of [
  ['clutch-pressure', 'temp', 'x'],
  ['controller-sees', 'slipLimit', 'y'],
  ['whole-car', 'time', 'x'],
] as const) {
  test(`${id}: ${key} is dragged in the picture, once it may be moved`, async ({ page }) => {
    const address = pages.find(({ ids }) => ids.includes(id))?.address;
    await page.setViewportSize({ width: 390, height: 664 });
    await page.goto(address ?? '/');
    const sim = await open(page, id);
    const grip = sim.locator(`.sim-picture .chart-grip.along-${along}`);
    // Before the prediction the picture gives nothing away.
    await expect(grip).toHaveCount(0);
    await sim.getByRole('button', { name: 'Your controls' }).press('Enter');
    await expect(head(sim, 'Your controls')).toBeFocused();
    const slider = page.locator(`#${id}-${key}`);
    const before = Number(await slider.inputValue());
    const { x, y } = (await grip.boundingBox()) ?? { x: 0, y: 0 };
    const hold = { x: x + 24, y: y + 24 };
    await page.mouse.move(hold.x, hold.y);
    await page.mouse.down();
    expect(Number(await slider.inputValue()), 'taking hold moves nothing').toBe(before);
    // Towards the start of x, or up: a limit rises.
    await page.mouse.move(hold.x - (along === 'x' ? 40 : 0), hold.y - (along === 'y' ? 20 : 0), {
      steps: 4,
    });
    await page.mouse.up();
    const after = Number(await slider.inputValue());
    if (along === 'x') expect(after).toBeLessThan(before);
    else expect(after).toBeGreaterThan(before);
  });
}

test('level-window: fluid and thermometer are pulled in the picture, by finger as well', async ({
  browser,
  baseURL,
}) => {
  const address = pages.find(({ ids }) => ids.includes('level-window'))?.address ?? '/';
  const context = await browser.newContext({
    hasTouch: true,
    viewport: { width: 390, height: 664 },
  });
  const page = await context.newPage();
  await page.goto(`${baseURL ?? ''}${address}`);
  const sim = await open(page, 'level-window');
  const grips = sim.locator('.sim-picture .dw-grip');
  await expect(grips).toHaveCount(0);
  await sim.getByRole('button', { name: 'Your controls' }).tap();
  await expect(head(sim, 'Your controls')).toBeFocused();
  await expect(grips).toHaveCount(2);
  const finger = await context.newCDPSession(page);
  for (const [key, grip, down] of [
    ['temp', grips.first(), -40],
    ['off', grips.last(), 30],
  ] as const) {
    const slider = page.locator(`#level-window-${key}`);
    const before = Number(await slider.inputValue());
    const { x, y, width, height } = (await grip.boundingBox()) ?? new DOMRect();
    const [across, at] = [x + width / 2, y + height / 2];
    const touch = (type: 'touchStart' | 'touchMove' | 'touchEnd', to?: number) =>
      finger.send('Input.dispatchTouchEvent', {
        type,
        touchPoints: to === undefined ? [] : [{ x: across, y: to }],
      });
    await touch('touchStart', at);
    expect(Number(await slider.inputValue()), 'taking hold moves nothing').toBe(before);
    for (const part of [0.25, 0.5, 0.75, 1]) await touch('touchMove', at + part * down);
    await touch('touchEnd');
    // Up is warmer, and down is less fluid.
    const after = Number(await slider.inputValue());
    if (key === 'temp') expect(after).toBeGreaterThan(before);
    else expect(after).toBeLessThan(before);
  }
  await context.close();
});

test('in another visit stands what was predicted and what came of it, and the controls are free', async ({
  page,
}) => {
  const home = pages.find(({ ids }) => ids.includes('gap-or-hole'));
  test.skip(home === undefined, 'No built page holds the gap-or-hole simulation.');
  const address = home?.address ?? '/';
  await page.goto(address);
  const sim = await open(page, 'gap-or-hole');
  const said = await sim.locator('.choice-stack .choice-words').nth(1).innerText();
  await sim.locator('.choice-stack input').nth(1).press('Space');
  await sim.locator('.choice-row input').nth(2).press('Space');
  await sim.locator('button[type="submit"]').press('Enter');
  await expect(head(sim, 'What it did')).toBeFocused();
  const came = await sim.locator('.compare dd').last().innerText();

  // Nothing of the tab's history leads here.
  await page.goto('/course/');
  await page.goto(address);
  await open(page, 'gap-or-hole');
  await expect(head(sim, 'Your controls')).toBeVisible();
  await expect(page.locator('details.after-run[data-of="gap-or-hole"]').first()).toHaveAttribute(
    'open',
    '',
  );
  const last = sim.locator('details', { hasText: 'Your last prediction' });
  await last.locator('summary').press('Enter');
  await expect(last).toContainText('You said, certain');
  await expect(last).toContainText(said);
  await expect(last).toContainText(came);
  // A move changes the picture, not what came of that run.
  const field = sim.locator('#gap-or-hole-height-field');
  await field.fill('0.3 mm');
  await field.press('Enter');
  await expect(last).toContainText(came);
  await page.reload();
  await open(page, 'gap-or-hole');
  await expect(sim.locator('details', { hasText: 'Your last prediction' })).toHaveCount(1);

  // Who wants to is asked anew; a link still opens at its own state.
  await sim.getByRole('button', { name: 'Predict again' }).press('Enter');
  await expect(sim.locator('button[type="submit"]')).toBeDisabled();
  await page.goto('/course/');
  await page.goto(`${address}?gap-or-hole=1~temp.60#gap-or-hole`);
  await expect(head(sim, 'Your controls')).toBeVisible();
  await expect(sim.locator('details', { hasText: 'Your last prediction' })).toHaveCount(0);

  // And it goes with all the rest.
  await page.evaluate(() => {
    const keys = Object.keys(localStorage).filter((key) => key.startsWith('hot-clutch:'));
    for (const key of keys) localStorage.removeItem(key);
  });
  await page.goto('/course/');
  await page.goto(address);
  await open(page, 'gap-or-hole');
  await expect(sim.locator('button[type="submit"]')).toBeDisabled();
});
