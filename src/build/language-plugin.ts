// Reads each `….en.ts` in the language of the build: `words.es.ts` in place of `words.en.ts`.
import { existsSync } from 'node:fs';
import { basename, dirname, relative, resolve } from 'node:path';

/** The file that stands for an import in another language; a sentence where there is none. */
export function inLanguage(source: string, importer: string, language: string): string | Error {
  const english = resolve(dirname(importer), source);
  const wanted = english.replace(/\.en\.ts$/, `.${language}.ts`);
  if (existsSync(wanted)) return wanted;
  const [missing, asker, model] = [wanted, importer, english].map((path) =>
    relative(process.cwd(), path).replaceAll('\\', '/'),
  );
  return new Error(
    `${missing} is missing: ${asker} needs it in this language. Write it beside ${basename(model ?? '')}, with the same names in it.`,
  );
}

const english = /^\.{1,2}\/.*\.en\.ts$/;

/** Does nothing in English, where the files are what the imports say. */
export function languagePlugin(language: string) {
  return {
    name: 'language',
    enforce: 'pre' as const,
    resolveId: (source: string, importer: string | undefined): string | undefined => {
      if (language === 'en' || importer === undefined || !english.test(source)) return undefined;
      const found = inLanguage(source, importer.replace(/\?.*$/, ''), language);
      if (found instanceof Error) throw found;
      return found;
    },
  };
}
