import { keeper, type Area, type Keeper } from './envelope.ts';

export interface Progress {
  /** Lessons that the reader marked as done, by id. */
  readonly done: readonly string[];
  /** The lesson opened last, to carry on where one was. */
  readonly last: string | null;
}

function parse(data: unknown): Progress {
  const { done, last } = (data ?? {}) as Record<string, unknown>;
  if (!Array.isArray(done) || !done.every((id) => typeof id === 'string')) {
    throw new Error('done is not a list of lesson ids');
  }
  if (last !== null && typeof last !== 'string') throw new Error('last is not a lesson id');
  return { done: [...new Set(done)], last };
}

export function progressKeeper(area?: Area): Keeper<Progress> {
  return keeper({ name: 'progress', version: 1, empty: { done: [], last: null }, parse, area });
}
