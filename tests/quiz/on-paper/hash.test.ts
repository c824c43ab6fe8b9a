import { describe, expect, test } from 'vitest';
import { hashOf } from '../../../src/quiz/on-paper/hash.ts';

describe('hashOf', () => {
  // Worked out in Python from the published algorithm (Fowler, Noll, Vo), over the text in UTF-16, low byte first.
  // The same few lines give the published 0xe40c292c for the one byte "a" and 0xbf9cf968 for "foobar".
  test.each([
    ['', 2166136261],
    ['a', 723832900],
    ['foobar', 2728334074],
    ['Ölß €', 3103057260],
    ['friday\nsheet a', 1048838208],
  ])('%j', (text, hash) => {
    expect(hashOf(text)).toBe(hash);
  });
});
