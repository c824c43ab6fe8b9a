/** What the schemas of all kinds of question are built from. Every message is a sentence. */
import { z } from 'zod';

const slug = /^[a-z0-9]+(-[a-z0-9]+)*$/;
const TRY_IT = /^\/[a-z-]+\/(?:[a-z-]+\/)?\?[a-z-]+=\d+(?:~[\w.-]+)*#[a-z-]+$/;

export function strict<Shape extends z.ZodRawShape>(what: string, shape: Shape) {
  return z.strictObject(shape, {
    error: (issue) => {
      if (issue.code === 'unrecognized_keys') {
        const unknown = (issue as { keys?: readonly string[] }).keys ?? [];
        return `${what} does not know ${unknown.map((k) => `"${k}"`).join(', ')}. It may have: ${Object.keys(shape).join(', ')}.`;
      }
      return `${what} must be an object in braces.`;
    },
  });
}

export const words = (what: string, least = 3) =>
  z
    .string({ error: `${what} is missing: write a sentence in quotes.` })
    .trim()
    .min(least, { error: `${what} is empty or too short.` });

export const id = (what: string) =>
  z.string({ error: `${what} is missing.` }).regex(slug, {
    error: (issue) =>
      `${what} "${String(issue.input)}" may only have small letters, digits and single hyphens.`,
  });

export const list = <Item extends z.ZodType>(what: string, item: Item) =>
  z.array(item, { error: `${what} must be a list in square brackets.` });

export const share = (what: string) =>
  z
    .number({ error: `${what} must be a number above 0.` })
    .positive({ error: `${what} must be above 0.` });

const NO_SOURCE = 'The source is a source id, "engine", or "common practice, no source".';

const levels = ['recall', 'apply', 'diagnose'] as const;

export const common = {
  id: id('The id of a question'),
  lesson: id('The lesson of a question'),
  objectives: list('"objectives"', id('An objective id')).min(1, {
    error: 'A question serves at least one objective.',
  }),
  concept: id('The concept'),
  lookAlikes: list('"lookAlikes"', id('A look-alike concept')).optional(),
  level: z.enum(levels, { error: 'The level is "recall", "apply" or "diagnose".' }),
  unseen: z.boolean({ error: '"unseen" is true (a setting the lesson never shows) or false.' }),
  /** Nothing is wrong with the car of this question. */
  healthy: z.literal(true, { error: '"healthy" is true, or left out.' }).optional(),
  /** A picture that goes with it, by its id in src/question-charts. */
  chart: id('The chart').optional(),
  /** The family in src/variations that its numbers, and what is true in it, come from. */
  varies: id('The family that a question varies by').optional(),
  /** A simulation at the state that the question is about, shown beside the explanation. */
  tryIt: z
    .string({ error: '"tryIt" is an address in quotes.' })
    .regex(TRY_IT, {
      error: (issue) =>
        `"${String(issue.input)}" is no address of a simulation's state. Copy one with "Copy a link to this state" under a simulation: /lessons/thin-gap-open-hole/?gap-or-hole=1~temp.90#gap-or-hole.`,
    })
    .optional(),
  stem: words('The stem', 15),
  /** A source id, "engine" (every number in it comes from the model), or these words. */
  source: z
    .string({ error: NO_SOURCE })
    .refine((text) => text === 'common practice, no source' || slug.test(text), {
      error: NO_SOURCE,
    }),
};

export const optionShape = {
  id: id('The id of an option'),
  text: words('The text of an option', 1),
  correct: z.boolean({ error: 'Every option says "correct": true or false.' }),
  /** Shown for every option after every answer, right or wrong: learning.md L6. */
  why: words('The explanation ("why") of an option', 15),
};
