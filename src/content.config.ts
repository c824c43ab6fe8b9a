import { defineCollection } from 'astro:content';
import { glob } from 'astro/loaders';
import { z } from 'astro/zod';
import { glossarySchema, lessonSchema, sourceSchema } from './lessons/lesson-schema.ts';

// Another folder than content/ is for the tests of the lesson form, which build a site of their own.
const content = process.env['CONTENT_DIR'] ?? './content';

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
    schema: z.strictObject({ title: z.string(), description: z.string().min(40).max(200) }),
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
