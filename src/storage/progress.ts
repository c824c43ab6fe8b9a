import { keeper, type Area, type Keeper } from './envelope.ts';
import { isRecord, type Form } from './versioned.ts';

export interface Place {
  readonly lesson: string;
  /** The section last read there; null at the top of the lesson. */
  readonly section: { readonly id: string; readonly title: string } | null;
}
export interface Progress {
  /** Lessons that the reader marked as done, by id. */
  readonly done: readonly string[];
  /** Where the reader was last, to carry on there. */
  readonly last: Place | null;
}

function parsePlace(value: unknown): Place | null | undefined {
  if (value === null) return null;
  if (!isRecord(value) || typeof value['lesson'] !== 'string') return undefined;
  const { lesson, section } = value;
  if (section === null) return { lesson, section };
  if (!isRecord(section)) return undefined;
  const { id, title } = section;
  if (typeof id !== 'string' || typeof title !== 'string') return undefined;
  return { lesson, section: { id, title } };
}

function parse(data: unknown): Progress | undefined {
  const { done, last } = isRecord(data) ? data : {};
  const place = parsePlace(last ?? null);
  if (!Array.isArray(done) || !done.every((id) => typeof id === 'string')) return undefined;
  return place === undefined ? undefined : { done: [...new Set(done)], last: place };
}

/** Version 1 kept the lesson alone, as its id. */
function fromVersion1(old: unknown): unknown {
  const { done, last } = isRecord(old) ? old : {};
  return { done, last: typeof last === 'string' ? { lesson: last, section: null } : last };
}

export const progressForm: Form<Progress> = {
  name: 'progress',
  version: 2,
  parse,
  upgrade: { 1: fromVersion1 },
};

export function progressKeeper(area?: Area): Keeper<Progress> {
  return keeper({ ...progressForm, empty: { done: [], last: null }, area });
}
