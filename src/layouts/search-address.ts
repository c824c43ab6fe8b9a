/** A search in the address of a page: its words, and the way there and back. */
export const longest = 100;

/** What was typed, made fit to search for: never longer than the field allows, spaces as one. */
export const tidy = (words: string): string => words.replace(/\s+/g, ' ').trim().slice(0, longest);

export const wordsIn = (search: string): string => tidy(new URLSearchParams(search).get('q') ?? '');

/** What stands behind the path; nothing for no words. */
export const asked = (words: string): string =>
  words === '' ? '' : `?${new URLSearchParams({ q: words }).toString()}`;

export const addressFor = (words: string): string => `/search/${asked(words)}`;
