import { describe, expect, test } from 'vitest';
import { lookUp, type Searcher } from '../../src/layouts/search-lookup.ts';

const pages: Record<string, readonly string[]> = {
  one: ['air', 'test', 'P0731.', 'line', 'pressure'],
  two: ['P0730', 'viscosity,', 'seals', 'air'],
  three: ['push', 'Viscous'],
};
const stem = (word: string) =>
  word
    .toLowerCase()
    .replace(/[^\p{L}\p{N}]/gu, '')
    .replace(/s$/, '');

/** Finds as Pagefind does: exactly in quotes; else by the longest beginning that any word has. */
const index: Searcher & { asked: string[] } = {
  asked: [],
  search(asked) {
    const words = asked ?? '';
    this.asked.push(words);
    const exact = /^"(.+)"$/.exec(words)?.[1];
    const fits = (word: string, start: string) =>
      exact === undefined ? stem(word).startsWith(start) : stem(word) === start;
    let start = stem(exact ?? words);
    const hits = () =>
      Object.entries(pages).filter(([, text]) => text.some((word) => fits(word, start)));
    while (exact === undefined && hits().length === 0 && start !== '') start = start.slice(0, -1);
    const results = start === '' ? [] : hits();
    return Promise.resolve({
      results: results.map(([id, text]) => ({
        id,
        data: () =>
          Promise.resolve({
            excerpt: text
              .map((word) => (fits(word, start) ? `<mark>${word}</mark>` : word))
              .join(' '),
          }),
      })),
    });
  },
};
const told = async (words: string) =>
  (await lookUp(index, words)).map(({ word, standing, ids, close }) => [
    word,
    standing,
    [...ids].join(' '),
    close.join(' '),
  ]);

describe('a word is', () => {
  test('there, in whatever form', async () => {
    expect(await told('air')).toEqual([['air', 'there', 'one two', '']]);
    expect(await told('seal')).toEqual([['seal', 'there', 'two', '']]);
  });
  test('the beginning of others', async () => {
    expect(await told('visc')).toEqual([['visc', 'begins', 'two three', '']]);
  });
  test('nowhere, with what begins as it does', async () => {
    expect(await told('airbag')).toEqual([['airbag', 'nowhere', '', 'air']]);
    expect(await told('p0741')).toEqual([['p0741', 'nowhere', '', 'P0731 P0730']]);
  });
  test('nowhere, with nothing that is like it', async () => {
    expect(await told('pmup')).toEqual([['pmup', 'nowhere', '', '']]);
    expect(await told('zz')).toEqual([['zz', 'nowhere', '', '']]);
  });
});

test('several words are looked up one by one, each once, without signs and quotes', async () => {
  expect(await told('air "air" - airbag')).toEqual([
    ['air', 'there', 'one two', ''],
    ['airbag', 'nowhere', '', 'air'],
  ]);
  expect(await told('- %')).toEqual([]);
});

test('words joined by a hyphen are looked up apart where nobody joins them', async () => {
  expect(await told('line-pressure')).toEqual([
    ['line', 'there', 'one', ''],
    ['pressure', 'there', 'one', ''],
  ]);
});

test('a long word costs few searches', async () => {
  index.asked.length = 0;
  await lookUp(index, 'z'.repeat(100));
  expect(index.asked.length).toBeLessThan(30);
});
