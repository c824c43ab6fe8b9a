/** The form of a sheet of one's own, wherever one comes from: the store, another version of the site, a file. */
import * as z from 'zod/mini';
import type { OwnSheet } from './own-sheet.ts';

// The policy of the site forbids code made from text, and trying it would be reported as a breach.
z.config({ jitless: true });

/** The most that a name may have: as the engine allows. */
export const LONGEST_NAME = 60;
/** More fields than a sheet has, and more text than one takes: a broken file cannot fill the device. */
const MOST_FIELDS = 300;
const LONGEST_TEXT = 200;

const time = z.number().check(z.minimum(0), z.maximum(253_402_300_799_000));
const dated = <Value extends z.ZodMiniType>(value: Value) => z.strictObject({ at: time, value });
const id = z.string().check(z.regex(/^[a-z0-9-]{1,40}$/));
const path = z.string().check(z.regex(/^[A-Za-z0-9_.]{1,60}$/));
const typed = z.strictObject({
  text: z.string().check(z.maxLength(LONGEST_TEXT)),
  units: z.enum(['us', 'si']),
});

const sheet = z.strictObject({
  id,
  created: time,
  name: dated(z.string().check(z.maxLength(LONGEST_NAME))),
  fields: z
    .record(path, dated(z.nullable(typed)))
    .check(z.refine((fields) => Object.keys(fields).length <= MOST_FIELDS)),
  deleted: dated(z.boolean()),
});

/** Undefined for what is no sheet. */
export function readOwnSheet(given: unknown): OwnSheet | undefined {
  const read = z.safeParse(sheet, given);
  return read.success ? read.data : undefined;
}
