import { globSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { codeOf, sentencesIn } from './sentences-in-code.ts';

const texts = (code: string): readonly string[] =>
  sentencesIn('sample.tsx', code).map(({ text }) => text);

describe('what counts as a sentence in code', () => {
  it.each([
    ['a sentence', "const a = 'It holds cold.';"],
    ['a template with numbers', 'const a = `It holds up to ${edge} here.`;'],
    ['a piece that sentences are spliced from', "const a = ok ? 'of the worst' : '';"],
    ['text between tags', 'const a = <p>Give me a hint</p>;'],
    ['one word between tags', 'const a = <dd>across</dd>;'],
    ['one word as a label', "const a = { label: 'Fluid' };"],
    ['a label in an attribute', 'const a = <Readout label="Line" />;'],
    ['a line of a label in a drawing', "const a = <Label lines={['Pump', flow]} />;"],
    ['a label by way of a condition', "const a = { on: hot ? 'open' : x };"],
  ])('%s', (_what, code) => expect(texts(code)).toHaveLength(1));

  it.each([
    ['an import', "import { a } from '../a b/c.ts';"],
    ['class names', 'const a = <p class="sim sim-asking" />;'],
    ['class names by condition', "const a = <p class={on ? 'sim sim-asking' : 'sim'} />;"],
    ['a path', 'const a = <path d="M5 12h14M12 5v14" />;'],
    ['a type', "type A = 'code stored' | 'park commanded';"],
    ['a comparison with a name of the engine', "const a = event === 'code stored';"],
    ['a message to maintainers', "throw new Error('The circuit is missing.');"],
    ['a selector', "const a = document.querySelector('#settings input');"],
    ['a comment', '// It holds cold.'],
    ['an id', "const a = { id: 'gap-or-hole', kind: 'choice' };"],
    ['the name of an input', 'const a = <input name="prediction" />;'],
  ])('not %s', (_what, code) => expect(texts(code)).toEqual([]));
});

const files = [
  'src/{simulation,widgets,planner,own-sheet,practice,stage,ui,charts,measure,drawings,layouts,pages}/**/*.{ts,tsx}',
  'src/lessons/{measured,rows}/*.{ts,tsx}',
  'src/quantity/hairs/*.ts',
  'src/quiz/grade.ts',
]
  .flatMap((pattern) => globSync(pattern))
  .map((file) => file.replaceAll('\\', '/'))
  .filter((file) => !/[/-]words\.[a-z]{2}\.ts$/u.test(file));
const wrongIn = (file: string): readonly string[] =>
  sentencesIn(file, readFileSync(file, 'utf8')).map(({ line, text }) => `${file}:${line} ${text}`);

// The switch of units names them by their symbols, which are the same in every language.
const SYMBOLS = ['psi', 'kPa'];
const pages = globSync('src/**/*.astro')
  .map((file) => file.replaceAll('\\', '/'))
  // For contributors.
  .filter((file) => !file.startsWith('src/gallery/'));
const wrongOn = (file: string): readonly string[] =>
  sentencesIn(file, codeOf(readFileSync(file, 'utf8')))
    .filter(({ text }) => !SYMBOLS.includes(text))
    .map(({ line, text }) => `${file}:${line} ${text}`);

describe('an .astro file', () => {
  it.each([
    ['its markup', '---\nconst a = 1;\n---\n\n<p>It holds cold.</p>\n', 5],
    ['its front matter', "---\nconst a = 'It holds cold.';\n---\n\n<p>{a}</p>\n", 2],
    ['markup that is all of it', '<p>\n  It holds cold.\n</p>\n', 2],
  ])('is read with %s, and told by its line', (_what, astro, line) =>
    expect(sentencesIn('sample.astro', codeOf(astro)).map((one) => one.line)).toEqual([line]),
  );

  it('has no sentence in its styles and scripts', () =>
    expect(
      sentencesIn('sample.astro', codeOf('<script>\n  // It holds cold.\n</script>\n')),
    ).toEqual([]));
});

describe('the code of the site', () => {
  it('is looked at', () => expect(files.length).toBeGreaterThan(50));

  it('has its words in words files', () => {
    expect([...files.flatMap(wrongIn), ...pages.flatMap(wrongOn)]).toEqual([]);
  });

  it('has no label put into small letters: another language has its own rules for that', () => {
    const lowered = files.filter((file) => readFileSync(file, 'utf8').includes('toLowerCase('));
    expect(lowered).toEqual([]);
  });
});
