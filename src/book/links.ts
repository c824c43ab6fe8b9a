/** Where the links of one chapter lead in the book. */
import { escaped } from '../build/escape.ts';
import type { Chapter } from './chapters.ts';
import type { Pages } from './contents.ts';
import { words } from './words.en.ts';

/** Nobody types an address that is longer or names a state of a page; a lesson is found by its title. */
const TYPED = /^\/(?!lessons\/)[a-z0-9/-]{0,40}$/u;
/** These are looked up by their names: a page number in every other line would be in the way. */
const BY_NAME: readonly string[] = ['glossary', 'sources'];

export interface Book {
  readonly chapters: readonly Chapter[];
  /** Every place that is printed. */
  readonly ids: ReadonlySet<string>;
  readonly pages: Pages;
}

/** The place in the book that an address of the site stands at; undefined where the book has not got that page. */
export function placeOf(href: string, { chapters, ids }: Book): string | undefined {
  const [path = '', hash = ''] = href.split('#');
  const chapter = chapters.find(({ address }) => address === path.replace(/\?.*$/u, ''));
  if (chapter === undefined) return undefined;
  const place = `${chapter.id}--${hash}`;
  return ids.has(place) ? place : chapter.id;
}

/** As wide as a number will be before there is one: the first printing is laid out like the last. */
export const pageOf = (place: string, { pages }: Book): string => String(pages.get(place) ?? '000');

/** Links to pages of the book lead there and say on which page; those to other pages of the site are words. */
export function linked(html: string, book: Book): string {
  return html.replace(
    /<a\b([^>]*?)\shref="(\/[^"]*)"([^>]*)>([^]*?)<\/a>/gu,
    (_, before: string, href: string, after: string, text: string) => {
      const address = href.replaceAll('&amp;', '&');
      const place = placeOf(address, book);
      if (place === undefined) return TYPED.test(address) ? `${text} (${escaped(address)})` : text;
      const link = `<a${before} href="#${escaped(place)}"${after}>${text}</a>`;
      const chapter = place.split('--')[0] ?? '';
      if (BY_NAME.includes(chapter)) return link;
      return `${link} <span class="book-at">(${words.page({ page: pageOf(place, book) })})</span>`;
    },
  );
}
