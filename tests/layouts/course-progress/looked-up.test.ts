import { expect, test } from 'vitest';
import { isLookedUp } from '../../../src/layouts/course-progress/looked-up.ts';

const LESSON = 'https://shop.example/course-site/lessons/live-data/';
const site = (path: string): string => `https://shop.example/course-site/${path}`;

test.each([
  ['search/?q=stall', true],
  ['glossary/', true],
  ['practise/today/', true],
  ['measure/jobs/#job=a', true],
  ['', false],
  ['?from=mail', false],
  ['#top', false],
  ['course/', false],
  ['lessons/what-slip-is/', false],
  ['lessons/what-slip-is/#recap', false],
])('from %s: looked up, %s', (path, wanted) => {
  for (const end of ['', '#pressure', '?gap-or-hole=1~temp.90#gap-or-hole'])
    expect(isLookedUp(LESSON + end, site(path))).toBe(wanted);
});
test('a link in a message, or from another site, is no look-up', () => {
  expect(isLookedUp(LESSON, '')).toBe(false);
  expect(isLookedUp(LESSON, 'https://forum.example/search/')).toBe(false);
});
test('a translation is a course of its own', () => {
  const spanish = 'https://shop.example/es/lessons/que-es-patinar/';
  expect(isLookedUp(spanish, 'https://shop.example/es/search/?q=fuga')).toBe(true);
  expect(isLookedUp(spanish, 'https://shop.example/es/')).toBe(false);
});
