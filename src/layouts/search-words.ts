// What the search page says and reads. No screen here, so that Node tests it.
import { words as says } from './found-words.en.ts';

export interface Counts {
  readonly lesson: number;
  readonly glossary: number;
  readonly other: number;
}

/** What became of each word of a search: src/layouts/search-lookup.ts finds it out. */
export interface Fate {
  readonly word: string;
  readonly standing: 'there' | 'begins' | 'nowhere';
}

/** What was searched for: the words that are anywhere, cut-off ones marked as such. */
export const searched = (fates: readonly Fate[]): string =>
  fates
    .filter(({ standing }) => standing !== 'nowhere')
    .map(({ word, standing }) => (standing === 'begins' ? `${word}…` : word))
    .join(' ');

/** `called`: what was searched as well, because the glossary calls it so. */
export function countSentence(
  words: string,
  counts: Counts,
  fates: readonly Fate[],
  called: readonly string[] = [],
): string {
  const places = (['lesson', 'glossary', 'other'] as const)
    .filter((kind) => counts[kind] > 0)
    .map((kind) => says.counted[kind](counts[kind]));
  const nowhere = fates.filter(({ standing }) => standing === 'nowhere').map(({ word }) => word);
  if (places.length === 0) {
    return fates.length > 1 && nowhere.length === 0 ? says.notTogether(words) : says.nothing(words);
  }
  const typed = searched(fates);
  const either = says.either([...(typed === '' ? [] : [typed]), ...called]);
  const found = says.found({ either, places });
  return nowhere.length === 0 ? found : [found, says.noneHas(nowhere)].join(' ');
}

const unitsOf = {
  us: /\b(psi|°?f|gpm|lbf|ft|in|thousandths?|mph|hp|qt)\b/i,
  si: /\b(kpa|°?c|l\/min|n·?m|mm|km\/h|kw)\b/i,
};

/** Numbers are searched in the system that is shown: say so where the words look like the other. */
export function unitHint(words: string, system: 'us' | 'si'): string | null {
  const other = system === 'us' ? 'si' : 'us';
  if (!/\d/.test(words) || !unitsOf[other].test(words)) return null;
  return says.shownIn[system];
}

/** The single words of a search that found nothing together, to be tried one at a time: those that are somewhere. */
export function singleWords(fates: readonly Fate[]): readonly string[] {
  if (fates.length < 2) return [];
  return fates
    .filter(({ word, standing }) => standing !== 'nowhere' && word.length > 2)
    .map(({ word }) => word)
    .slice(0, 6);
}

/** The whole of a search of several words, each that is nowhere put right; null where that cannot be told. */
export function putRight(
  fates: readonly (Fate & { readonly close: readonly string[] })[],
): string | null {
  const right = fates.map(({ word, standing, close }) =>
    standing === 'nowhere' ? close[0] : word,
  );
  const wrong = fates.some(({ standing }) => standing === 'nowhere');
  if (fates.length < 2 || !wrong || right.includes(undefined)) return null;
  return right.join(' ');
}

export interface Piece {
  readonly text: string;
  readonly marked: boolean;
}

const entities: Record<string, string> = { amp: '&', lt: '<', gt: '>', quot: '"', '#39': "'" };

/** An excerpt as pieces of plain text: nothing from an index goes into the page as markup. */
export function pieces(excerpt: string): Piece[] {
  let marked = false;
  const found: Piece[] = [];
  // Where a word had a folded meaning after it, the index leaves a gap before the full stop.
  const closed = excerpt.replace(/\s+([.,;:?!])(?=\s|$)/g, '$1');
  for (const part of closed.split(/(<\/?mark>)/)) {
    if (part === '<mark>') marked = true;
    else if (part === '</mark>') marked = false;
    else if (part !== '') {
      const text = part.replace(/&(#?\w+);/g, (whole, name: string) => entities[name] ?? whole);
      found.push({ text, marked });
    }
  }
  return found;
}
