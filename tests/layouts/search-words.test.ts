import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { addressFor, longest, tidy, wordsIn } from '../../src/layouts/search-address.ts';
import {
  countSentence,
  pieces,
  putRight,
  singleWords,
  unitHint,
  type Fate,
} from '../../src/layouts/search-words.ts';

test('what is put into the address is what is read from it, whatever was typed', () => {
  fc.assert(
    fc.property(fc.string({ unit: 'grapheme', maxLength: 200 }), (typed) => {
      const words = tidy(typed);
      expect(words.length).toBeLessThanOrEqual(longest);
      expect(wordsIn(new URL(addressFor(words), 'http://site').search)).toBe(tidy(words));
    }),
  );
});
test('an address with nothing, or nonsense, in it asks for nothing', () => {
  for (const search of ['', '?', '?q=', '?q=+++', '?other=1', '?q=%20']) {
    expect(wordsIn(search)).toBe('');
  }
  expect(addressFor('')).toBe('/search/');
});

describe('what was found is told in words', () => {
  const none = { lesson: 0, glossary: 0, other: 0 };
  const there = (word: string) => ({ word, standing: 'there' as const });
  const begins = (word: string) => ({ word, standing: 'begins' as const });
  const nowhere = (word: string) => ({ word, standing: 'nowhere' as const });
  test.each([
    ['x', none, [nowhere('x')], 'Nothing found for “x”.'],
    ['-', none, [], 'Nothing found for “-”.'],
    ['seal', { ...none, lesson: 1 }, [there('seal')], '“seal” is in 1 lesson.'],
    [
      'seal',
      { lesson: 2, glossary: 1, other: 3 },
      [there('seal')],
      '“seal” is in 2 lessons, 1 glossary entry, and 3 other places.',
    ],
    ['visc', { ...none, other: 1 }, [begins('visc')], '“visc…” is in 1 other place.'],
    [
      'qq seal zz',
      { ...none, glossary: 2 },
      [nowhere('qq'), there('seal'), nowhere('zz')],
      '“seal” is in 2 glossary entries. No page has “qq” or “zz”.',
    ],
    ['pump lead', none, [there('pump'), there('lead')], 'Nothing has all of “pump lead”.'],
  ])('%s', (words, counts, fates, sentence) => {
    expect(countSentence(words, counts, fates)).toBe(sentence);
  });
});

test('what the glossary calls it is told as searched as well', () => {
  const there = [{ word: 'TCC', standing: 'there' as const }];
  const counts = { lesson: 5, glossary: 2, other: 0 };
  expect(countSentence('TCC', counts, there, ['Converter clutch'])).toBe(
    '“TCC” or “Converter clutch” is in 5 lessons and 2 glossary entries.',
  );
  const nowhere = [{ word: 'qq', standing: 'nowhere' as const }];
  expect(countSentence('qq', counts, nowhere, ['Passage'])).toBe(
    '“Passage” is in 5 lessons and 2 glossary entries. No page has “qq”.',
  );
});

test('a number in the other system is told how to be found', () => {
  expect(unitHint('60 psi', 'si')).toContain('Press psi');
  expect(unitHint('414 kPa', 'us')).toContain('Press kPa');
  expect(unitHint('60 psi', 'us')).toBeNull();
  expect(unitHint('psi', 'si')).toBeNull();
});

const fate = (word: string, standing: Fate['standing'] = 'there', ...close: readonly string[]) => ({
  word,
  standing,
  close,
});
test('a search of several words offers each that is somewhere and long enough to find something', () => {
  const all = [fate('split'), fate('seal'), fate('in'), fate('torqe', 'nowhere', 'Torque')];
  expect(singleWords(all)).toEqual(['split', 'seal']);
  expect(singleWords([fate('seal')])).toEqual([]);
  const many = Array.from({ length: 8 }, (_, i) => fate(`word${i}`));
  expect(singleWords(many)).toHaveLength(6);
});
test('what is spelled wrong in it is put right as a whole, where all of it can be', () => {
  const torqe = fate('torqe', 'nowhere', 'Torque', 'Torques');
  const convertor = fate('convertor', 'nowhere', 'Converter');
  expect(putRight([torqe, convertor])).toBe('Torque Converter');
  expect(putRight([torqe, fate('converter')])).toBe('Torque converter');
  expect(putRight([torqe, fate('conv', 'begins')])).toBe('Torque conv');
  expect(putRight([torqe, fate('qqq', 'nowhere')])).toBeNull();
  expect(putRight([fate('torque'), fate('converter')])).toBeNull();
  // A word by itself has a list of those that are close.
  expect(putRight([torqe])).toBeNull();
});

test('an excerpt becomes plain pieces, and markup in it stays text', () => {
  expect(pieces('a <mark>seal</mark> , &lt;b&gt; &amp;amp; <i>x')).toEqual([
    { text: 'a ', marked: false },
    { text: 'seal', marked: true },
    { text: ', <b> &amp; <i>x', marked: false },
  ]);
});
