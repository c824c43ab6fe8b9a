import { expect, test } from 'vitest';
import { deadLink, pageFor } from '../../src/offline/addresses.ts';

const at = (path: string) =>
  pageFor(new URL(path, 'https://a.test')).map(({ href }) => href.slice('https://a.test'.length));

test.each([
  ['/lessons/live-data', ['/lessons/live-data/index.html']],
  ['/shop/course?from=mail#top', ['/shop/course/index.html']],
  ['/lessons/live-data/', []],
  ['/logs/practice-1.csv', []],
  ['/_astro/a.Zq3.js', []],
])('%s is looked for as %j', (path, tried) => {
  expect(at(path)).toEqual(tried);
});

test('the stored page for a miss is told as a miss', async () => {
  const answer = deadLink(
    new Response('no such page', { headers: { 'content-type': 'text/html' } }),
  );
  expect([answer.status, answer.headers.get('content-type'), await answer.text()]).toEqual([
    404,
    'text/html',
    'no such page',
  ]);
  expect(deadLink(undefined).type).toBe('error');
});
