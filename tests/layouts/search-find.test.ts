import { expect, test } from 'vitest';
import { squeezed } from '../../src/language/squeezed.ts';
import { findIn } from '../../src/layouts/search-find.ts';
import type { Hit, Kind } from '../../src/layouts/search-lookup.ts';
import type { NameIndex } from '../../src/layouts/search-names.ts';

interface Page {
  readonly kind: Kind;
  readonly title: string;
  readonly text: string;
  readonly names?: readonly string[];
}
const pages: Readonly<Record<string, Page>> = {
  slip: {
    kind: 'lesson',
    title: 'Slip',
    text: 'the converter clutch may slip',
    names: ['TCC', 'Converter clutch'],
  },
  drive: { kind: 'lesson', title: 'Drive', text: 'converter first, then the clutch' },
  live: { kind: 'lesson', title: 'Live', text: 'a converter clutch that opens; bubbles' },
  level: { kind: 'lesson', title: 'Level', text: 'bubbles and the level', names: ['Aeration'] },
  tcc: {
    kind: 'glossary',
    title: 'Converter clutch',
    text: 'locks the turbine; TCC, lock-up clutch',
    names: ['Converter clutch', 'TCC', 'lock-up clutch'],
  },
  slipping: { kind: 'glossary', title: 'Slip', text: 'slip of any clutch', names: ['Slip'] },
  shudder: { kind: 'glossary', title: 'Shudder', text: 'a converter clutch that grabs' },
  aeration: {
    kind: 'glossary',
    title: 'Aeration',
    text: 'air in the fluid',
    names: ['Aeration'],
  },
  epc: {
    kind: 'glossary',
    title: 'Drive',
    text: 'EPC valve',
    names: ['Drive', 'EPC valve'],
  },
  model: { kind: 'other', title: 'Model', text: 'converter and clutch' },
};

/** Finds as Pagefind does: a phrase in quotes as it is, else all of the words, and null whatever the filters let through. */
const index: NameIndex = {
  filters: () =>
    Promise.resolve({
      name: Object.fromEntries(
        Object.values(pages).flatMap(({ names = [] }) => names.map((name) => [squeezed(name), 1])),
      ),
    }),
  search(asked, { filters: { kind, name } = {} as { kind?: Kind; name?: string } } = {} as never) {
    const phrase = /^"(.+)"$/.exec(asked ?? '')?.[1]?.toLowerCase();
    const has = ({ title, text }: Page) => {
      const all = ` ${title} ${text} `.toLowerCase().replace(/[,;:]/g, '');
      if (asked === null) return true;
      if (phrase !== undefined) return all.includes(` ${phrase} `);
      return asked
        .toLowerCase()
        .split(' ')
        .every((word) => all.includes(` ${word} `));
    };
    const results = Object.entries(pages)
      .filter(([, page]) => kind === undefined || page.kind === kind)
      .filter(([, page]) => name === undefined || page.names?.map(squeezed).includes(name))
      .filter(([, page]) => has(page))
      .map(([id, { title }]): Hit => ({
        id,
        data: () => Promise.resolve({ excerpt: '', meta: { title } }),
      }));
    return Promise.resolve({ results });
  },
};
const found = async (words: string) => {
  const { called, found } = await findIn(index, words);
  return {
    called,
    ...Object.fromEntries(
      found.map(({ kind, results, few }) => [
        kind,
        `${results.map(({ id }) => id).join(' ')}${few === undefined ? '' : ` (${few})`}`,
      ]),
    ),
    order: found.map(({ kind }) => kind).join(' '),
  };
};
const usual = 'lesson glossary other';
const entryFirst = 'glossary lesson other';

test('an abbreviation brings its entry first, alone at once, then the lesson that explains it, then all that has the term', async () => {
  expect(await found('tcc')).toEqual({
    called: ['Converter clutch'],
    glossary: 'tcc shudder (1)',
    lesson: 'slip live',
    other: '',
    order: entryFirst,
  });
});

test('a second name is known without its signs, and where its words stand apart', async () => {
  expect((await found('lockup clutch')).called).toEqual(['Converter clutch']);
  expect((await found('Lock up clutch')).called).toEqual(['Converter clutch']);
});

test('a name among other words is taken for its term where no lesson has them all', async () => {
  expect(await found('tcc slip')).toMatchObject({
    called: ['Converter clutch slip'],
    lesson: 'slip',
  });
  // "slip" is a term as well, and stands as it is.
  expect(await found('slip tcc')).toMatchObject({
    called: ['slip Converter clutch'],
    lesson: 'slip',
  });
  expect((await found('tcc zzz')).called).toEqual(['Converter clutch']);
});

test('a piece of a name that the glossary alone has leads to the terms of its entries', async () => {
  expect(await found('epc')).toMatchObject({
    called: ['Drive'],
    glossary: 'epc (1)',
    lesson: 'drive',
    order: entryFirst,
  });
});

test('the term itself is searched as it is, its entry first among its like', async () => {
  expect(await found('converter clutch')).toEqual({
    called: [],
    lesson: 'slip drive live',
    glossary: 'tcc shudder',
    other: 'model',
    order: usual,
  });
});

test('a term that no lesson has leads to the lesson that explains it', async () => {
  expect(await found('aeration')).toEqual({
    called: [],
    glossary: 'aeration (1)',
    lesson: 'level',
    other: '',
    order: entryFirst,
  });
});

test('what the glossary does not know is searched as it is', async () => {
  expect(await found('bubbles')).toEqual({
    called: [],
    lesson: 'live level',
    glossary: '',
    other: '',
    order: usual,
  });
  expect(await found('zzz')).toMatchObject({ called: [], lesson: '', glossary: '', order: usual });
  expect(await found('-')).toMatchObject({ called: [], lesson: '', order: usual });
});
