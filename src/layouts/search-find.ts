// What a search finds: what has its words, and where the glossary has one of them under another name, what has that too.
import { kinds, lookUp, sameWord, type Hit, type Kind, type Looked } from './search-lookup.ts';
import {
  explaining,
  lookUpTerm,
  nameIn,
  nameOf,
  type Name,
  type NameIndex,
} from './search-names.ts';
import { searched } from './search-words.ts';

export interface Answer<Result> {
  /** What is known of each word that was typed. */
  readonly looked: readonly Looked[];
  /** What was searched as well, in the words of the glossary, and brought something. */
  readonly called: readonly string[];
  /** In the order in which they are shown, each in order of fit. */
  readonly found: readonly {
    readonly kind: Kind;
    readonly results: readonly Result[];
    /** How many of them stand at once, where that is not as usual. */
    readonly few?: number;
  }[];
}

type Lists<Result> = Readonly<Record<Kind, readonly Result[]>>;

async function byKind<Result>(
  list: (kind: Kind) => Promise<readonly Result[]>,
): Promise<Lists<Result>> {
  const lists = await Promise.all(kinds.map(async (kind) => [kind, await list(kind)] as const));
  return Object.fromEntries(lists) as Lists<Result>;
}

/** What has all of the words that are anywhere. `asked` is how Pagefind is asked for them. */
async function having<Result extends Hit>(
  index: NameIndex<Result>,
  looked: readonly Looked[],
  asked?: string,
): Promise<Lists<Result>> {
  const kept = looked.filter(({ standing }) => standing !== 'nowhere');
  const words = asked ?? kept.map(({ word }) => word).join(' ');
  return byKind(async (kind) => {
    if (kept.length === 0) return [];
    const { results } = await index.search(words, { filters: { kind } });
    return results.filter(({ id }) => kept.every(({ ids }) => ids.has(id)));
  });
}

/** What has a term, or what was typed with the term in the place of its name. */
async function called<Result extends Hit>(
  index: NameIndex<Result>,
  { before, after }: Name,
  term: string,
): Promise<{ readonly called: string; readonly lists: Lists<Result> }> {
  const one = await lookUpTerm(index, term);
  const parts = [...(await lookUp(index, before)), one, ...(await lookUp(index, after))];
  if (parts.length > 1) return { called: searched(parts), lists: await having(index, parts) };
  const lists = await having(index, parts, `"${term}"`);
  const { lesson } =
    lists.lesson.length > 0 ? lists : await having(index, await lookUp(index, term));
  return {
    called: term,
    lists: { ...lists, lesson: [...(await explaining(index, term)), ...lesson] },
  };
}

export async function findIn<Result extends Hit>(
  index: NameIndex<Result>,
  words: string,
): Promise<Answer<Result>> {
  const exact = await nameIn(index, words, false);
  const single = await lookUp(index, words);
  // A name that is written otherwise here is no search for those of its words that happen to stand somewhere.
  const otherwise = exact !== undefined && single.some(({ standing }) => standing === 'nowhere');
  const looked = otherwise ? [] : single;
  const typed = await having(index, looked);
  const unheard = typed.lesson.length === 0;
  const name =
    exact ??
    (unheard ? ((await nameIn(index, words, true)) ?? (await nameOf(typed.glossary))) : undefined);
  if (name === undefined) {
    return { looked, called: [], found: kinds.map((kind) => ({ kind, results: typed[kind] })) };
  }
  const terms = name.own && !unheard ? [] : name.terms;
  const others = await Promise.all(terms.map((term) => called(index, name, term)));
  const seen = new Set(kinds.flatMap((kind) => typed[kind].map(({ id }) => id)));
  const more = others.filter(({ lists }) =>
    kinds.some((kind) => lists[kind].some(({ id }) => !seen.has(id))),
  );
  // What goes by the name comes first: what was typed is told before it is looked for elsewhere.
  const joined = (kind: Kind): readonly Result[] => {
    const all = new Map<string, Result>();
    for (const one of [...typed[kind], ...more.flatMap(({ lists }) => lists[kind])])
      if (!all.has(one.id)) all.set(one.id, one);
    return [...all.values()].sort(
      (a, b) => Number(name.ids.has(b.id)) - Number(name.ids.has(a.id)),
    );
  };
  const entries = joined('glossary').filter(({ id }) => name.ids.has(id)).length;
  const explained = more.length > 0 && entries > 0;
  const order = explained ? (['glossary', 'lesson', 'other'] as const) : kinds;
  return {
    looked,
    called: more.map((one) => one.called).filter((one) => !sameWord(one, words)),
    found: order.map((kind) => ({
      kind,
      results: joined(kind),
      ...(explained && kind === 'glossary' && { few: entries }),
    })),
  };
}
