import { defineCollection } from 'astro:content';
import { glob } from 'astro/loaders';
import { contentRoot } from './lessons/content-root.ts';
import { glossarySchema, lessonSchema, pageSchema, sourceSchema } from './lessons/lesson-schema.ts';

const content = contentRoot();

// The id of an entry is its file's name, so that a link can be written by looking at the folder.
const named = (folder: string, pattern: string) =>
  glob({
    base: `${content}/${folder}`,
    pattern,
    generateId: ({ entry }) => entry.replace(/\.[^.]+$/, ''),
  });

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
