import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { brokenReferences, markdownFiles } from '../../src/build/markdown-links.ts';

const ours = markdownFiles('.');

test('the texts for developers are found', () => {
  expect(ours).toEqual(
    expect.arrayContaining(['README.md', 'DEVELOPERS.md', 'tests/truth/README.md']),
  );
  expect(ours.filter((file) => file.includes('node_modules'))).toEqual([]);
});
test.each(ours)('%s leads nowhere in vain', (file) => {
  expect(brokenReferences(file, '.')).toEqual([]);
});

let root = '';
beforeEach(() => {
  root = mkdtempSync(join(tmpdir(), 'texts-'));
  mkdirSync(join(root, 'src', 'quiz'), { recursive: true });
  mkdirSync(join(root, 'tests', 'truth'), { recursive: true });
  writeFileSync(join(root, 'src', 'quiz', 'grade.ts'), '');
  writeFileSync(join(root, 'src', 'quiz', '[id].ts'), '');
  writeFileSync(join(root, 'OTHER.md'), '# Add a unit (or two)\n\n```\n# not a heading\n```\n');
});
afterEach(() => rmSync(root, { recursive: true }));
const says = (text: string, file = 'TEXT.md') => {
  writeFileSync(join(root, file), text);
  return brokenReferences(file, root);
};

test.each([
  '[x](OTHER.md)',
  '[x](OTHER.md#add-a-unit-or-two)',
  '# Here\n[x](#here)',
  '[x](https://example.org/gone)',
  '`src/quiz/grade.ts`, `src/quiz/`, `src/quiz/<name>.ts`, `src/<folder>/grade.ts`, `grade.ts`',
  '| `src/later` | not written yet |',
  '`src/quiz/[id].ts`',
  '`npm run gone`, `a/b`, `/search/`',
  '```\n`src/gone.ts`\n```',
])('%s is fine', (text) => expect(says(text)).toEqual([]));

test('a path may be named from beside the text', () => {
  expect(says('`../../src/quiz/grade.ts` [x](../../OTHER.md)', 'tests/truth/README.md')).toEqual(
    [],
  );
});

test.each([
  '[x](GONE.md)',
  '[x](OTHER.md#not-a-heading)',
  '[x](#nowhere)',
  '`src/gone`',
  '`src/quiz/gone.ts`',
  '`src/gone/<name>.ts`',
  '`src/quiz/[name].ts`',
  '`gone.ts`',
])('%s is told', (text) => expect(says(text)).toHaveLength(1));
