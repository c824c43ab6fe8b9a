import { expect, test } from 'vitest';
import { inPackage } from '../../src/scorm/launch/links.ts';

const root = 'https://a.test/files/7/site/';
test.each([
  ['https://a.test/lessons/live-data/#x', `${root}lessons/live-data/index.html#x`],
  ['https://a.test/search/?q=seal', `${root}search/index.html?q=seal`],
  ['https://a.test/logs/a.csv', `${root}logs/a.csv`],
  [`${root}course/index.html`, undefined],
  // What the search found, whose index lies in the package.
  [`${root}lessons/live-data/#x`, `${root}lessons/live-data/index.html#x`],
  ['https://b.test/', undefined],
])('%s is %s', (href, right) => {
  expect(inPackage(href, root)).toBe(right);
});
