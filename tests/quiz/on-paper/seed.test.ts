import { describe, expect, test } from 'vitest';
import { chanceFor, readSeed } from '../../../src/quiz/on-paper/seed.ts';

describe('readSeed', () => {
  test.each([
    ['friday', 'friday'],
    ['  Friday ', 'friday'],
    ['4711', '4711'],
    ['007', '007'],
    ['bay-3', 'bay-3'],
    ['abcdefghijklmnop', 'abcdefghijklmnop'],
    // A phone in another script may send wide digits.
    ['４７', '47'],
  ])('%j is %j', (typed, seed) => {
    expect(readSeed(typed)).toEqual({ ok: true, seed });
  });

  test.each([
    ['', { ok: false, fault: 'none' }],
    ['   ', { ok: false, fault: 'none' }],
    ['two words', { ok: false, fault: 'sign', sign: ' ' }],
    ['café', { ok: false, fault: 'sign', sign: 'é' }],
    ['12!', { ok: false, fault: 'sign', sign: '!' }],
    ['🔧', { ok: false, fault: 'sign', sign: '🔧' }],
    ['abcdefghijklmnopq', { ok: false, fault: 'long' }],
  ])('%j is refused', (typed, refused) => {
    expect(readSeed(typed)).toEqual(refused);
  });
});

test('each thing drawn with a seed has a chance of its own', () => {
  const first = (seed: string, what: string) => chanceFor(seed, what)();
  const all = ['1', '2', 'friday', 'fridaz'].flatMap((seed) =>
    ['sheet a', 'sheet b', 'lessons'].map((what) => first(seed, what)),
  );
  expect(new Set(all).size).toBe(all.length);
  expect(first('friday', 'sheet a')).toBe(first('friday', 'sheet a'));
});
