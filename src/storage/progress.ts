import { keeper, type Area, type Keeper } from './envelope.ts';

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

const isRecord = (value: unknown): value is Record<string, unknown> =>
  typeof value === 'object' && value !== null;

function parsePlace(value: unknown): Place | null {
  if (value === null) return null;
  if (!isRecord(value) || typeof value['lesson'] !== 'string') {
    throw new Error('last is not a place in a lesson');
  }
  const { lesson, section } = value;
  if (section === null) return { lesson, section };
  if (!isRecord(section) || typeof section['id'] !== 'string') {
    throw new Error('section is not a section of a lesson');
  }
  const { id, title } = section;
  if (typeof title !== 'string') throw new Error('the section has no title');
  return { lesson, section: { id, title } };
}

function parse(data: unknown): Progress {
  const { done, last } = isRecord(data) ? data : {};
  if (!Array.isArray(done) || !done.every((id) => typeof id === 'string')) {
    throw new Error('done is not a list of lesson ids');
  }
  return { done: [...new Set(done)], last: parsePlace(last ?? null) };
}

/** Version 1 kept the lesson alone, as its id. */
function fromVersion1(old: unknown): unknown {
  const { done, last } = isRecord(old) ? old : {};
  return { done, last: typeof last === 'string' ? { lesson: last, section: null } : last };
}

export function progressKeeper(area?: Area): Keeper<Progress> {
  return keeper({
    name: 'progress',
    version: 2,
    empty: { done: [], last: null },
    parse,
    upgrade: { 1: fromVersion1 },
    area,
  });
}
