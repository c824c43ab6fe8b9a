/** The form of a job, wherever one comes from: the store, another version of the site, a file. */
import * as z from 'zod/mini';
import type { Job } from './job.ts';

// The policy of the site forbids code made from text, and trying it would be reported as a breach.
z.config({ jitless: true });

/** Longer than anybody types, short enough that a broken file cannot fill the device. */
const LONGEST = 20_000;
const text = z.string().check(z.maxLength(LONGEST));
const id = z.string().check(z.regex(/^[a-z0-9-]{1,40}$/));
/** Until the year 9999: a clock that is wrong by more wins over every change for ever. */
const time = z.number().check(z.minimum(0), z.maximum(253_402_300_799_000));
const dated = <Value extends z.ZodMiniType>(value: Value) => z.object({ at: time, value });
const phase = z.enum(['before', 'after']);
const outcomes = z.array(text).check(z.maxLength(20));

const reading = z.object({
  test: text,
  phase,
  value: z.union([z.number(), z.null(), text, outcomes]),
  typed: text,
  units: z.enum(['us', 'si']),
  temperatureC: z.optional(z.number().check(z.minimum(-60), z.maximum(250))),
});
const draft = z.object({
  test: text,
  text,
  temperature: text,
  never: z.boolean(),
  codes: outcomes,
  outcome: text,
  phase,
  of: text,
});
const job = z.object({
  id,
  created: time,
  label: dated(text),
  // Version 1 of a job had none.
  complaint: z._default(dated(text), { at: 0, value: '' }),
  notes: dated(text),
  repair: dated(text),
  draft: dated(z.nullable(draft)),
  // Jobs kept before there was a choice have none.
  transmission: z._default(dated(id), { at: 0, value: 'training' }),
  readings: z.record(id, dated(z.nullable(reading))),
  deleted: dated(z.boolean()),
});

/** Undefined for what is no job. */
export function readJob(given: unknown): Job | undefined {
  const read = z.safeParse(job, given);
  return read.success ? (read.data as Job) : undefined;
}
