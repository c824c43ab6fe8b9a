// npm run book: prints the whole course as one PDF, of the built site.
import { existsSync, mkdirSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { dist } from '../build/pages.ts';
import { lessonCount } from './chapters.ts';
import { edition } from './edition.ts';
import { makeBook } from './make.ts';
import { readOptions } from './options.ts';
import { Refusal } from './refusal.ts';
import { words } from './words.en.ts';

async function run(args: readonly string[]): Promise<void> {
  const options = readOptions(args, lessonCount);
  if (!existsSync(join(dist, 'index.html'))) throw new Refusal(words.refuse.noSite);
  const made = edition();
  const began = Date.now();
  const { bytes, pages } = await makeBook(dist, options, made, (chapter) =>
    console.log(words.reading({ chapter })),
  );
  try {
    mkdirSync(dirname(options.out), { recursive: true });
    writeFileSync(options.out, bytes);
  } catch (error) {
    const why = error instanceof Error ? error.message : String(error);
    throw new Refusal(words.refuse.noFolder({ file: options.out, why }));
  }
  console.log(
    words.made({
      file: options.out,
      pages: String(pages),
      megabytes: (bytes.length / 1e6).toFixed(1),
      seconds: ((Date.now() - began) / 1000).toFixed(0),
    }),
  );
}

try {
  await run(process.argv.slice(2));
} catch (error) {
  if (!(error instanceof Refusal)) throw error;
  console.error(error.message);
  process.exitCode = 1;
}
