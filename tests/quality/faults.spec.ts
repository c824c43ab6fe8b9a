/** A browser without scripts, and a network that goes after the page itself has come: on every page that there is. */
import { test as plain, type Page } from '@playwright/test';
import { builtPages, simulationsIn } from '../../src/build/pages.ts';
import { expect } from '../e2e/fixtures.ts';
import { keepFigures, looked, none } from './figures.ts';

const PHONE = { width: 390, height: 844 };
/** Long enough for what waits eight seconds before it speaks. */
const LATE = 9500;
const pages = builtPages();
/** A page that does its work by script has an island outside of simulations and questions, or a search. */
const mustSay = (html: string): boolean =>
  /<noscript>(?!<p class="sim-asleep")/.test(html) || html.includes('id="search-form"');

/** Words that are in sight in the main part of the page. */
const read = (page: Page) => page.locator('main').innerText();
const saysScript = (text: string): boolean =>
  /\b(?:script|JavaScript|programa)\b/i.test(text.replaceAll(/\s+/g, ' '));

plain(
  'without a script every page can be read, and says what it cannot do',
  async ({ browser, baseURL }) => {
    plain.setTimeout(600_000);
    const context = await browser.newContext({ javaScriptEnabled: false, viewport: PHONE });
    const page = await context.newPage();
    const bare: string[] = [];
    const silent: string[] = [];
    const withoutPicture: string[] = [];
    const withoutWords: string[] = [];
    let simulations = 0;
    for (const { address, html } of pages) {
      await page.goto(`${baseURL ?? ''}${address}`);
      const text = await read(page);
      // A title and a sentence are the least that anybody is told.
      if ((await page.locator('main h1').count()) !== 1 || text.split(/\s+/).length < 12)
        bare.push(address);
      if (mustSay(html) && !saysScript(text)) silent.push(address);
      for (const id of simulationsIn(html)) {
        simulations += 1;
        const frame = page.locator('.sim-frame', { has: page.locator(`#${id}`) });
        const picture = frame.locator('.sim-picture').first();
        const drawn = await picture.locator('svg, table, dl, ol, ul').first().isVisible();
        if (!drawn || !(await frame.locator('noscript > .sim-asleep').isVisible()))
          withoutPicture.push(`${address} ${id}`);
        // A chart has its numbers in a table, a drawing its sentences; what is set out in words is its own.
        const told = (await picture.textContent()) ?? '';
        if (told.replaceAll(/\s+/g, ' ').trim().length < 30) withoutWords.push(`${address} ${id}`);
      }
    }
    await context.close();
    keepFigures('faults-script-off', [
      looked('Pages opened with scripts off', pages.length, 50),
      none('Pages that cannot be read without a script', bare),
      none('Pages that need a script and do not say so', silent),
      looked('Simulations looked at with scripts off', simulations, 27),
      none('Simulations without their picture and a sentence about it', withoutPicture),
      none('Simulations without the table or the words of their picture', withoutWords),
    ]);
    expect({ bare, silent, withoutPicture, withoutWords }).toEqual({
      bare: [],
      silent: [],
      withoutPicture: [],
      withoutWords: [],
    });
  },
);

plain(
  'the server goes in mid-load: what was to come alive says that it has not',
  async ({ browser, baseURL }) => {
    plain.setTimeout(900_000);
    const islands = pages.filter(
      ({ html }) => html.includes('<astro-island') || html.includes('id="search-form"'),
    );
    const silent: string[] = [];
    const lost: string[] = [];
    // Most of it is waiting: several at once.
    const look = async ({ address, html }: (typeof islands)[number]): Promise<void> => {
      const context = await browser.newContext({ viewport: PHONE });
      const page = await context.newPage();
      await page.route(/\.(?:js|json|pagefind|pf_\w+)(?:\?|$)/, (route) => route.abort());
      await page.goto(
        `${baseURL ?? ''}${address}${html.includes('id="search-form"') ? '?q=seal' : ''}`,
      );
      await page.waitForTimeout(LATE);
      const text = await read(page);
      if ((await page.locator('main h1').count()) !== 1) lost.push(address);
      if (
        !/has not arrived|has not loaded|did not load|could not be loaded|no ha llegado/i.test(text)
      )
        silent.push(address);
      await context.close();
    };
    const waiting = [...islands];
    await Promise.all(
      Array.from({ length: 4 }, async () => {
        for (let next = waiting.shift(); next !== undefined; next = waiting.shift())
          await look(next);
      }),
    );
    keepFigures('faults-server-gone', [
      looked('Pages whose server went after the page itself had come', islands.length, 35),
      none('Pages that do not say then that their script has not come', silent),
      none('Pages that lose their words then', lost),
    ]);
    expect({ silent, lost }).toEqual({ silent: [], lost: [] });
  },
);
