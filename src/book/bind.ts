/** The whole book as one page of HTML. */
import { readFileSync } from 'node:fs';
import { lessonCount, type Chapter } from './chapters.ts';
import { contentsOf, type Heading } from './contents.ts';
import type { Edition } from './edition.ts';
import { escaped, quoted } from '../build/escape.ts';
import type { Frozen } from './freeze.ts';
import { linked, pageOf, type Book } from './links.ts';
import type { Options } from './options.ts';
import { MARGINS } from './sheet-size.ts';
import { words } from './words.en.ts';

export interface Part {
  readonly chapter: Chapter;
  readonly frozen: Frozen;
}

const style = readFileSync(new URL('book.css', import.meta.url), 'utf8');
const CONTENTS = 'contents';
const HOW = 'how-to-use';
const KEY = 'key';
/** What every lesson has says nothing in a list. */
const IN_EVERY_LESSON = /--(?:objectives|the-mistake|in-short|your-turn|without-looking-back)$/u;
const LETTER = /--letter-/u;

const titleOf = ({ chapter: { number }, frozen: { title } }: Part): string =>
  number === undefined ? title : words.lesson({ number: String(number), title });

/** Everything that the list of contents names, in order. */
export function headingsOf(parts: readonly Part[]): readonly Heading[] {
  const chapters = parts.flatMap((part): readonly Heading[] => [
    { id: part.chapter.id, title: titleOf(part), level: 1 },
    ...part.frozen.headings
      .filter(({ id }) => !IN_EVERY_LESSON.test(id) && !LETTER.test(id))
      .map(({ id, title }): Heading => ({ id, title, level: 2 })),
  ]);
  const lessons = parts.filter(({ chapter: { number } }) => number !== undefined).length;
  const after = chapters.findIndex(({ id }) => id === parts[lessons]?.chapter.id);
  return [
    { id: HOW, title: words.how.title, level: 1 },
    ...chapters.slice(0, after),
    { id: KEY, title: words.key.title, level: 1 },
    ...chapters.slice(after),
  ];
}

/** A kind of page for each chapter: its title runs at the head. */
const pageRules = (chapters: readonly { id: string; title: string }[]): string =>
  chapters
    .map(
      ({ id, title }) =>
        `@page ${id} { @top-left { content: ${quoted(title)}; } }\n#in-${id} { page: ${id}; }`,
    )
    .join('\n');

const chapterHtml = (id: string, html: string): string =>
  `<section class="book-chapter" id="in-${id}">${html}</section>`;

function cover({ version, date }: Edition, { units }: Options): string {
  const day = date.toLocaleDateString('en-US', { dateStyle: 'long', timeZone: 'UTC' });
  return `<section class="book-cover">
<h1>${escaped(words.title)}</h1>
<p class="lead">${escaped(words.subtitle)}</p>
<p>${escaped(words.edition({ version, date: day }))}<br>${escaped(words.units[units])}</p>
<div class="caution"><p>${escaped(words.safety)}</p></div>
<p>${escaped(words.cover)} ${escaped(words.free)}</p>
</section>`;
}

function contentsHtml(headings: readonly Heading[], book: Book): string {
  const pages = book.pages.size === 0 ? new Map(headings.map(({ id }) => [id, 999])) : book.pages;
  const lines = contentsOf(headings, pages).map(
    ({ id, title, level, page }) =>
      `<li class="level-${level}"><a href="#${id}"><span>${escaped(title)}</span><span class="book-page">${page}</span></a></li>`,
  );
  return `<h1 id="${CONTENTS}">${escaped(words.contents)}</h1><ol class="book-contents">${lines.join('\n')}</ol>`;
}

function keyHtml(parts: readonly Part[]): string {
  const lists = parts
    .filter(({ frozen: { key } }) => key !== '')
    .map(({ chapter: { number }, frozen: { title, key } }) => {
      const head = words.key.of({ lesson: String(number ?? lessonCount), title });
      return `<h2>${escaped(head)}</h2><ol class="book-key">${key}</ol>`;
    });
  return `<div class="sheet"><h1 id="${KEY}">${escaped(words.key.title)}</h1><p class="lead">${escaped(words.key.lead)}</p>${lists.join('\n')}</div>`;
}

const how = `<div class="sheet"><h1 id="${HOW}">${escaped(words.how.title)}</h1>${words.how.text.map((text) => `<p>${escaped(text)}</p>`).join('\n')}</div>`;

/** The book with the page numbers of the printing before; without any there is room for them. */
export function bind(parts: readonly Part[], book: Book, made: Edition, options: Options): string {
  const styles = [...new Set(parts.flatMap(({ frozen: { styles } }) => styles))];
  const lessons = parts.filter(({ chapter: { number } }) => number !== undefined);
  const rest = parts.filter(({ chapter: { number } }) => number === undefined);
  const own = [
    { id: HOW, title: words.how.title },
    { id: CONTENTS, title: words.contents },
    { id: KEY, title: words.key.title },
  ];
  const titled = parts.map((part) => ({ id: part.chapter.id, title: titleOf(part) }));
  const size = options.paper === 'a4' ? 'A4' : 'letter';
  const sheet = `@page { size: ${size}; margin: ${MARGINS.top}mm ${MARGINS.side}mm ${MARGINS.bottom}mm; }`;
  const print = ({ chapter: { id, number }, frozen: { html } }: Part): string =>
    chapterHtml(
      id,
      linked(number === undefined ? html : html.replace(/(<h1[^>]*>)/u, `$1${number}. `), book),
    );
  return `<!doctype html>
<html lang="en" data-units="${options.units}" data-theme="light" data-js>
<head><meta charset="utf-8"><title>${escaped(words.title)}</title>
${styles.map((text) => `<style>${text}</style>`).join('\n')}
<style>${sheet}\n${style}\n${pageRules([...own, ...titled])}
.sim-frame::after { content: ${quoted(words.run)} !important; }
.retrieval-plain::after { content: ${quoted(words.keyAt({ page: pageOf(KEY, book) }))} !important; }</style></head>
<body class="book"><main>
${cover(made, options)}
${chapterHtml(HOW, how)}
${chapterHtml(CONTENTS, contentsHtml(headingsOf(parts), book))}
${lessons.map(print).join('\n')}
${chapterHtml(KEY, keyHtml(lessons))}
${rest.map(print).join('\n')}
</main>
<div hidden>${[...book.ids].map((id) => `<a href="#${escaped(id)}"></a>`).join('')}</div>
</body></html>`;
}
