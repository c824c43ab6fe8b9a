// The index that src/build/search-index.ts makes, and the few things of Pagefind that we use.
import { lookUp, type Looked } from './search-lookup.ts';

export type Kind = 'lesson' | 'glossary' | 'other';

export interface Section {
  readonly title: string;
  readonly url: string;
  /** Escaped text with <mark> round what was found. */
  readonly excerpt: string;
}
export interface Page extends Section {
  readonly sections: readonly Section[];
}
export interface Found {
  readonly kind: Kind;
  /** In order of fit; loaded when called, a few at a time. */
  readonly pages: readonly (() => Promise<Page>)[];
}

interface PagefindData {
  readonly url: string;
  readonly excerpt: string;
  readonly meta: { readonly title?: string };
  readonly sub_results: readonly {
    title: string;
    url: string;
    excerpt: string;
    weighted_locations: readonly { balanced_score: number }[];
  }[];
}
interface Pagefind {
  options(options: { excerptLength: number; baseUrl: string }): Promise<void>;
  init(): Promise<void>;
  search(
    words: string,
    options?: { filters: { kind: Kind } },
  ): Promise<{ results: readonly { readonly id: string; data(): Promise<PagefindData> }[] }>;
}

const kinds: readonly Kind[] = ['lesson', 'glossary', 'other'];
const loaded = new Map<string, Promise<Pagefind>>();
let failed = 0;

/** Where the index of a unit system lies: excerpts must not show both systems. */
function load(system: 'us' | 'si'): Promise<Pagefind> {
  const there = loaded.get(system);
  if (there !== undefined) return there;
  // A browser may keep a module that failed as failed: the next try asks by another address.
  const path = `/pagefind/${system}/pagefind.js${failed === 0 ? '' : `?${failed}`}`;
  const loading = (import(/* @vite-ignore */ path) as Promise<Pagefind>).then(async (pagefind) => {
    await pagefind.options({
      excerptLength: 24,
      baseUrl: path.slice(0, path.indexOf('pagefind/')),
    });
    await pagefind.init();
    return pagefind;
  });
  loaded.set(system, loading);
  // What failed once may work when the network is back.
  loading.catch(() => {
    failed += 1;
    loaded.delete(system);
  });
  return loading;
}

function asPage({ url, excerpt, meta, sub_results }: PagefindData): Page {
  // The one for the page itself says what the page's own excerpt says.
  const sections = sub_results
    .filter((section) => section.url !== url)
    .map((section) => ({
      section,
      fit: section.weighted_locations.reduce((sum, { balanced_score: fit }) => sum + fit, 0),
    }))
    .sort((a, b) => b.fit - a.fit)
    .map(({ section }) => section);
  const title = meta.title ?? url;
  return {
    title,
    url,
    excerpt,
    sections: sections.map(({ title, url, excerpt }) => ({ title, url, excerpt })),
  };
}

/** What is known of each word of a search, and what has all of them that are anywhere. */
export interface Answer {
  readonly looked: readonly Looked[];
  /** In order of fit; within a page its sections too. */
  readonly found: readonly Found[];
}

export async function find(words: string, system: 'us' | 'si'): Promise<Answer> {
  const pagefind = await load(system);
  const looked = await lookUp(pagefind, words);
  const kept = looked.filter(({ standing }) => standing !== 'nowhere');
  if (kept.length === 0) return { looked, found: kinds.map((kind) => ({ kind, pages: [] })) };
  const asked = kept.map(({ word }) => word).join(' ');
  const found = await Promise.all(
    kinds.map(async (kind) => {
      const { results } = await pagefind.search(asked, { filters: { kind } });
      const pages = results
        .filter(({ id }) => kept.every(({ ids }) => ids.has(id)))
        .map((result) => async () => asPage(await result.data()));
      return { kind, pages };
    }),
  );
  return { looked, found };
}
