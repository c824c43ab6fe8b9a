import { squeezed } from '../language/squeezed.ts';
import type { BuiltPage } from './pages.ts';

export interface SearchRecord {
  /** Where a hit leads. */
  readonly url: string;
  /** A page for the indexer, with its `kind` as a filter; an entry of the glossary has one more for each `name` it goes by. */
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

interface Entry {
  readonly id: string;
  readonly term: string;
  readonly rest: string;
}
const entriesOf = (main: string): readonly Entry[] =>
  Array.from(main.matchAll(entryPattern), ([, id = '', term = '', rest = '']) => ({
    id,
    term,
    rest,
  }));

/** A search for one of its names is one for the term, and for the lesson that explains it: src/layouts/search-names.ts. */
const marks = (entries: readonly Entry[]): string =>
  entries
    .flatMap(({ term, rest }) => [
      term,
      ...(/<span class="also">([^<]*)/.exec(rest)?.[1] ?? '').split(', '),
    ])
    .map(squeezed)
    .filter((name) => name !== '')
    .map((name) => `<i data-pagefind-filter="name[data-name]" data-name="${name}"></i>`)
    .join('');

const mainOf = ({ address, html }: BuiltPage): string => {
  const main = html.match(/<main\b[^>]*>([^]*)<\/main>/)?.[1];
  if (main === undefined) throw new Error(`${address} has no <main>, so nothing to search.`);
  return main;
};

/** What the search finds: pages, and the entries of pages that are lists. */
export function searchRecords(pages: readonly BuiltPage[]): SearchRecord[] {
  const terms = pages
    .filter(({ address }) => lists.get(address)?.kind === 'glossary')
    .flatMap((page) => entriesOf(mainOf(page)));
  return (
    pages
      // A page that leads on at once is a way in as well.
      .filter(({ address, html }) => !waysIn.has(address) && !html.includes('http-equiv="refresh"'))
      .flatMap((page) => {
        const { address } = page;
        const main = mainOf(page);
        const list = lists.get(address);
        if (list === undefined) {
          const kind = address.startsWith('/lessons/') ? 'lesson' : 'other';
          const own = terms.filter(
            ({ rest }) => kind === 'lesson' && rest.includes(`href="${address}"`),
          );
          return [{ url: address, html: whole(kind, main + marks(own)) }];
        }
        const entries = entriesOf(main).map((entry) => ({
          url: `${address}#${entry.id}`,
          html: whole(
            list.kind,
            `<h1>${list.title}${entry.term}</h1>${entry.rest.replace(waysOn, '')}${
              list.kind === 'glossary' ? marks([entry]) : ''
            }`,
          ),
        }));
        if (entries.length === 0)
          throw new Error(`${address} has no entries that could be indexed.`);
        return entries;
      })
  );
}
