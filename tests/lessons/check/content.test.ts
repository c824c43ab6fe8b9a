import { cpSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { checkContent } from '../../../src/lessons/check/content.ts';

test('the content of the site has no fault, and neither has the fixture that the other tests break', () => {
  expect(checkContent('content')).toEqual([]);
  expect(checkContent('tests/fixtures/content')).toEqual([]);
}, 30_000);

test('a folder for each language: sources are those of the first, words its own', () => {
  const root = mkdtempSync(join(tmpdir(), 'languages-'));
  try {
    for (const id of ['en', 'es'])
      cpSync('tests/fixtures/content/en', join(root, id), { recursive: true });
    rmSync(join(root, 'es', 'sources'), { recursive: true });
    expect(checkContent(root)).toEqual([]);
    rmSync(join(root, 'es', 'glossary', 'line-pressure.yaml'));
    expect(checkContent(root)).toMatchObject([
      { file: `${root}/es/lessons/hot-fluid-thin-fluid.mdx`, line: 47 },
    ]);
  } finally {
    rmSync(root, { recursive: true });
  }
}, 30_000);

test('a folder without content has none either', () => {
  expect(checkContent('tests/fixtures/content/en/lessons')).toEqual([]);
});
