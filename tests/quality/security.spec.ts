/** Every page in a browser, in every language, with its simulations run: what it asks for, what its policy refuses. */
import type { Page } from '@playwright/test';
import { simulationsIn, builtPages } from '../../src/build/pages.ts';
import { expect, test } from '../e2e/fixtures.ts';
import { keepFigures, looked, none } from './figures.ts';

/** Ways by which text could become a page or a program, tried in the page itself; those that got through. */
const attempts = (page: Page) =>
  page.evaluate(async () => {
    // What the test itself evaluates stands above the policy; what the page does later does not.
    await new Promise((done) => setTimeout(done));
    const tries: Record<string, () => unknown> = {
      innerHTML: () => (document.createElement('p').innerHTML = '<b>x</b>'),
      outerHTML: () => {
        const inner = document.createElement('p');
        document.createElement('div').append(inner);
        inner.outerHTML = '<b>x</b>';
      },
      insertAdjacentHTML: () => document.body.insertAdjacentHTML('beforeend', '<b>x</b>'),
      write: () => (document as { write: (text: string) => void }).write('<b>x</b>'),
      parse: () => new DOMParser().parseFromString('<b>x</b>', 'text/html'),
      fragment: () => document.createRange().createContextualFragment('<b>x</b>'),
      source: () => (document.createElement('script').src = '/icon.svg'),
      text: () => (document.createElement('script').text = '1'),
      frame: () => (document.createElement('iframe').srcdoc = '<b>x</b>'),
      handler: () => document.createElement('div').setAttribute('onclick', 'x()'),
      worker: () => new Worker('/icon.svg'),
      eval: () => Reflect.apply(globalThis.eval, null, ['1']) as unknown,
      function: () => Reflect.construct(Function, ['return 1']) as unknown,
      timer: () => Reflect.apply(setTimeout, null, ['1']) as unknown,
    };
    const through = Object.entries(tries).flatMap(([name, run]) => {
      try {
        run();
        return [name];
      } catch {
        return [];
      }
    });
    return { through, tried: Object.keys(tries).length };
  });

const wake = (page: Page) =>
  page.evaluate(async () => {
    for (let y = 0; y < document.body.scrollHeight; y += innerHeight) {
      scrollTo(0, y);
      await new Promise((done) => requestAnimationFrame(() => requestAnimationFrame(done)));
    }
  });

/** From the first answer to what it did. */
async function runSimulation(page: Page, id: string): Promise<void> {
  const sim = page.locator(`#${id}`);
  await sim.evaluate((section) => section.scrollIntoView({ block: 'start' }));
  await expect(sim).toHaveAttribute('data-ready', 'true');
  await sim.locator('.choice-stack input').first().press('Space');
  await sim.locator('.choice-row input').first().press('Space');
  await sim.locator('button[type="submit"]').press('Enter');
  await expect(page.locator(`#${id}-compare`)).not.toBeEmpty({ timeout: 30_000 });
}

const HEADERS: Readonly<Record<string, RegExp>> = {
  'content-security-policy': /frame-ancestors 'none'/,
  'x-frame-options': /^DENY$/,
  'x-content-type-options': /^nosniff$/,
  'referrer-policy': /^same-origin$/,
  'permissions-policy': /camera=\(\).*microphone=\(\)/,
  'cross-origin-opener-policy': /^same-origin$/,
};

test('every page, with its simulations run', async ({ page, baseURL, trouble }) => {
  test.setTimeout(1_200_000);
  const pages = builtPages();
  const elsewhere: string[] = [];
  const headersMissing: string[] = [];
  const weak: string[] = [];
  const refusedOurs: string[] = [];
  const through: string[] = [];
  let requests = 0;
  let tried = 0;
  let run = 0;
  page.on('request', (request) => {
    const { protocol, origin } = new URL(request.url());
    requests += 1;
    if (protocol !== 'data:' && protocol !== 'blob:' && origin !== baseURL)
      elsewhere.push(request.url());
  });
  for (const { address, html } of pages) {
    const response = await page.goto(address);
    const headers = response?.headers() ?? {};
    for (const [name, pattern] of Object.entries(HEADERS))
      if (!pattern.test(headers[name] ?? '')) headersMissing.push(`${address} ${name}`);
    const policy =
      (await page
        .locator('meta[http-equiv="content-security-policy" i]')
        .getAttribute('content')) ?? '';
    if (
      /unsafe-(?:inline|hashes)|(?<!wasm-)unsafe-eval|https?:|\*/.test(policy) ||
      !/default-src 'none'/.test(policy) ||
      !/require-trusted-types-for 'script'/.test(policy)
    )
      weak.push(address);
    await wake(page);
    for (const id of simulationsIn(html)) {
      await runSimulation(page, id);
      run += 1;
    }
    refusedOurs.push(...trouble.map((line) => `${address} ${line}`));
    trouble.length = 0;
    const made = await attempts(page);
    tried += made.tried;
    through.push(...made.through.map((name) => `${address} ${name}`));
    await page.waitForTimeout(50);
    // What was just refused was refused on purpose.
    trouble.length = 0;
  }
  keepFigures('security-pages', [
    looked('Pages opened in a browser, in every language', pages.length, 50),
    looked('Simulations run on them', run, 27),
    none(`Requests to anybody else while doing so`, elsewhere),
    looked('Requests to the site itself', requests, 500),
    none('Pages whose policy allows inline or evaluated scripts, or scripts of others', weak),
    none(
      `Pages sent without one of the ${Object.keys(HEADERS).length} protecting headers`,
      headersMissing,
    ),
    none(
      'Complaints of the browser, among them scripts or styles of ours that the policy refused',
      refusedOurs,
    ),
    none('Attempts to turn text into a page or a program that got through', through),
    looked('Such attempts made', tried, 500),
  ]);
  expect(elsewhere).toEqual([]);
  expect(headersMissing).toEqual([]);
  expect(weak).toEqual([]);
  expect(refusedOurs).toEqual([]);
  expect(through).toEqual([]);
});
