/**
 * What a question file may contain. Strict on purpose: a misspelt key that is silently dropped becomes a question without
 * its explanation. Every message is a sentence, because authors of questions are not programmers.
 *
 * Files are JSON, one per lesson, each an array of questions: Astro and Node both read JSON with nothing added (YAML would
 * need a parser in Node), and a lesson's questions are judged side by side (look-alikes, option lengths, key positions), which one
 * file per question would scatter over hundreds of files.
 */
import { z } from 'zod';
import { quantityNames } from '../quantity/by-name.ts';
import { matchSchema, orderSchema, spotSchema } from './schema-forms.ts';
import { common, id, list, share, strict, words } from './schema-parts.ts';

export const optionSchema = strict('An option', {
  id: id('The id of an option'),
  text: words('The text of an option', 1),
  correct: z.boolean({ error: 'Every option says "correct": true or false.' }),
  /** Shown for every option after every answer, right or wrong: learning.md L6. */
  why: words('The explanation ("why") of an option', 15),
});

export const numberSchema = strict('The "number" part', {
  /** Name in src/numbers: the engine computes the answer, nobody types it. */
  key: id('The "key" of a number'),
  quantity: z.enum(quantityNames, {
    error: (issue) =>
      `"${String(issue.input)}" is no quantity. Choose one of: ${quantityNames.join(', ')}.`,
  }),
  /** As a share of the right value (0.05 is 5 %), or as an amount in the SI unit of the quantity; the wider one counts. */
  tolerance: strict('The tolerance', {
    relative: share('"relative"')
      .max(0.25, { error: '"relative" may be 0.25 at most: a wider key says nothing.' })
      .optional(),
    absolute: share('"absolute"').optional(),
  }).refine((t) => t.relative !== undefined || t.absolute !== undefined, {
    error: 'The tolerance needs "relative", "absolute" or both.',
  }),
  why: words('The explanation ("why") of a number', 15),
  distractors: list(
    '"distractors"',
    strict('A distractor', {
      /** Name of a wrong rule of that number. */
      rule: id('The "rule" of a distractor'),
      why: words('The explanation ("why") of a distractor', 15),
    }),
  ).min(2, {
    error: 'A number needs at least two distractors, each the result of a mistake people make.',
  }),
  /** `type`: typed with a unit. `choose`: the same values as options, in order (for meetings and print). */
  entry: z.enum(['type', 'choose'], { error: 'The "entry" of a number is "type" or "choose".' }),
});

const singleSchema = strict('A question of kind "single"', {
  ...common,
  kind: z.literal('single'),
  /** `deciding-reading`: it asks which reading decides between what is left. */
  form: z
    .literal('deciding-reading', { error: 'The "form" is "deciding-reading", or left out.' })
    .optional(),
  options: list('"options"', optionSchema)
    .min(2, { error: 'At least two options.' })
    .max(5, { error: 'At most five options; three are enough.' }),
});

const severalSchema = strict('A question of kind "several"', {
  ...common,
  kind: z.literal('several'),
  options: list('"options"', optionSchema)
    .min(3, { error: 'At least three options.' })
    .max(6, { error: 'At most six options.' }),
});

const numericSchema = strict('A question of kind "number"', {
  ...common,
  kind: z.literal('number'),
  number: numberSchema,
});

export const questionSchema = z.discriminatedUnion(
  'kind',
  [singleSchema, severalSchema, numericSchema, orderSchema, matchSchema, spotSchema],
  {
    error: 'The kind of a question is "single", "several", "number", "order", "match" or "spot".',
  },
);

export type Question = z.infer<typeof questionSchema>;
export type ChoiceQuestion = Extract<Question, { kind: 'single' | 'several' }>;
export type NumberQuestion = Extract<Question, { kind: 'number' }>;
export type OrderQuestion = Extract<Question, { kind: 'order' }>;
export type MatchQuestion = Extract<Question, { kind: 'match' }>;
export type SpotQuestion = Extract<Question, { kind: 'spot' }>;
export type Level = Question['level'];

/** Reads one parsed question file; on any fault throws ONE error that lists every fault with file, question and place. */
export function parseQuestions(raw: unknown, file: string): readonly Question[] {
  if (!Array.isArray(raw))
    throw new Error(`${file}: a question file is a list of questions in square brackets.`);
  const faults: string[] = [];
  const good: Question[] = [];
  raw.forEach((item: unknown, index) => {
    const result = questionSchema.safeParse(item);
    if (result.success) {
      good.push(result.data);
      return;
    }
    const name =
      typeof item === 'object' && item !== null && 'id' in item && typeof item.id === 'string'
        ? `"${item.id}"`
        : `number ${index + 1}`;
    for (const issue of result.error.issues) {
      const place = issue.path.length > 0 ? ` at ${issue.path.join('.')}` : '';
      faults.push(`${file}, question ${name}${place}: ${issue.message}`);
    }
  });
  if (faults.length > 0) throw new Error(faults.join('\n'));
  return good;
}
