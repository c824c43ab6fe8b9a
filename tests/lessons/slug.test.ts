import { expect, test } from 'vitest';
import { slug } from '../../src/lessons/slug.ts';

test.each([
  ['Hot, thin fluid', 'hot-thin-fluid'],
  ['What’s at 100 °C?', 'whats-at-100-c'],
  ['  Été  ', 'ete'],
])('the heading "%s" has the address %s', (words, address) => {
  expect(slug(words)).toBe(address);
});
