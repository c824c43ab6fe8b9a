import { z } from 'astro/zod';

const id = z.string().regex(/^[a-z0-9]+(-[a-z0-9]+)*$/, {
  error: ({ input }) =>
    `"${String(input)}" may only have small letters, digits and single hyphens, as in "hot-fluid".`,
});

export const lessonSchema = z.strictObject({
  /** The file's name without .mdx, and the address: /lessons/<id>/. */
  id,
  title: z.string().min(3).max(80),
  /** Place in the course, from 1; must agree with src/lessons/course.ts. */
  order: z.int().min(1).max(30),
  /** Ids of the lessons that must come before. */
  needs: z.array(id),
  /** One sentence for search results and the course page. */
  description: z.string().min(40).max(200),
  /** The car in the bay, two sentences. Plain text. */
  hook: z.string().min(40).max(400),
  /** Measured numbers in the text that are nobody's result, as typed, each with the reason why it needs no source. */
  givens: z.record(z.string(), z.string().min(10)).optional(),
  minutes: z
    .undefined({
      error:
        'The minutes are measured from the text (src/lessons/lesson-times.ts). Take this line out.',
    })
    .optional(),
  /** Refused by name, because a lesson is where one would look for them first. */
  objectives: z
    .undefined({
      error:
        'The objectives stand in src/lessons/objectives.en.ts, where the questions find them too.',
    })
    .optional(),
});
export type Lesson = z.infer<typeof lessonSchema>;

/** A page of words and tags outside the course. */
export const pageSchema = z.strictObject({
  title: z.string(),
  description: z.string().min(40).max(200),
  /** A first sentence in larger type. Plain text. */
  lead: z.string().optional(),
});

export const glossarySchema = z.strictObject({
  term: z.string().min(2),
  /** Plain meaning in at most 60 words, with no term in it that is harder than this one. */
  meaning: z.string().min(15).max(420),
  /** What else the trade calls it. */
  also: z.array(z.string()).default([]),
  /** Glossary ids to read next. */
  see: z.array(id).default([]),
  /** Id of the lesson that introduces it. */
  lesson: id.optional(),
});

export const sourceSchema = z.strictObject({
  /** What a citation shows, as in "ASTM D341". */
  short: z.string().min(2).max(40),
  kind: z.enum(['standard', 'book', 'paper', 'data', 'open code', 'common practice']),
  /** The whole reference: who, what, where, year. */
  full: z.string().min(10),
  /** What this site takes from it. */
  used: z.string().min(10),
  /** How far we have seen it ourselves. */
  seen: z.enum(['read', 'read in part', 'read as quoted by others', 'from memory']),
  url: z.url({ protocol: /^https$/ }).optional(),
});

const place = z.string().regex(/^[a-z0-9-]+(#[a-z0-9-]+)?$/, {
  error: ({ input }) =>
    `"${String(input)}" is no place. Write the lesson's id, or the id, # and the id of a section: "hot-fluid#recap".`,
});
/** Places of lessons that stand elsewhere now, by the lesson that had them: moved.yaml. */
export const movedSchema = z.record(z.string(), z.record(z.string(), place));
