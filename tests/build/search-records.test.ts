import { expect, test } from 'vitest';
import { searchRecords } from '../../src/build/search-records.ts';

const page = (address: string, main: string) => ({
  address,
  html: `<header>nav words</header><main id="main">${main}</main><footer>foot words</footer>`,
});

test('a lesson is one record, without the frame of the page', () => {
  const [record, ...more] = searchRecords([page('/lessons/x/', '<h1>X</h1><p>text</p>')]);
  expect(more).toEqual([]);
  expect(record?.url).toBe('/lessons/x/');
  expect(record?.html).toContain('data-pagefind-filter="kind:lesson"');
  expect(record?.html).toContain('<h1>X</h1><p>text</p>');
  expect(record?.html).not.toMatch(/nav words|foot words/);
});

test('pages that only lead elsewhere are left out', () => {
  const waysIn = ['/', '/course/', '/search/', '/404.html'].map((address) => page(address, 'x'));
  expect(searchRecords(waysIn)).toEqual([]);
});

test('each entry of the glossary is a hit of its own, without the names of its neighbours', () => {
  const list =
    '<h1>Glossary</h1><dl><div id="seal"><dt>Seal</dt><dd>Keeps fluid in.</dd>' +
    '<dd class="muted">Also called: ring</dd><dd class="muted"> See also: <a href="#pump">Pump</a></dd>' +
    '<dd class="muted"> Lesson: <a href="/x/">One</a></dd></div>' +
    '<div id="pump"><dt>Pump</dt><dd>Moves fluid.</dd></div></dl>';
  const records = searchRecords([page('/glossary/', list)]);
  expect(records.map(({ url }) => url)).toEqual(['/glossary/#seal', '/glossary/#pump']);
  expect(records[0]?.html).toContain('Also called: ring');
  expect(records[0]?.html).not.toMatch(/Pump|Lesson/);
  // Without a space the indexer reads "in.Also".
  expect(records[0]?.html).toContain('in. </dd>');
});

test('an entry is found by each of its names, and the lesson that explains it by the same', () => {
  const list =
    '<dl><div id="seal"><dt>Seal</dt><dd>Keeps.</dd><dd class="muted">Also called: <span class="also">lip-ring, O ring</span></dd>' +
    '<dd class="muted">Lesson: <a href="/lessons/x/">X</a></dd></div></dl>';
  const named = searchRecords([
    page('/glossary/', list),
    page('/lessons/x/', '<h1>X</h1>'),
    page('/lessons/y/', '<h1>Y</h1>'),
    page('/model/', '<h1>Model</h1><a href="/lessons/x/">X</a>'),
  ]).map(({ url, html }) => [
    url,
    Array.from(
      html.matchAll(/data-pagefind-filter="name\[data-name\]" data-name="(\w+)"/g),
      ([, name]) => name,
    ).join(' '),
  ]);
  expect(named).toEqual([
    ['/glossary/#seal', 'seal lipring oring'],
    ['/lessons/x/', 'seal lipring oring'],
    ['/lessons/y/', ''],
    ['/model/', ''],
  ]);
});

test('a list whose markup has changed is an error, not an empty index', () => {
  expect(() => searchRecords([page('/glossary/', '<p>Seal</p>')])).toThrow('no entries');
  expect(() => searchRecords([{ address: '/model/', html: '<p>' }])).toThrow('no <main>');
});
