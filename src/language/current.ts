import { languages, type Language } from './languages.ts';
import { words } from './words.en.ts';

/** The language of this build. English in Node: in tests and on the command line. */
export const language: Language = languages[words.id];

/** Where a page that exists in this language lies: "/glossary/" is "/es/glossary/" in Spanish. */
export const address = (path: `/${string}`): string => language.base + path.slice(1);
