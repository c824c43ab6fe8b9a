/** All questions of the site without their words, in the order of the course: what a plan needs to know of them. */
import * as z from 'zod/mini';
import type { Area } from './rehearsal/blueprint.ts';
import type { Idea } from './schedule/interleave.ts';

// The policy of the site forbids code made from text, and trying it would be reported as a breach.
z.config({ jitless: true });

export interface BankItem extends Idea {
  readonly lesson: string;
  /** Of a rehearsal. */
  readonly area: Area;
  /** To be worked out or diagnosed in a setting that no lesson shows. */
  readonly unseen?: boolean | undefined;
  /** About which test comes next. */
  readonly next?: boolean | undefined;
  /** About a car with nothing wrong. */
  readonly healthy?: boolean | undefined;
}
export interface BankIndex {
  /** Raised when the form changes. */
  readonly form: 1;
  readonly lessons: readonly { readonly id: string; readonly title: string }[];
  readonly items: readonly BankItem[];
}

const text = z.string().check(z.minLength(1));
/** Not asked which: a page that plans a round would carry the list of areas, and a rehearsal takes nothing from one it does not know. */
const area = text as z.ZodMiniType<string> as z.ZodMiniType<Area>;
const schema: z.ZodMiniType<BankIndex> = z.strictObject({
  form: z.literal(1),
  lessons: z.array(z.strictObject({ id: text, title: text })),
  items: z.array(
    z.strictObject({
      id: text,
      concept: text,
      lookAlikes: z.array(text),
      lesson: text,
      area,
      unseen: z.optional(z.boolean()),
      next: z.optional(z.boolean()),
      healthy: z.optional(z.boolean()),
    }),
  ),
});

/** @throws Error if the text is no index of this form */
export const readBankIndex = (sent: string): BankIndex => z.parse(schema, JSON.parse(sent));
