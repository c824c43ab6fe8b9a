/** All questions of the site without their words, in the order of the course: what a plan needs to know of them. */
import * as z from 'zod/mini';
import type { Idea } from './schedule/interleave.ts';

// The policy of the site forbids code made from text, and trying it would be reported as a breach.
z.config({ jitless: true });

export interface BankItem extends Idea {
  readonly lesson: string;
  /** Nothing is wrong with the car it asks about. */
  readonly healthy?: true | undefined;
}
export interface BankIndex {
  /** Raised when the form changes. */
  readonly form: 1;
  readonly lessons: readonly { readonly id: string; readonly title: string }[];
  readonly items: readonly BankItem[];
}

const text = z.string().check(z.minLength(1));
const schema: z.ZodMiniType<BankIndex> = z.strictObject({
  form: z.literal(1),
  lessons: z.array(z.strictObject({ id: text, title: text })),
  items: z.array(
    z.strictObject({
      id: text,
      concept: text,
      lookAlikes: z.array(text),
      lesson: text,
      healthy: z.optional(z.literal(true)),
    }),
  ),
});

/** @throws Error if the text is no index of this form */
export const readBankIndex = (sent: string): BankIndex => z.parse(schema, JSON.parse(sent));
