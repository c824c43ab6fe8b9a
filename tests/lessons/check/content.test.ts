import { expect, test } from 'vitest';
import { checkContent } from '../../../src/lessons/check/content.ts';

test('the content of the site has no fault, and neither has the fixture that the other tests break', () => {
  expect(checkContent('content')).toEqual([]);
  expect(checkContent('tests/fixtures/content')).toEqual([]);
}, 30_000);

test('a folder without content has none either', () => {
  expect(checkContent('tests/fixtures/content/lessons')).toEqual([]);
});
