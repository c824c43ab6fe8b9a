// What the search page says and reads. No screen here, so that Node tests it.

export const longest = 100;

/** What was typed, made fit to search for: never longer than the field allows, spaces as one. */
export const tidy = (words: string): string => words.replace(/\s+/g, ' ').trim().slice(0, longest);

export const wordsIn = (search: string): string => tidy(new URLSearchParams(search).get('q') ?? '');

export const addressFor = (words: string): string =>
  words === '' ? '/search/' : `/search/?${new URLSearchParams({ q: words }).toString()}`;

export interface Counts {
  readonly lesson: number;
  readonly glossary: number;
  readonly other: number;
}

const several = (count: number, one: string, many: string): string =>
  `${count} ${count === 1 ? one : many}`;

const and = (parts: readonly string[]): string => {
  const last = parts.at(-1) ?? '';
  return parts.length < 2 ? last : `${parts.slice(0, -1).join(', ')} and ${last}`;
};
const quoted = (word: string): string => `“${word}”`;

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

export function countSentence(
  words: string,
  { lesson, glossary, other }: Counts,
  fates: readonly Fate[],
): string {
  const parts = [
    ...(lesson > 0 ? [several(lesson, 'lesson', 'lessons')] : []),
    ...(glossary > 0 ? [several(glossary, 'glossary entry', 'glossary entries')] : []),
    ...(other > 0 ? [several(other, 'other place', 'other places')] : []),
  ];
  const nowhere = fates.filter(({ standing }) => standing === 'nowhere').map(({ word }) => word);
  if (parts.length === 0) {
    return fates.length > 1 && nowhere.length === 0
      ? `Nothing has all of ${quoted(words)}.`
      : `Nothing found for ${quoted(words)}.`;
  }
  const left = nowhere.length === 0 ? '' : ` No page has ${nowhere.map(quoted).join(' or ')}.`;
  return `${quoted(searched(fates))} is in ${and(parts)}.${left}`;
}

const unitsOf = {
  us: /\b(psi|°?f|gpm|lbf|ft|in|thousandths?|mph|hp|qt)\b/i,
  si: /\b(kpa|°?c|l\/min|n·?m|mm|km\/h|kw)\b/i,
};

/** Numbers are searched in the system that is shown: say so where the words look like the other. */
export function unitHint(words: string, system: 'us' | 'si'): string | null {
  const other = system === 'us' ? 'si' : 'us';
  if (!/\d/.test(words) || !unitsOf[other].test(words)) return null;
  return system === 'us'
    ? 'The page shows US units, and numbers are searched as shown. Press kPa at the top to search metric ones.'
    : 'The page shows metric units, and numbers are searched as shown. Press psi at the top to search US ones.';
}

/** The single words of a search that found nothing, to be tried one at a time. */
export function singleWords(words: string): string[] {
  const single = [...new Set(words.split(' '))].filter((word) => word.length > 2);
  return single.length > 1 ? single.slice(0, 6) : [];
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
