/**
 * The languages the site is built in, each once, English at the root and first: its build empties
 * the folder that the others are built into. Nothing is imported here, because astro.config.mjs and
 * the build scripts read this file as it stands.
 */
export type LanguageId = 'en' | 'es';

export interface Language {
  readonly id: LanguageId;
  /** What it calls itself. */
  readonly name: string;
  /** The link to a page of it from the same page in another language, so in its own words. */
  readonly twin: string;
  /** For `Intl`: how numbers, lists and plurals are written. */
  readonly locale: string;
  readonly dir: 'ltr' | 'rtl';
  /** Where its pages lie. */
  readonly base: string;
}

export const languages: Readonly<Record<LanguageId, Language>> = {
  en: { id: 'en', name: 'English', twin: 'In English', locale: 'en-US', dir: 'ltr', base: '/' },
  // Of the Americas, as its readers write: 1,234.5 and not 1.234,5.
  es: { id: 'es', name: 'Español', twin: 'En español', locale: 'es-MX', dir: 'ltr', base: '/es/' },
};

/** The one that every page exists in, and that a reader is sent to where another has no page. */
export const source: LanguageId = 'en';

/** What a build was asked for in SITE_LANGUAGE; without it, English. */
export function languageOf(asked: string | undefined): Language {
  if (asked === undefined || asked === '') return languages[source];
  if (Object.hasOwn(languages, asked)) return languages[asked as LanguageId];
  const known = Object.keys(languages).join(', ');
  throw new Error(
    `SITE_LANGUAGE is "${asked}". src/language/languages.ts has: ${known}. Name one of these, or add it there.`,
  );
}

/** The path of a page without the base of its language, and which language that was. */
export function languageAt(address: string): { readonly id: LanguageId; readonly path: string } {
  const found = Object.values(languages).find(
    ({ id, base }) => id !== source && address.startsWith(base),
  );
  return found === undefined
    ? { id: source, path: address }
    : { id: found.id, path: `/${address.slice(found.base.length)}` };
}
