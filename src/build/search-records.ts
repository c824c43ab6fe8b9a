import type { BuiltPage } from './pages.ts';

export interface SearchRecord {
  /** Where a hit leads. */
  readonly url: string;
  /** A page for the indexer, with its `kind` as a filter. */
  readonly html: string;
}

/** The words that src/layouts/search-page.ts asks for. */
type Kind = 'lesson' | 'glossary' | 'other';

/** Pages that only lead elsewhere: a hit on one would hide the page it leads to. */
const waysIn = new Set(['/', '/course/', '/search/', '/404.html']);

/** Pages that are lists: each entry is a hit of its own, or "piston" would find one page, Glossary. */
const lists = new Map<string, { kind: Kind; title: string }>([
  ['/glossary/', { kind: 'glossary', title: '' }],
  ['/sources/', { kind: 'other', title: 'Source: ' }],
]);

/** Pagefind puts nothing between these, and would read the cells of a table as one word. */
const apart = (html: string) => html.replace(/<\/(?:dd|dt|td|th)>/g, ' $&');

const whole = (kind: Kind, inside: string) =>
  `<html lang="en"><body><main data-pagefind-filter="kind:${kind}">${apart(inside)}</main></body></html>`;

/** Entries name each other; "seal" should find what a seal is, not all that is near it. */
const waysOn = /<dd[^>]*>\s*(?:See also|Lesson):[^]*?<\/dd>/g;

const entryPattern = /<div id="([^"]+)">\s*<dt[^>]*>([^]*?)<\/dt>([^]*?)<\/div>/g;

/** What the search finds: pages, and the entries of pages that are lists. */
export function searchRecords(pages: readonly BuiltPage[]): SearchRecord[] {
  return (
    pages
      // A page that leads on at once is a way in as well.
      .filter(({ address, html }) => !waysIn.has(address) && !html.includes('http-equiv="refresh"'))
      .flatMap(({ address, html }) => {
        const main = html.match(/<main\b[^>]*>([^]*)<\/main>/)?.[1];
        if (main === undefined) throw new Error(`${address} has no <main>, so nothing to search.`);
        const list = lists.get(address);
        if (list === undefined) {
          const kind = address.startsWith('/lessons/') ? 'lesson' : 'other';
          return [{ url: address, html: whole(kind, main) }];
        }
        const entries = Array.from(main.matchAll(entryPattern), ([, id, term, rest = '']) => ({
          url: `${address}#${id}`,
          html: whole(list.kind, `<h1>${list.title}${term}</h1>${rest.replace(waysOn, '')}`),
        }));
        if (entries.length === 0)
          throw new Error(`${address} has no entries that could be indexed.`);
        return entries;
      })
  );
}
