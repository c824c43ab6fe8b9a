// Whether the words of a search are on the site at all. Asked for a word that it does not have, Pagefind
// drops letters from its end until something fits, and says nothing: "airbag" finds air. So each word is
// looked up first, and the results are held against where it really stands.
import { words as says } from './found-words.en.ts';

export const kinds = ['lesson', 'glossary', 'other'] as const;
export type Kind = (typeof kinds)[number];

export interface Hit {
  readonly id: string;
  data(): Promise<{ readonly excerpt: string; readonly meta?: { readonly title?: string } }>;
}
/** What we ask of Pagefind; null for words takes whatever the filters let through. */
export interface Searcher<One extends Hit = Hit> {
  search(
    words: string | null,
    options?: { readonly filters: { readonly kind: Kind; readonly name?: string } },
  ): Promise<{ readonly results: readonly One[] }>;
}

export interface Looked {
  readonly word: string;
  /** `begins`: no word of the site is this one, but some begin with it. */
  readonly standing: 'there' | 'begins' | 'nowhere';
  /** The pages that have it. */
  readonly ids: ReadonlySet<string>;
  /** Words of the site that begin as it does, where it is nowhere. */
  readonly close: readonly string[];
}

/** Results whose excerpts are read for the words in them. */
const read = 4;
const closeShown = 3;
/** Letters that a word must share to be called close, and the longest word worth the looking. */
const shared = 3;
const longestWord = 24;

const collator = new Intl.Collator(says.locale, { sensitivity: 'accent' });
/** Whether two words differ in capital letters at most. */
export const sameWord = (one: string, other: string): boolean => collator.compare(one, other) === 0;

const bare = (word: string): string => word.replace(/^[^\p{L}\p{N}]+|[^\p{L}\p{N}]+$/gu, '');

/** The words of the site, as written there, that a search found and that begin with `start`. */
async function beginningWith(start: string, hits: readonly Hit[]): Promise<string[]> {
  const pages = await Promise.all(hits.slice(0, read).map((hit) => hit.data()));
  const found: string[] = [];
  for (const { excerpt } of pages) {
    for (const [, marked = ''] of excerpt.matchAll(/<mark>(.*?)<\/mark>/g)) {
      const word = bare(marked);
      const begins = sameWord(word.slice(0, start.length), start);
      if (begins && !found.some((one) => sameWord(one, word))) found.push(word);
    }
  }
  return found;
}

async function closeTo(index: Searcher, word: string): Promise<string[]> {
  const shortest = Math.max(shared, Math.ceil(word.length / 2));
  for (let length = Math.min(word.length, longestWord) - 1; length >= shortest; length -= 1) {
    const start = word.slice(0, length);
    const found = await beginningWith(start, (await index.search(start)).results);
    if (found.length > 0) return found.slice(0, closeShown);
  }
  return [];
}

const ids = (hits: readonly Hit[]) => new Set(hits.map(({ id }) => id));

/** Pagefind takes what stands in quotes as it is, but for the ending: "slipping" is still "slip". */
const exactly = (index: Searcher, word: string) => index.search(`"${word}"`);

async function lookUpWord(index: Searcher, word: string): Promise<Looked[]> {
  const exact = await exactly(index, word);
  if (exact.results.length > 0) {
    return [{ word, standing: 'there', ids: ids(exact.results), close: [] }];
  }
  // "line-pressure" is looked for as it is first, then as the page may write it.
  const parts = word.split(/[-–/]/).filter((part) => bare(part) !== '');
  if (parts.length > 1) return lookUpAll(index, parts);
  const { results } = await index.search(word);
  if ((await beginningWith(bare(word), results)).length > 0) {
    return [{ word, standing: 'begins', ids: ids(results), close: [] }];
  }
  return [{ word, standing: 'nowhere', ids: new Set(), close: await closeTo(index, bare(word)) }];
}

const lookUpAll = async (index: Searcher, words: readonly string[]): Promise<Looked[]> =>
  (await Promise.all(words.map((word) => lookUpWord(index, word)))).flat();

/** Each word of a search once. Signs without a letter or a figure are no words. */
export async function lookUp(index: Searcher, words: string): Promise<Looked[]> {
  const single = words
    .replaceAll('"', ' ')
    .split(' ')
    .filter((word) => bare(word) !== '');
  const looked = await lookUpAll(index, [...new Set(single)]);
  return looked.filter(({ word }, index) => looked.findIndex((one) => one.word === word) === index);
}
