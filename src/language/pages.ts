/**
 * Which pages exist in which language, by looking at the folders of content. Node only, while the
 * site is built: a build knows the pages of its own language and must link to those of the others.
 */
import { existsSync, readdirSync } from 'node:fs';
import { join } from 'node:path';
import { contentRoot } from './content-root.ts';
import { address, language } from './current.ts';
import { languageAt, languages, source, type Language, type LanguageId } from './languages.ts';

/** The content of one language: lessons, pages, questions, glossary, sources. */
export const contentOf = (id: LanguageId): string => join(contentRoot(), id);

const holds = (id: LanguageId, folder: string): boolean => {
  const path = join(contentOf(id), folder);
  return existsSync(path) && readdirSync(path).length > 0;
};

/** Whether a language has the page. English has every one; so a wrong path is left to the link check. */
export function exists(id: LanguageId, path: string): boolean {
  if (id === source) return true;
  if (path === '/') return holds(id, 'lessons');
  if (path === '/glossary/') return holds(id, 'glossary');
  const file = path.startsWith('/lessons/') ? path.slice(1, -1) : `pages${path.slice(0, -1)}`;
  return existsSync(join(contentOf(id), `${file}.mdx`));
}

export interface Twin {
  readonly language: Language;
  readonly href: string;
}

/** A built page in each language that has it, its own among them; none where it stands alone. */
export function twinsOf(pathname: string): readonly Twin[] {
  const { path } = languageAt(pathname);
  const twins = Object.values(languages)
    .filter(({ id }) => exists(id, path))
    .map((one) => ({ language: one, href: one.base + path.slice(1) }));
  return twins.length > 1 ? twins : [];
}

/**
 * What the head of a page says of its twins to search engines, which take whole addresses and no other: nothing where the build
 * was not told at which address the site will stand.
 *
 * @example
 * const site = new URL('https://site.example/shop/');
 * alternatesOf('/es/', site).map(({ href }) => href)
 * // ['https://site.example/shop/', 'https://site.example/shop/es/', 'https://site.example/shop/']
 */
export function alternatesOf(
  pathname: string,
  site: URL | undefined,
): readonly { readonly hreflang: string; readonly href: string }[] {
  if (site === undefined) return [];
  const links = twinsOf(pathname).map(({ language: { id }, href }) => ({
    hreflang: id as string,
    href: new URL(href.slice(1), site).href,
  }));
  const own = links.find(({ hreflang }) => hreflang === source);
  return own === undefined ? links : [...links, { ...own, hreflang: 'x-default' }];
}

export interface Reached {
  readonly href: string;
  /** Set where the page is not in the reader's language. */
  readonly hreflang?: LanguageId;
}

/** A link to a page in the language of this build or, failing that, in English. */
export const reach = (path: `/${string}`): Reached =>
  exists(language.id, path.replace(/#.*$/, ''))
    ? { href: address(path) }
    : { href: path, hreflang: source };
