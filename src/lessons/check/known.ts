/** Every name that words may point at. Where a name leads is looked up once, for all files. */
import { readdirSync, readFileSync, existsSync } from 'node:fs';
import { basename, extname, join } from 'node:path';
import { parse } from 'yaml';
import { numbers } from '../../numbers/index.ts';
import type { NumberTable } from '../../numbers/table.ts';
import { course } from '../course.ts';

export interface Known {
  readonly folders: Readonly<Record<Folder, string>>;
  /** Glossary ids, with the lesson that introduces each. */
  readonly terms: ReadonlyMap<string, string | undefined>;
  readonly sources: ReadonlyMap<string, unknown>;
  readonly numbers: NumberTable;
  /** Ids of the course plan, with their places from 1. */
  readonly lessons: ReadonlyMap<string, number>;
}

export const endings = {
  lessons: '.mdx',
  pages: '.mdx',
  questions: '.json',
  glossary: '.yaml',
  sources: '.yaml',
  meetings: '.yaml',
} as const;
export type Folder = keyof typeof endings;

export const folderOf = (root: string, folder: Folder): string =>
  join(root, folder).replaceAll('\\', '/');

/** Everything in a folder of the content, by name; a folder that is not there is empty. */
export const filesIn = (root: string, folder: Folder): readonly string[] => {
  const path = folderOf(root, folder);
  return existsSync(path) ? readdirSync(path).sort() : [];
};

/** The files of a folder that the site reads. */
export const readIn = (root: string, folder: Folder) =>
  filesIn(root, folder)
    .filter((name) => extname(name) === endings[folder])
    .map((name) => {
      const file = `${folderOf(root, folder)}/${name}`;
      return { file, id: basename(name, endings[folder]), text: readFileSync(file, 'utf8') };
    });

/** `source` is the folder of the language that lists the sources; a translation cites them by the same names. */
export function knownIn(root: string, source = root): Known {
  return {
    folders: {
      lessons: folderOf(root, 'lessons'),
      pages: folderOf(root, 'pages'),
      questions: folderOf(root, 'questions'),
      glossary: folderOf(root, 'glossary'),
      sources: folderOf(source, 'sources'),
      meetings: folderOf(root, 'meetings'),
    },
    terms: new Map(readIn(root, 'glossary').map(({ id, text }) => [id, introducedBy(text)])),
    sources: new Map(readIn(source, 'sources').map(({ id }) => [id, true])),
    numbers,
    lessons: new Map(course.map(({ id }, index) => [id, index + 1])),
  };
}

/** An entry that cannot be read is told where glossary entries are checked. */
function introducedBy(text: string): string | undefined {
  try {
    const entry = parse(text) as { lesson?: unknown } | null;
    return typeof entry?.lesson === 'string' ? entry.lesson : undefined;
  } catch {
    return undefined;
  }
}
