// The fixture content in a temporary folder, with one change to one file: one that a writer makes.
import { cpSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { checkContent } from '../../../src/lessons/check/content.ts';
import type { Fault } from '../../../src/lessons/check/fault.ts';

export const LESSON = 'lessons/hot-fluid-thin-fluid.mdx';
export const PAGE = 'pages/model.mdx';
export const TERM = 'glossary/line-pressure.yaml';
export const SOURCE = 'sources/astm-d341.yaml';
export const QUESTIONS = 'questions/hot-fluid-thin-fluid.json';

/** What the check says of the fixture after a change, and the changed text. */
export function after(
  file: string,
  change: (text: string) => string,
): { faults: readonly Fault[]; text: string } {
  const root = mkdtempSync(join(tmpdir(), 'content-'));
  try {
    cpSync('tests/fixtures/content/en', root, { recursive: true });
    const path = join(root, file);
    const text = change(readFileSync(path, 'utf8'));
    writeFileSync(path, text);
    const faults = checkContent(root).map((fault) => ({
      ...fault,
      file: fault.file.slice(root.length + 1),
    }));
    return { faults, text };
  } finally {
    rmSync(root, { recursive: true });
  }
}

/** Replaces text that must be there, so that a test never passes because its fixture moved. */
export const swap =
  (from: string, to: string) =>
  (text: string): string => {
    if (!text.includes(from)) throw new Error(`The fixture does not have: ${from}`);
    return text.replace(from, () => to);
  };

/** The line, from 1, of the first or only line with these words. */
export const lineOf = (text: string, words: string): number =>
  text.split('\n').findIndex((line) => line.includes(words)) + 1;

type Break = readonly [
  what: string,
  from: string,
  to: string,
  /** Words of the line that must be named; the first line with them. */
  line: string,
  ...says: RegExp[],
];

/** Each break of `file` is answered by one sentence, with these words, at the line where it was typed. */
export function breaks(file: string, name: string, list: readonly Break[]): void {
  describe(`one fault, one sentence, at its line: ${name}`, () => {
    const cases = list.map(([what, from, to, line, ...says]) => ({ what, from, to, line, says }));
    test.each(cases)('$what', ({ from, to, line, says }) => {
      const { faults, text } = after(file, swap(from, to));
      const said = faults.map(({ sentence }) => sentence).join('\n');
      for (const words of says) expect(said).toMatch(words);
      expect(faults, said).toHaveLength(1);
      expect(faults[0]).toMatchObject({ file, line: lineOf(text, line) });
    });
  });
}
