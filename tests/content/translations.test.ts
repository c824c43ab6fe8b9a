// Translations: their files against the English ones, and their built pages.
import { existsSync, globSync, readFileSync, readdirSync } from 'node:fs';
import { basename, join, resolve } from 'node:path';
import { pathToFileURL } from 'node:url';
import { describe, expect, test } from 'vitest';
import { parse } from 'yaml';
import { builtPages } from '../../src/build/pages.ts';
import { languageAt, languages, source } from '../../src/language/languages.ts';
import { glossarySchema, lessonSchema } from '../../src/lessons/lesson-schema.ts';
import type { Objective } from '../../src/lessons/objective.ts';
import { slug } from '../../src/lessons/slug.ts';

const pages = builtPages();
const others = Object.values(languages).filter(({ id }) => id !== source);

const files = (folder: string) =>
  existsSync(folder)
    ? readdirSync(folder).map((name) => ({
        name,
        id: basename(name).replace(/\.\w+$/, ''),
        text: readFileSync(join(folder, name), 'utf8'),
      }))
    : [];
const all = (text: string, pattern: RegExp) => Array.from(text.matchAll(pattern), ([, id]) => id);

/** What a lesson is made of besides its words, in order. */
const parts = (text: string) => ({
  tags: all(text, /<([A-Z]\w*)/g),
  numbers: all(text, /<Num id="([^"]+)"/g).sort(),
  terms: all(text, /<Term id="([^"]+)"/g),
  sources: all(text, /<Src id="([^"]+)"/g),
  kinds: all(text, /<Task kind="(\w+)"/g),
  formulas: text.match(/\$\$[^]*?\$\$/g),
  recap: /<Recap>([^]*?)<\/Recap>/.exec(text)?.[1]?.match(/^- /gm)?.length,
});

describe.each(others)('$name', ({ id, base }) => {
  const lessons = files(join('content', id, 'lessons'));

  test('has something to read', () => {
    expect(lessons.length).toBeGreaterThan(0);
    expect(pages.filter(({ address }) => address.startsWith(base)).length).toBeGreaterThan(1);
  });

  describe.each(lessons)('the lesson $id', ({ name, text }) => {
    const english = readFileSync(join('content', source, 'lessons', name), 'utf8');
    const head = (words: string) =>
      lessonSchema.parse(parse(/^---\n([^]*?)\n---\n/.exec(words)?.[1] ?? ''));

    test('has the tags, numbers, terms, sources, tasks and formulas of the English one', () => {
      const [here, there] = [parts(text), parts(english)];
      // A sentence may turn round, so numbers stand in another order, and tags with them.
      expect({ ...here, tags: [...here.tags].sort() }).toEqual({
        ...there,
        tags: [...there.tags].sort(),
      });
    });

    test('has the same place in the course, and says it in its own words', () => {
      const { title, description, hook, givens, ...rest } = head(text);
      const there = head(english);
      expect(rest).toEqual({
        id: there.id,
        order: there.order,
        needs: there.needs,
      });
      expect([there.title, there.description, there.hook]).not.toContain(title);
      expect(Object.keys(givens ?? {})).toEqual(Object.keys(there.givens ?? {}));
      expect(description).not.toBe(there.description);
      expect(hook).not.toBe(there.hook);
    });

    test('has its sections at the addresses of the English ones, so that a link leads to either', () => {
      const here = all(text, /<Section title="[^"]+" id="([^"]+)"/g);
      expect(here).toEqual(
        all(english, /<Section title="([^"]+)"/g).map((title) => slug(title ?? '')),
      );
    });

    test('keeps the objectives that the questions are counted by', async () => {
      const read = async (language: string) => {
        const path = resolve(`src/lessons/objectives.${language}.ts`);
        const { objectives } = (await import(pathToFileURL(path).href)) as {
          objectives: readonly Objective[];
        };
        return objectives.filter(({ lesson }) => lesson === name.replace('.mdx', ''));
      };
      const [here, there] = [await read(id), await read(source)];
      expect(here.map((objective) => objective.id)).toEqual(there.map((objective) => objective.id));
      for (const { text: words } of here) expect(there.map((one) => one.text)).not.toContain(words);
    });
  });

  test('has a glossary that stands by itself, of entries that English has too', () => {
    const entries = files(join('content', id, 'glossary')).map((entry) => ({
      id: entry.id,
      data: glossarySchema.parse(parse(entry.text)),
    }));
    const known = entries.map((entry) => entry.id);
    for (const entry of entries) {
      expect(existsSync(join('content', source, 'glossary', `${entry.id}.yaml`)), entry.id).toBe(
        true,
      );
      for (const other of entry.data.see) expect(known, `${entry.id} sees`).toContain(other);
      expect(entry.data.meaning.split(/\s+/).length, entry.id).toBeLessThanOrEqual(60);
    }
  });

  /** The words of one file, functions by the pieces between their values. */
  const sentences = (value: unknown): string[] => {
    if (typeof value === 'string') return [value];
    if (typeof value !== 'function') return Object.values(value as object).flatMap(sentences);
    const cut = '\u0000';
    const filled = new Proxy({}, { get: () => cut });
    const call = value as (...values: unknown[]) => unknown;
    for (const values of [Array<unknown>(value.length).fill(cut), [filled], [[cut]]]) {
      try {
        const said = call(...values);
        // A label of a drawing may be several lines, and one value may stand in several sentences.
        const lines: readonly unknown[] =
          typeof said === 'object' ? Object.values(said ?? {}) : [said];
        const fits = (line: unknown): line is string =>
          typeof line === 'string' && !line.includes('[object');
        if (lines.every(fits)) return lines.flatMap((line) => line.split(cut));
      } catch {
        // It wanted values of another form.
      }
    }
    throw new Error(`No form of values fits ${call.toString()}`);
  };
  const wordsOf = async (language: string): Promise<Set<string>> => {
    const modules = await Promise.all(
      globSync(`src/**/{words,*-words}.${language}.ts`).map(
        (file) => import(pathToFileURL(resolve(file)).href) as Promise<{ words: unknown }>,
      ),
    );
    const pieces = modules.flatMap(({ words }) => sentences(words));
    return new Set(pieces.map((piece) => piece.replace(/[\s.:,;!?“”]+/g, ' ').trim()));
  };

  test('no word of the English interface is left on a page', async () => {
    const own = await wordsOf(id);
    // What else the trade says may be English: the reader meets it in a maker's book.
    for (const { text } of files(join('content', id, 'glossary')))
      for (const name of glossarySchema.parse(parse(text)).also)
        for (const piece of [name, ...name.split(' ')]) own.add(piece);
    const english = [...(await wordsOf(source))].filter(
      (piece) => /\p{L}{4}|\p{L} \p{L}/u.test(piece) && !own.has(piece),
    );
    expect(english.length).toBeGreaterThan(100);
    const found = pages
      .filter(({ address }) => languageAt(address).id === id)
      .flatMap(({ address, html }) => {
        const seen = html
          .replace(/<(script|style|math)\b[^]*?<\/\1>/g, ' ')
          // What says that it is in another language may be.
          .replace(new RegExp(`<a\\b[^>]*\\slang="(?!${id}")[^>]*>[^]*?</a>`, 'g'), ' ')
          .replace(new RegExp(`<span\\b[^>]*\\slang="(?!${id}")[^>]*>[^]*?</span>`, 'g'), ' ')
          .replace(
            /<[^>]*?\s(?:aria-label|aria-valuetext|placeholder|title)="([^"]*)"[^>]*>/g,
            ' | $1 | ',
          )
          .replace(/<\/?(?:p|li|h\d|td|th|dt|dd|div|section|button|label|legend)\b[^>]*>/g, ' | ')
          .replace(/<[^>]*>/g, '')
          .replace(/&#39;/g, '’')
          .replace(/[\s.:,;!?“”]+/g, ' ');
        return english
          .filter((piece) =>
            new RegExp(
              `(?<![\\p{L}])${piece.replace(/[.*+?^${}()|[\]\\]/g, '\\$&')}(?![\\p{L}])`,
              'u',
            ).test(seen),
          )
          .map((piece) => `${address}: ${piece}`);
      });
    expect(found).toEqual([]);
  });
});

test('every page says its language', () => {
  for (const { address, html } of pages) {
    expect(html, address).toContain(`<html lang="${languageAt(address).id}"`);
  }
});
