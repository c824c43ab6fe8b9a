import type { Page } from '@playwright/test';
import { words as retrieval } from '../widgets/retrieval/words.en.ts';
import type { Chapter } from './chapters.ts';
import { freeze, type Frozen } from './freeze.ts';
import type { Options } from './options.ts';
import { Refusal } from './refusal.ts';
import { columnPx } from './sheet-size.ts';
import { words } from './words.en.ts';

/** A chart takes its measure from the page a frame or two after the page has changed. */
const settle = (page: Page): Promise<unknown> =>
  page.evaluate(
    () =>
      new Promise((done) => {
        requestAnimationFrame(() => requestAnimationFrame(() => setTimeout(done, 100)));
      }),
  );

/** From the question to what came out, with the question kept above the picture. */
async function run(page: Page, id: string): Promise<void> {
  const sim = page.locator(`#${id}`);
  await sim.evaluate((section) => section.scrollIntoView());
  await page.locator(`#${id}[data-ready="true"]`).waitFor();
  await sim.evaluate((section, title) => {
    const asked = document.createElement('div');
    asked.className = 'book-ask';
    const question = document.createElement('p');
    const word = document.createElement('strong');
    word.textContent = `${title}: `;
    question.append(word, section.querySelector('.sim-stage legend')?.textContent ?? '');
    const options = document.createElement('ul');
    for (const option of section.querySelectorAll('.choice-stack .choice-words')) {
      const item = document.createElement('li');
      item.append(...option.cloneNode(true).childNodes);
      options.append(item);
    }
    asked.append(question, options);
    section.before(asked);
  }, words.ask);
  await sim.locator('.choice-stack input').first().check({ force: true });
  await sim.locator('.choice-row input').first().check({ force: true });
  await sim.locator('button[type="submit"]').click();
  await sim.locator(`#${id}-compare`).waitFor();
  // The rows of a table are made when it is opened.
  await sim.locator('.sim-picture .data-table').evaluateAll((all) => {
    for (const one of all) (one as HTMLDetailsElement).open = true;
  });
}

/** One page of the site as it stands in the book: its simulations run, everything that is pressed gone. */
export async function chapterFrom(
  page: Page,
  origin: string,
  { id, address }: Chapter,
  { paper, units }: Options,
): Promise<Frozen> {
  await page.emulateMedia({ media: 'screen', reducedMotion: 'reduce', colorScheme: 'light' });
  await page.setViewportSize({ width: 1280, height: 900 });
  const answer = await page.goto(`${origin}${address}`);
  if (answer?.ok() !== true) throw new Refusal(words.refuse.noPage({ address }));
  if (units === 'si') await page.locator('#settings input[value="si"]').check({ force: true });
  const simulations = await page
    .locator('main section.sim')
    .evaluateAll((all) => all.map((one) => one.id));
  for (const simulation of simulations) await run(page, simulation);
  await page.emulateMedia({ media: 'print', reducedMotion: 'reduce', colorScheme: 'light' });
  await page.setViewportSize({ width: columnPx(paper), height: 1000 });
  await settle(page);
  return page.evaluate(freeze, { chapter: id, fits: retrieval.plain.fits });
}
