import { existsSync } from 'node:fs';
import { defineCollection } from 'astro:content';
import { glob } from 'astro/loaders';
import { language } from './language/current.ts';
import { source } from './language/languages.ts';
import { contentOf } from './language/pages.ts';
import { glossarySchema, lessonSchema, pageSchema, sourceSchema } from './lessons/lesson-schema.ts';

// A standard or a book is cited by its own name in every language; the list of them is English.
const folderOf = (name: string) =>
  `${contentOf(name === 'sources' ? source : language.id)}/${name}`;

// The id of an entry is its file's name, so that a link can be written by looking at the folder.
const named = (folder: string, pattern: string) => {
  const base = folderOf(folder);
  // A translation need not have each folder.
  if (!existsSync(base)) return () => [];
  return glob({ base, pattern, generateId: ({ entry }) => entry.replace(/\.[^.]+$/, '') });
};

export const collections = {
  lessons: defineCollection({
    loader: named('lessons', '*.mdx'),
    schema: lessonSchema,
  }),
  pages: defineCollection({
    loader: named('pages', '*.mdx'),
    schema: pageSchema,
  }),
  glossary: defineCollection({
    loader: named('glossary', '*.yaml'),
    schema: glossarySchema,
  }),
  sources: defineCollection({
    loader: named('sources', '*.yaml'),
    schema: sourceSchema,
  }),
};
