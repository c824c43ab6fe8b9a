import { cpSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, expect, test } from 'vitest';
import { searchRecords } from '../../src/build/search-records.ts';
import { checkContent } from '../../src/lessons/check/content.ts';
import { addressOf, readMoved } from '../../src/lessons/moved.ts';

const root = mkdtempSync(join(tmpdir(), 'moved-'));
afterAll(() => rmSync(root, { recursive: true }));

test('a list of places is read, with lessons and their places apart', () => {
  const read = readMoved('old:\n  page: new-lesson\n  a-section: new-lesson#its-section\n');
  expect(read.get('old')).toEqual([
    { was: 'page', lesson: 'new-lesson', at: null },
    { was: 'a-section', lesson: 'new-lesson', at: 'its-section' },
  ]);
  expect(read.get('old')?.map(addressOf)).toEqual([
    '/lessons/new-lesson/',
    '/lessons/new-lesson/#its-section',
  ]);
  expect(readMoved('# nothing has moved\n').size).toBe(0);
});

test.each([
  ['old:\n  page: no-such-lesson\n', 2, /"page" leads to the lesson "no-such-lesson"/],
  ['old:\n  page: /lessons/new/\n', 2, /is no place/],
])('%j is refused at its line', (text, line, why) => {
  cpSync('tests/fixtures/content/en', root, { recursive: true });
  writeFileSync(join(root, 'moved.yaml'), text);
  const [fault, ...more] = checkContent(root);
  expect(more).toEqual([]);
  expect(fault).toMatchObject({ file: `${root}/moved.yaml`, line });
  expect(fault?.sentence).toMatch(why);
});

test('the search passes over a page that only leads on', () => {
  const page = (address: string, head: string) => ({
    address,
    html: `<head>${head}</head><main><h1>Words</h1></main>`,
  });
  const pages = [
    page('/lessons/old/', '<meta http-equiv="refresh" content="3; url=/lessons/new/">'),
    page('/lessons/new/', ''),
  ];
  expect(searchRecords(pages).map(({ url }) => url)).toEqual(['/lessons/new/']);
});
