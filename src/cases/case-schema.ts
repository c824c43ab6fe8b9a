/** A practice case as content/<language>/cases keeps it. Our own invented shop and cars; see the guide in DEVELOPERS.md. */
import { z } from 'astro/zod';
import { CIRCUITS, FAULT_IDS } from '../engine/index.ts';
import { CODES, OUTCOMES } from '../diagnosis/index.ts';
import { LOOKS, OUTSIDE, QUESTIONS, REPAIRS } from './lists.ts';

const sentence = z.string().min(2);
const circuit = z.enum(CIRCUITS);
const severity = z.strictObject({
  severity: z.number().min(0).max(1),
  circuit: circuit.optional(),
});
const faults = z.strictObject(
  Object.fromEntries(FAULT_IDS.map((id) => [id, severity.optional()])) as Record<
    (typeof FAULT_IDS)[number],
    z.ZodOptional<typeof severity>
  >,
);
const outcome = z.enum(Object.values(OUTCOMES).flat() as unknown as [string, ...string[]]);

/** A reading that no physics here gives, made by hand. */
const byHand = z.strictObject({
  test: z.string(),
  range: z.enum(['park', 'drive', 'reverse']).optional(),
  circuit: z.enum([...CIRCUITS, 'line']).optional(),
  engine_rpm: z.number().optional(),
  temperature: z.enum(['cold', 'hot', 'frost']).optional(),
  value: z.union([z.number(), outcome, z.array(z.enum(CODES))]),
});

export const caseSchema = z.strictObject({
  title: sentence.max(60),
  /** Place in the list. */
  order: z.int().min(1),
  /** 1 plain, 2 with a look-alike, 3 with more than one trap. */
  level: z.int().min(1).max(3),
  selection: z.enum(['electronic', 'mechanical']),
  /** The car, without a brand. */
  car: sentence,
  /** In the customer's own words. */
  complaint: sentence,
  asked: z.strictObject(
    Object.fromEntries(QUESTIONS.map((id) => [id, sentence])) as Record<
      (typeof QUESTIONS)[number],
      typeof sentence
    >,
  ),
  /** Hidden: what is wrong with it, in the model's terms; empty where that is nothing, or nothing of the list. */
  faults,
  healthy: z.literal(true).optional(),
  outside: z.strictObject({ cause: z.enum(OUTSIDE), what: sentence }).optional(),
  byHand: z.array(byHand).optional(),
  looks: z
    .strictObject(
      Object.fromEntries(LOOKS.map((id) => [id, sentence.optional()])) as Record<
        (typeof LOOKS)[number],
        z.ZodOptional<typeof sentence>
      >,
    )
    .optional(),
  /** A frosty night is at hand. */
  coldMorning: z.literal(true).optional(),
  /** The popular answer, and why it is tempting. */
  tempting: z.enum([...FAULT_IDS, 'outside']),
  tempts: sentence,
  /** Tests and looks that decide. */
  decides: z.array(z.string()).min(2),
  /** What to do, and what to do with it. */
  repair: z.array(z.enum(REPAIRS)).min(1),
  /** Done with it for good reason; a plan may have these or not. */
  also: z.array(z.enum(REPAIRS)).optional(),
  together: sentence,
  /** What the popular answer would have cost. */
  comeback: z.strictObject({ hours: z.number().min(1), words: sentence }),
  takeaway: sentence,
  /** Read this next. */
  lesson: z.string(),
});
export type PracticeCase = z.infer<typeof caseSchema>;
