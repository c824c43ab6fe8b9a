// The index that src/build/search-index.ts makes, and the few things of Pagefind that we use.
import { findIn, type Answer } from './search-find.ts';
import type { Kind } from './search-lookup.ts';
import type { NameIndex } from './search-names.ts';

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
  /** How many of them stand at once, where that is not as usual. */
  readonly few?: number;
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
interface Pagefind extends NameIndex<{ readonly id: string; data(): Promise<PagefindData> }> {
  options(options: { excerptLength: number; baseUrl: string }): Promise<void>;
  init(): Promise<void>;
}

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

export async function find(
  words: string,
  system: 'us' | 'si',
): Promise<Pick<Answer<never>, 'looked' | 'called'> & { readonly found: readonly Found[] }> {
  const { found, ...told } = await findIn(await load(system), words);
  return {
    ...told,
    found: found.map(({ results, ...rest }) => ({
      ...rest,
      pages: results.map((result) => async () => asPage(await result.data())),
    })),
  };
}
