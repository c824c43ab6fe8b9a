/** Reads a file of everything that a learner has: whole, or not at all and in a sentence. Nothing is thrown and nothing is kept. */
import { steps } from '../answer-steps.ts';
import { readJob } from '../jobs/job-form.ts';
import { readOwnMeeting } from '../meetings/own-meeting.ts';
import { readRecord } from '../read-answers.ts';
import { readOwnSheet } from '../sheets/sheet-form.ts';
import { isCount, isRecord, readVersioned, type Form } from '../versioned.ts';
import {
  forms,
  KIND,
  LONGEST_FILE,
  LONGEST_NAME,
  partNames,
  VERSION,
  type Bundle,
  type DatedAnswer,
  type Parts,
} from './bundle.ts';
import { words } from './words.en.ts';

export type BundleRead =
  | { readonly ok: true; readonly bundle: Bundle }
  | { readonly ok: false; readonly sentence: string };

/** To the end of the year 9999: a clock that is wrong by more makes days that cannot be counted. */
const LATEST = 253_402_300_799_000;
/** Levels of the deepest thing that is written, with room. */
const DEEPEST = 20;
/** Of a key that is shown to the reader. */
const KEY_SHOWN = 40;

class Refused extends Error {}
const refuse = (sentence: string): never => {
  throw new Refused(sentence);
};

type Fields = Readonly<Record<string, unknown>>;
const isTime = (value: unknown): value is number =>
  typeof value === 'number' && value >= 0 && value <= LATEST;

/** Keys that mean something to the language itself, and nesting that no file of ours has. */
function checkKeys(data: unknown): void {
  const rest: [unknown, number][] = [[data, 0]];
  for (let next = rest.pop(); next !== undefined; next = rest.pop()) {
    const [value, depth] = next;
    if (typeof value !== 'object' || value === null) continue;
    if (depth > DEEPEST) refuse(words.cutShort);
    for (const [key, inner] of Object.entries(value)) {
      if (key === '__proto__' || key === 'constructor' || key === 'prototype')
        refuse(words.strange({ key }));
      if (typeof inner === 'object') rest.push([inner, depth + 1]);
    }
  }
}

function parsed(given: string): Fields {
  const text = given.replace(/^\ufeff/, '');
  if (text.trim() === '') refuse(words.empty);
  if (text.includes('\u0000') || text.includes('\ufffd\ufffd')) refuse(words.notText);
  let data: unknown;
  try {
    data = JSON.parse(text);
  } catch {
    refuse(text.includes(KIND) ? words.cutShort : words.foreign);
  }
  if (!isRecord(data)) return refuse(words.foreign);
  if (data['kind'] === 'hot-clutch:jobs') refuse(words.otherFile.jobs);
  if (data['kind'] === 'hot-clutch:transmissions') refuse(words.otherFile.transmissions);
  if (data['kind'] === 'hot-clutch:meetings') refuse(words.otherFile.meetings);
  if (data['kind'] !== KIND) refuse(words.foreign);
  return data;
}

function onlyKeys(given: Fields, allowed: readonly string[]): void {
  const key = Object.keys(given).find((one) => !allowed.includes(one));
  if (key !== undefined) refuse(words.strange({ key: key.slice(0, KEY_SHOWN) }));
}

type List = keyof typeof words.inList;
function listOf<One>(file: Fields, list: List, read: (given: unknown) => One | undefined): One[] {
  const given = file[list];
  if (!Array.isArray(given)) return refuse(words.damaged({ what: words.lists[list] }));
  return (given as unknown[]).map((one, i) => {
    const where = { place: String(i + 1), of: String(given.length) };
    return read(one) ?? refuse(words.damaged({ what: words.inList[list](where) }));
  });
}

function readAnswer(given: unknown): DatedAnswer | undefined {
  if (!isRecord(given) || !isTime(given['at']) || !isCount(given['v'])) return undefined;
  if (given['v'] > steps.length) refuse(words.newer);
  try {
    const { at, answer } = readRecord(given);
    return { at, answer };
  } catch {
    return undefined;
  }
}

function partOf<Part extends keyof Parts>(parts: Fields, part: Part): Parts[Part] | null {
  const given = parts[part];
  if (given === undefined) return null;
  const damaged = (): never => refuse(words.damaged({ what: words.parts[part] }));
  if (!isRecord(given) || !isCount(given['v'])) return damaged();
  onlyKeys(given, ['v', 'data']);
  let read;
  try {
    const form: Form<NonNullable<Parts[Part]>> = forms[part];
    read = readVersioned(form, given['v'], given['data']);
  } catch {
    return damaged();
  }
  if (read.kind === 'newer') return refuse(words.newer);
  return read.kind === 'good' ? read.data : damaged();
}

function nameOf(given: unknown): string | null {
  if (given === undefined) return null;
  const good =
    typeof given === 'string' &&
    given.trim() !== '' &&
    given.length <= LONGEST_NAME &&
    !/\p{Cc}/u.test(given);
  return good ? given : refuse(words.damaged({ what: words.name }));
}

function bundleOf(text: string): Bundle {
  const file = parsed(text);
  const { version, parts, written } = file;
  if (typeof version === 'number' && version > VERSION) refuse(words.newer);
  if (!isCount(version) || version < 1) return refuse(words.cutShort);
  const withMeetings = version >= 2;
  checkKeys(file);
  onlyKeys(file, [
    'kind',
    'version',
    'name',
    'written',
    'answers',
    'parts',
    'jobs',
    'sheets',
    ...(withMeetings ? ['meetings'] : []),
  ]);
  if (!isRecord(parts)) return refuse(words.damaged({ what: words.lists.parts }));
  onlyKeys(parts, partNames);
  return {
    name: nameOf(file['name']),
    written: isTime(written) ? written : refuse(words.damaged({ what: words.written })),
    answers: listOf(file, 'answers', readAnswer),
    plan: partOf(parts, 'plan'),
    progress: partOf(parts, 'progress'),
    visits: partOf(parts, 'visits'),
    columns: partOf(parts, 'columns'),
    settings: partOf(parts, 'settings'),
    rehearsal: partOf(parts, 'rehearsal'),
    rehearsed: partOf(parts, 'rehearsed'),
    jobs: listOf(file, 'jobs', readJob),
    sheets: listOf(file, 'sheets', readOwnSheet),
    meetings: withMeetings ? listOf(file, 'meetings', readOwnMeeting) : [],
  };
}

/** What a file of this many bytes or characters is refused with, before anything of it is read; undefined where it is not. */
export const tooLarge = (size: number): string | undefined =>
  size > LONGEST_FILE ? words.tooLarge({ limit: String(LONGEST_FILE / 1_000_000) }) : undefined;

export function readBundle(text: string): BundleRead {
  const sentence = tooLarge(text.length);
  if (sentence !== undefined) return { ok: false, sentence };
  try {
    return { ok: true, bundle: bundleOf(text) };
  } catch (error) {
    // What is not ours to say is a fault that nobody has thought of: the file is the cause of it all the same.
    return { ok: false, sentence: error instanceof Refused ? error.message : words.cutShort };
  }
}
