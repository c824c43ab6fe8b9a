/** The lessons and the glossary as the content tests read them, and a lesson's words without what is no sentence. */
import { readdirSync, readFileSync } from 'node:fs';
import { basename, join } from 'node:path';
import { parse } from 'yaml';
import { glossarySchema, lessonSchema } from '../../src/lessons/lesson-schema.ts';
import { TERM } from './reading-grade.ts';

const read = (folder: string, ending: string) =>
  readdirSync(join('content', 'en', folder))
    .filter((name) => name.endsWith(ending))
    .map((name) => ({
      id: basename(name, ending),
      text: readFileSync(join('content', 'en', folder, name), 'utf8'),
    }));

export const lessons = read('lessons', '.mdx')
  .map(({ id, text }) => {
    const [, head = '', body = ''] = /^---\n([^]*?)\n---\n([^]*)$/.exec(text) ?? [];
    return { id, body, head: lessonSchema.parse(parse(head)) };
  })
  .sort((a, b) => a.head.order - b.head.order);
export const glossary = read('glossary', '.yaml').map(({ id, text }) => ({
  id,
  data: glossarySchema.parse(parse(text)),
}));

/** Every name a glossary entry goes by, longest first, so that "pump slip" goes before "pump". */
const names = glossary
  .flatMap(({ data }) => [data.term, ...data.also])
  .sort((a, b) => b.length - a.length)
  .map((name) => name.replace(/[.*+?^${}()|[\]\\]/g, '\\$&'));
export const terms = new RegExp(`(?<![\\p{L}])(?:${names.join('|')})(?:s|es)?(?![\\p{L}])`, 'giu');

/** The words that a reader reads as sentences: no tables, headings, formulas or tags. */
export function prose(body: string): string {
  return (
    body
      .replace(/\{\/\*[^]*?\*\/\}/g, '')
      .replace(/\$\$[^]*?\$\$/g, '\n\n')
      .replace(/\$[^$\n]*\$/g, TERM)
      .replace(/^\|.*\|\s*$/gm, '')
      .replace(/^#+ .*$/gm, '')
      .replace(/<Term [^>]*>[^]*?<\/Term>/g, TERM)
      .replace(/<(?:Num|Sum) [^>]*\/>/g, TERM)
      .replace(/\s*<Src [^>]*\/>/g, '')
      .replace(/<\/?[A-Z][^>]*>/g, '\n\n')
      // The mark for what has no source is no sentence of the lesson.
      .replace(/\s*\(common practice, no source\)/g, '')
      .replace(/[*_`]/g, '')
      .replace(terms, TERM)
  );
}

/** The same with every word that a reader meets, for counting them; a number with its unit is one. */
export function plainProse(body: string): string {
  return (
    body
      .replace(/\{\/\*[^]*?\*\/\}/g, '')
      .replace(/\$\$[^]*?\$\$/g, '\n\n')
      .replace(/\$[^$\n]*\$/g, 'x')
      .replace(/^\|.*\|\s*$/gm, '')
      .replace(/^#+ .*$/gm, '')
      .replace(/<\/?Term[^>]*>/g, '')
      // A sum is read number by number.
      .replace(/<Sum of="([^"]*)" \/>/g, (_, of: string) => of.replace(/[^\w\s-]|\s-\s/g, ' '))
      .replace(/<Num [^>]*\/>/g, '1')
      .replace(/\s*<Src [^>]*\/>/g, '')
      .replace(/<\/?[A-Z][^>]*>/g, '\n\n')
      .replace(/\s*\(common practice, no source\)/g, '')
      .replace(/[*_`]/g, '')
  );
}
