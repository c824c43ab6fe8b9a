/**
 * The questions of one lesson as they travel: made at build time, fetched by the page when a reader asks for them. What
 * comes over a network may be cut, old, or somebody's log-in page, so it is read strictly: all of it is right, or none
 * of it is used.
 */
import * as z from 'zod/mini';
import {
  START,
  type AskedCase,
  type AskedChoice,
  type AskedMatch,
  type AskedNumber,
  type AskedOrder,
  type AskedSpot,
  type Varied,
} from './asked.ts';
import { arrivals } from './case-minutes.ts';
import type { ChartPicture } from './chart-picture.ts';
import { changesOf, withChanges, type Changes } from './variants-sent.ts';
import { quantityNames } from '../quantity/by-name.ts';
import type { PrintedBoth } from '../quantity/print-both.ts';

// The policy of the site forbids code made from text, and trying it would be reported as a breach.
z.config({ jitless: true });

export interface QuestionSet {
  /** Raised when the form changes: a page from before the change then says so instead of guessing. */
  readonly form: 1;
  readonly lesson: string;
  readonly questions: readonly Varied[];
  readonly objectives: readonly {
    readonly id: string;
    readonly text: string;
    /** The id of the section of the lesson that teaches it. */
    readonly section: string;
  }[];
}

/** An amount as it travels: without its value before rounding, and as a string where both systems read alike. */
function asSent(key: string, value: unknown): unknown {
  if (key === 'others') return undefined;
  if (typeof value !== 'object' || value === null || !('amount' in value)) return value;
  const { si, us } = value as PrintedBoth;
  return si === us ? si : { si, us };
}

/** The set as it travels: of a variant only what the first has otherwise. */
export function writeQuestionSet(set: QuestionSet): string {
  return JSON.stringify({ ...set, variants: changesOf(set.questions) }, asSent);
}

const text = z.string().check(z.minLength(1));
const words = z
  .array(z.union([text, z.strictObject({ si: text, us: text })]))
  .check(z.minLength(1));

const place = z.number();
const pictureAxis = z.strictObject({
  title: text,
  ticks: z.array(z.strictObject({ place, text })),
});
const inBothUnits = z.strictObject({ si: pictureAxis, us: pictureAxis });
const chart: z.ZodMiniType<ChartPicture> = z.strictObject({
  about: words,
  ...{ width: place, height: place, left: place, right: place, top: place, bottom: place },
  x: inBothUnits,
  y: inBothUnits,
  lines: z
    .array(
      z.strictObject({
        path: text,
        letter: z.string(),
        x: place,
        y: place,
      }),
    )
    .check(z.minLength(1)),
  head: z.array(text),
  rows: z.array(z.array(words)),
});

const common = {
  id: text,
  objectives: z.array(text).check(z.minLength(1)),
  concept: text,
  lookAlikes: z.array(text),
  level: z.enum(['recall', 'apply', 'diagnose']),
  unseen: z.boolean(),
  stem: words,
  chart: z.optional(chart),
  tryIt: z.optional(text),
  source: text,
  variant: z.optional(text),
};

const option = z.strictObject({ id: text, words, correct: z.boolean(), why: words });

const options = z.array(option).check(
  z.minLength(2),
  z.refine((all) => all.some(({ correct }) => correct)),
);

const choice: z.ZodMiniType<AskedChoice> = z.strictObject({
  ...common,
  kind: z.enum(['single', 'several']),
  options,
  ordered: z.boolean(),
});

const number: z.ZodMiniType<AskedNumber> = z.strictObject({
  ...common,
  kind: z.literal('number'),
  quantity: z.enum(quantityNames),
  value: z.number(),
  within: z.number().check(z.positive()),
  valueWords: words,
  why: words,
  distractors: z.array(
    z.strictObject({ rule: text, value: z.number(), valueWords: words, mistake: text, why: words }),
  ),
});

const step = { id: text, words, why: words };

const order: z.ZodMiniType<AskedOrder> = z.strictObject({
  ...common,
  kind: z.literal('order'),
  steps: z.array(z.strictObject({ ...step, rank: z.number() })).check(
    z.minLength(3),
    z.refine((steps) => new Set(steps.map(({ rank }) => rank)).size > 1),
  ),
});

const match: z.ZodMiniType<AskedMatch> = z
  .strictObject({
    ...common,
    kind: z.literal('match'),
    pairs: z.array(z.strictObject(step)).check(z.minLength(3)),
    partners: z.array(z.strictObject({ id: text, words })),
    extraWhy: z.optional(words),
  })
  .check(
    z.refine(({ pairs, partners }) =>
      pairs.every((pair) => partners.some((partner) => partner.id === pair.id)),
    ),
  );

const priced = {
  minutes: place,
  warmth: z.optional(text),
  setUps: z.array(z.strictObject({ id: text, minutes: place })),
};
const shortCase: z.ZodMiniType<AskedCase> = z
  .strictObject({
    ...common,
    kind: z.literal('case'),
    arrives: z.enum(arrivals),
    readings: z.array(z.strictObject({ ...step, ...priced, reads: words })).check(z.minLength(1)),
    options,
    cheapest: z.array(text).check(z.minLength(1)),
  })
  .check(
    z.refine(({ readings, cheapest }) =>
      cheapest.every((one) => readings.some(({ id }) => id === one)),
    ),
  );

const spot: z.ZodMiniType<AskedSpot> = z
  .strictObject({
    ...common,
    kind: z.literal('spot'),
    steps: z.array(z.strictObject(step)).check(z.minLength(3)),
    answers: z.array(text).check(z.minLength(1)),
    missing: z.optional(z.strictObject({ words, why: words })),
  })
  .check(
    z.refine(({ steps, answers, missing }) =>
      answers.every(
        (answer) =>
          (missing !== undefined && answer === START) || steps.some(({ id }) => id === answer),
      ),
    ),
  );

const question = z.union([choice, number, order, match, spot, shortCase]);
const set: z.ZodMiniType<QuestionSet & { readonly variants?: Changes | undefined }> =
  z.strictObject({
    form: z.literal(1),
    lesson: text,
    questions: z.array(question).check(z.minLength(1)),
    objectives: z.array(z.strictObject({ id: text, text, section: text })),
    variants: z.optional(z.record(text, z.array(z.record(z.string(), z.unknown())))),
  });

/** Throws a sentence on anything but the questions of this lesson. */
export function readQuestionSet(text: string, lesson: string): QuestionSet {
  let raw: unknown;
  try {
    raw = JSON.parse(text);
  } catch {
    throw new Error(`What arrived for the lesson "${lesson}" is not JSON.`);
  }
  const { variants = {}, ...plain } = readAs(set, raw, lesson);
  if (plain.lesson !== lesson) {
    throw new Error(`The questions of "${plain.lesson}" arrived instead of "${lesson}".`);
  }
  const questions = withChanges(plain.questions, variants, (one) => readAs(question, one, lesson));
  return { ...plain, questions };
}

function readAs<Read>(form: z.ZodMiniType<Read>, raw: unknown, lesson: string): Read {
  const read = z.safeParse(form, raw);
  if (read.success) return read.data;
  const [first] = read.error.issues;
  throw new Error(
    `What arrived for the lesson "${lesson}" is no set of questions: ${first?.path.join('.') ?? ''} ${first?.code ?? ''}.`,
  );
}
