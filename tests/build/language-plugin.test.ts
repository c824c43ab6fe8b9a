import { expect, test } from 'vitest';
import { resolve } from 'node:path';
import { inLanguage, languagePlugin } from '../../src/build/language-plugin.ts';

const importer = resolve('src/language/current.ts');

test('words are read in the language of the build', () => {
  expect(inLanguage('./words.en.ts', importer, 'es')).toBe(resolve('src/language/words.es.ts'));
  const { resolveId } = languagePlugin('es');
  expect(resolveId('./words.en.ts', `${importer}?astro&type=script`)).toBe(
    resolve('src/language/words.es.ts'),
  );
  expect(resolveId('./languages.ts', importer)).toBeUndefined();
  expect(languagePlugin('en').resolveId('./words.en.ts', importer)).toBeUndefined();
});

test('words that are not written in it fail the build with a sentence that names the file', () => {
  expect(() => languagePlugin('xx').resolveId('./words.en.ts', importer)).toThrow(
    'src/language/words.xx.ts is missing: src/language/current.ts needs it in this language. Write it beside words.en.ts, with the same names in it.',
  );
});
