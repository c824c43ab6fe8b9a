import { spawnSync } from 'node:child_process';
import { cpSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { placeOf, report, type Fault } from '../../../src/lessons/check/fault.ts';
import { after, LESSON } from './broken-content.ts';

const fault = (line: number, file = 'a.mdx'): Fault => ({
  file,
  line,
  column: 2,
  sentence: 'Wrong.',
});

test('each fault on a line of its own, in the order of the files, then the sum', () => {
  expect(report([fault(9), fault(3), fault(1, 'b.mdx')])).toEqual([
    'a.mdx:3:2 Wrong.',
    'a.mdx:9:2 Wrong.',
    'b.mdx:1:2 Wrong.',
    'The content has 3 faults in 2 files. Nothing is built until they are mended.',
  ]);
  expect(report([])).toEqual([]);
});

test('twenty at a time', () => {
  const lines = report(Array.from({ length: 25 }, (_, index) => fault(index + 1)));
  expect(lines).toHaveLength(22);
  expect(lines[20]).toBe('and 5 more, shown once these are mended.');
});

test('a place counts lines and columns from 1, as editors do', () => {
  expect(placeOf('ab\ncd', 0)).toEqual({ line: 1, column: 1 });
  expect(placeOf('ab\ncd', 4)).toEqual({ line: 2, column: 2 });
});

test('several faults are all told, at line and column', () => {
  const { faults, text } = after(LESSON, (good) =>
    good.replace('order: 2', 'order: two').replace('both times.', 'both times: 40 psi.'),
  );
  expect(faults.map(({ line }) => line)).toEqual([4, 47]);
  expect(faults[1]?.column).toBe((text.split('\n')[46]?.indexOf('40 psi') ?? 0) + 1);
});

test('the command ends with 1 and names the file as it was given; good content ends with 0 in silence', () => {
  const root = mkdtempSync(join(tmpdir(), 'content-'));
  const run = () =>
    spawnSync(process.execPath, ['src/lessons/check/index.ts', root], { encoding: 'utf8' });
  try {
    cpSync('tests/fixtures/content/en', root, { recursive: true });
    expect(run()).toMatchObject({ status: 0, stdout: '', stderr: '' });
    writeFileSync(join(root, 'lessons', 'notes.md'), 'Not read.');
    const broken = run();
    expect(broken.status).toBe(1);
    expect(broken.stderr).toContain(
      `${root}/lessons/notes.md:1:1 The site does not read this file`,
    );
  } finally {
    rmSync(root, { recursive: true });
  }
}, 30_000);
