// Every file of words in every language: found by looking, so that a new one cannot escape.
import { existsSync, globSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { pathToFileURL } from 'node:url';
import ts from 'typescript';
import { afterAll, describe, expect, test } from 'vitest';
import { languages, source } from '../../src/language/languages.ts';

type Words = Readonly<Record<string, unknown>>;
const read = async (file: string): Promise<Words> => {
  const module = (await import(pathToFileURL(resolve(file)).href)) as { words: Words };
  return module.words;
};

/** "home.lead" with what stands there: a sentence, or a function of so many values. */
function forms(words: Words, path = ''): string[] {
  return Object.entries(words).flatMap(([key, value]) => {
    if (typeof value === 'string') return [`${path}${key}: words`];
    if (typeof value === 'function') return [`${path}${key}: of ${value.length}`];
    return forms(value as Words, `${path}${key}.`);
  });
}

const english = globSync('src/**/{words,*-words}.en.ts');
const translated = Object.keys(languages)
  .filter((id) => id !== source)
  .flatMap((id) =>
    english.map((file) => ({ id, file, other: file.replace('.en.ts', `.${id}.ts`) })),
  )
  .filter(({ other }) => existsSync(other));

test('there are words to check', () => {
  expect(english.length).toBeGreaterThan(3);
  expect(translated.length).toBeGreaterThan(3);
});

test('no file of words stands without its English', () => {
  const strays = globSync('src/**/{words,*-words}.*.ts').filter(
    (file) => !english.includes(file.replace(/\.\w+\.ts$/, '.en.ts')),
  );
  expect(strays).toEqual([]);
});

describe.each(translated)('$other', ({ file, other }) => {
  test('says all that the English says, from as many values, and nothing is left empty', async () => {
    const [here, there] = [await read(file), await read(other)];
    expect(forms(there).sort()).toEqual(forms(here).sort());
    expect(JSON.stringify(there)).not.toContain('""');
  });
});

describe('the compiler', () => {
  const folder = mkdtempSync(join(tmpdir(), 'words-'));
  afterAll(() => rmSync(folder, { recursive: true }));

  /** What it says about a translation of two sentences. */
  function complaints(translation: string): string[] {
    writeFileSync(
      join(folder, 'words.en.ts'),
      'export const words = { run: "Run it", on: (task: string) => `On to ${task}` };',
    );
    const file = join(folder, 'words.es.ts');
    writeFileSync(
      file,
      `import type { words as en } from './words.en.ts';\nexport const words: typeof en = ${translation};`,
    );
    const { config } = ts.readConfigFile('tsconfig.json', (path) => ts.sys.readFile(path)) as {
      config: unknown;
    };
    const { options } = ts.parseJsonConfigFileContent(config, ts.sys, process.cwd());
    const program = ts.createProgram([file], { ...options, types: [] });
    return ts
      .getPreEmitDiagnostics(program)
      .map(({ messageText }) => ts.flattenDiagnosticMessageText(messageText, ' '));
  }

  test('takes a whole translation', () => {
    expect(complaints('{ run: "Córrelo", on: (task) => `A ${task}` }')).toEqual([]);
  });
  test.each([
    ['a missing sentence', '{ run: "Córrelo" }', /'on' is missing/],
    [
      'a sentence that English has not',
      '{ run: "a", on: () => "b", off: "c" }',
      /'off' does not exist/,
    ],
    ['words where values belong in', '{ run: "Córrelo", on: "A" }', /'string' is not assignable/],
  ])('refuses %s', (_, translation, sentence) => {
    expect(complaints(translation).join(' ')).toMatch(sentence);
  });
}, 30_000);
