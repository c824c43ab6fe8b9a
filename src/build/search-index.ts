// Pagefind indexes; what it gets to read is decided here, from the built site alone, so that no page
// has to carry marks for it.
import { mkdirSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { close, createIndex } from 'pagefind';
import { searchRecords } from './search-records.ts';
import { builtPages } from './pages.ts';

/**
 * One index for each unit system. Both systems stand in the markup of a page, and an excerpt of the
 * whole would read "35 °C 95 °F". Telling the words apart afterwards was the other way; it needs marks
 * inside the words, which an excerpt may cut.
 */
const hiddenIn = { us: '.u-si', si: '.u-us' } as const;

/** Words that are on the page but are not its text: controls, pictures, what a press unfolds. */
const notText = [
  'astro-island',
  '.retrieval',
  '.rail',
  '.no-print',
  '.term-meaning',
  '.katex',
  'svg',
  '.solution > summary',
  '.retrieval summary',
  '.after-run > summary',
  'code',
  '.task-kind',
  '.cited',
  '.cited-told',
  '[aria-labelledby="objectives"]',
];

/** The rest is Pagefind's own user interfaces, which this site does not use. */
const needed =
  /^(pagefind\.js|pagefind-worker\.js|pagefind-entry\.json|wasm\.(?!unknown)[^.]+\.pagefind|pagefind\.[^/]+\.pf_meta|(index|fragment|filter)\/[^/]+)$/;

/** Adds the search index to a built site, in the language that its pages are written in. */
export async function makeSearchIndex(folder: string, language: string): Promise<void> {
  const records = searchRecords(builtPages(folder));
  if (records.length === 0) throw new Error(`There is nothing in ${folder} to search.`);
  for (const [system, hidden] of Object.entries(hiddenIn)) {
    const { index, errors } = await createIndex({
      rootSelector: 'main',
      excludeSelectors: [...notText, hidden],
      forceLanguage: language,
    });
    if (index === undefined) throw new Error(`Pagefind made no index: ${errors.join(' ')}`);
    for (const { url, html } of records) {
      const { errors: wrong } = await index.addHTMLFile({ url, content: html });
      if (wrong.length > 0) throw new Error(`Pagefind could not read ${url}: ${wrong.join(' ')}`);
    }
    const { files } = await index.getFiles();
    let written = 0;
    for (const { path, content } of files) {
      if (!needed.test(path)) continue;
      const target = join(folder, 'pagefind', system, path);
      mkdirSync(dirname(target), { recursive: true });
      writeFileSync(target, content);
      written += 1;
    }
    console.log(`   search index, ${system}: ${records.length} records in ${written} files`);
  }
  await close();
}
