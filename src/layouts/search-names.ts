// Names that the glossary knows a term by. "TCC" stands in its entry alone, and the lessons write "converter clutch": so a
// search for the one is a search for the other as well. Which names there are, the index tells by its filter `name`:
// src/build/search-records.ts puts them on the entry and on the lesson that explains it.
import { squeezed } from '../language/squeezed.ts';
import { sameWord, type Hit, type Kind, type Looked, type Searcher } from './search-lookup.ts';

export interface NameIndex<One extends Hit = Hit> extends Searcher<One> {
  filters(): Promise<{ readonly name?: Readonly<Record<string, unknown>> }>;
}

export interface Name {
  /** The entries that go by it, and the lessons that explain them. */
  readonly ids: ReadonlySet<string>;
  /** What the glossary calls it, and whether that is what was typed. */
  readonly terms: readonly string[];
  readonly own: boolean;
  /** What was typed before it and behind it. */
  readonly before: string;
  readonly after: string;
}

/** Every run of the words, the longest first. */
const runs = (count: number, shortest: number): readonly (readonly [number, number])[] =>
  Array.from({ length: count }, (_, short) => count - short)
    .filter((length) => length >= shortest)
    .flatMap((length) =>
      Array.from({ length: count - length + 1 }, (_, from) => [from, from + length] as const),
    );

const titlesOf = (entries: readonly Hit[]): Promise<string[]> =>
  Promise.all(entries.map(async (entry) => (await entry.data()).meta?.title ?? ''));

/** The lesson that explains a term, which may write it shorter, or with a word of its own. */
export async function explaining<One extends Hit>(
  index: Searcher<One>,
  term: string,
): Promise<readonly One[]> {
  const filters = { kind: 'lesson', name: squeezed(term) } as const;
  const { results } = await index.search(term, { filters });
  return results.length > 0 ? results : (await index.search(null, { filters })).results;
}

/** The name that a search is, or where `inside` says so the longest that stands among its words. */
export async function nameIn(
  index: NameIndex,
  words: string,
  inside: boolean,
): Promise<Name | undefined> {
  const { name: known = {} } = await index.filters();
  const parts = words.split(' ');
  for (const [from, to] of runs(parts.length, inside ? 1 : parts.length)) {
    const run = parts.slice(from, to).join(' ');
    const name = squeezed(run);
    if (!Object.hasOwn(known, name)) continue;
    const having = async (kind: Kind) =>
      (await index.search(null, { filters: { name, kind } })).results;
    const [entries, lessons] = await Promise.all([having('glossary'), having('lesson')]);
    const terms = await titlesOf(entries);
    const own = terms.some((term) => sameWord(term, run));
    if (own && run !== words) continue;
    return {
      ids: new Set([...entries, ...lessons].map(({ id }) => id)),
      terms,
      own,
      before: parts.slice(0, from).join(' '),
      after: parts.slice(to).join(' '),
    };
  }
  return undefined;
}

/** Entries whose terms are taken for what was typed. */
const most = 2;

/** A piece of a name, "EPC" of "EPC solenoid", which the glossary has and no lesson: what the entries with it are called. */
export async function nameOf(entries: readonly Hit[]): Promise<Name | undefined> {
  const first = entries.slice(0, most);
  if (first.length === 0) return undefined;
  return {
    ids: new Set(first.map(({ id }) => id)),
    terms: await titlesOf(first),
    own: false,
    before: '',
    after: '',
  };
}

/** A term of several words where they stand side by side. */
export async function lookUpTerm(index: Searcher, term: string): Promise<Looked> {
  const { results } = await index.search(`"${term}"`);
  return {
    word: term,
    standing: results.length > 0 ? 'there' : 'nowhere',
    ids: new Set(results.map(({ id }) => id)),
    close: [],
  };
}
