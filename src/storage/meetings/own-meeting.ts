/** A meeting of one's own as the device keeps it: as it was typed, so that an unfinished one survives. */
import * as z from 'zod/mini';
import { later, neverDated, type Dated } from '../dated.ts';

// The policy of the site forbids code made from text, and trying it would be reported as a breach.
z.config({ jitless: true });

/** What does not fit on a wall in letters that are read from the last row, or is not read out while talking [characters]. */
export const LONGEST = {
  ...{ title: 60, heading: 60, line: 140, why: 280, notes: 1200, address: 600 },
} as const;
export const MOST_SCENES = 15;
/** Keys 1 to 5 add a hand, so that nobody needs a mouse to count. */
export const MOST_OPTIONS = 5;

const words = (most: number) => z.string().check(z.maxLength(most));
const name = z.string().check(z.regex(/^[a-z0-9]+(-[a-z0-9]+)*$/), z.maxLength(80));
const heading = words(LONGEST.heading);
const notes = words(LONGEST.notes);

const scene = z.discriminatedUnion('kind', [
  z.strictObject({
    kind: z.literal('say'),
    heading,
    lines: z.array(words(LONGEST.line)).check(z.maxLength(3)),
    notes,
  }),
  z.strictObject({
    kind: z.literal('vote'),
    heading,
    stem: words(LONGEST.line * 2),
    options: z.array(words(LONGEST.line)).check(z.maxLength(MOST_OPTIONS)),
    right: z.int().check(z.minimum(0), z.maximum(MOST_OPTIONS - 1)),
    /** By option. From before there was one for each it is text, of the right one. */
    why: z.union([
      words(LONGEST.why),
      z.array(words(LONGEST.why)).check(z.maxLength(MOST_OPTIONS)),
    ]),
    notes,
  }),
  z.strictObject({ kind: z.literal('question'), heading, lesson: name, id: name, notes }),
  z.strictObject({
    kind: z.literal('simulation'),
    heading,
    href: words(LONGEST.address),
    notes,
  }),
  z.strictObject({ kind: z.literal('case'), heading, search: words(LONGEST.address), notes }),
]);

const plan = z.strictObject({
  title: words(LONGEST.title),
  minutes: z.int().check(z.minimum(1), z.maximum(180)),
  scenes: z.array(scene).check(z.maxLength(MOST_SCENES)),
});
export type OwnPlan = z.infer<typeof plan>;
export type OwnScene = OwnPlan['scenes'][number];

export type OwnVote = Extract<OwnScene, { kind: 'vote' }>;

export const whyOf = ({ why, right }: OwnVote, option: number): string =>
  (typeof why === 'string' ? option === right && why : why[option]) || '';

/** Undefined for what is none. */
export function readOwnPlan(given: unknown): OwnPlan | undefined {
  const read = z.safeParse(plan, given);
  return read.success ? read.data : undefined;
}

export interface OwnMeeting {
  readonly id: string;
  /** [ms of Unix time] */
  readonly created: number;
  readonly plan: Dated<OwnPlan>;
  readonly deleted: Dated<boolean>;
}

const time = z.number().check(z.minimum(0), z.maximum(253_402_300_799_000));
const record = z.strictObject({
  id: z.string().check(z.regex(/^[a-z0-9-]{1,40}$/)),
  created: time,
  plan: z.strictObject({ at: time, value: plan }),
  deleted: z.strictObject({ at: time, value: z.boolean() }),
});

export function readOwnMeeting(given: unknown): OwnMeeting | undefined {
  const read = z.safeParse(record, given);
  return read.success ? read.data : undefined;
}

/** A change after the deletion, in another tab or on another device, brings a meeting back. */
export const isMeetingDeleted = ({ plan: { at }, deleted }: OwnMeeting): boolean =>
  deleted.value && deleted.at >= at;

export const mergeMeetings = (a: OwnMeeting, b: OwnMeeting): OwnMeeting => ({
  id: a.id,
  created: Math.min(a.created, b.created),
  plan: later(a.plan, b.plan),
  deleted: later(a.deleted, b.deleted),
});

export const withMeetingDeleted = (
  meeting: OwnMeeting,
  now: number,
  value: boolean,
): OwnMeeting => ({
  ...meeting,
  deleted: { at: Math.max(now, meeting.plan.at + 1, meeting.deleted.at + 1), value },
});

export const newMeeting = (id: string, at: number, value: OwnPlan): OwnMeeting => ({
  id,
  created: at,
  plan: { at, value },
  deleted: neverDated(false),
});

/** Of a deleted meeting nothing is kept but that it is. */
export const meetingMarkOnly = ({ id, created, deleted }: OwnMeeting): OwnMeeting => ({
  ...newMeeting(id, created, { title: '', minutes: 10, scenes: [] }),
  plan: neverDated({ title: '', minutes: 10, scenes: [] }),
  deleted,
});
