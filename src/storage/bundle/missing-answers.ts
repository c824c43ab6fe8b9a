/** Answers of a file beside those that are here: which of them are missing, and where each one goes. */
import type { DatedAnswer } from './bundle.ts';
import { textOf } from '../same.ts';

/** An answer that lies here, with its number. */
export interface Numbered extends DatedAnswer {
  readonly n: number;
}
export interface Missing extends DatedAnswer {
  /** The latest that the clock had said by then, in the file. */
  readonly reached: number;
}

const identity = ({ at, answer }: DatedAnswer): string => textOf([at, answer]);

/**
 * Those of the file that are not here. An answer that stands twice on one side and once on the other is missing once. A rehearsal
 * asks each question once: where it was moved while it was under way and handed in on both devices, what is here stands.
 * @param rehearsals the seeds of the rehearsals that were handed in, on either side
 */
export function missingFrom(
  here: readonly DatedAnswer[],
  file: readonly DatedAnswer[],
  rehearsals: ReadonlySet<number> = new Set(),
): readonly Missing[] {
  const rehearsed = ({ answer }: DatedAnswer): string | undefined =>
    answer.kind === 'retrieval' && rehearsals.has(answer.seed)
      ? textOf([answer.seed, answer.item])
      : undefined;
  const asked = new Set(here.map(rehearsed));
  const left = new Map<string, number>();
  for (const one of here) {
    const its = identity(one);
    left.set(its, (left.get(its) ?? 0) + 1);
  }
  const missing: Missing[] = [];
  let reached = 0;
  for (const one of file) {
    reached = Math.max(reached, one.at);
    const its = identity(one);
    const count = left.get(its) ?? 0;
    const question = rehearsed(one);
    if (question !== undefined) {
      if (!asked.has(question)) missing.push({ ...one, reached });
      asked.add(question);
    } else if (count > 0) left.set(its, count - 1);
    else missing.push({ ...one, reached });
  }
  return missing;
}

/**
 * The number that each missing answer gets: behind the last answer here that was given no later, so that what is worked out from
 * the order of answers comes out as if all had been given on one device. Numbers are keys of the database and need not be whole:
 * what lies there keeps its own.
 * @param keys every key that is taken, also by what cannot be read, rising
 * @returns undefined for one that goes to the end
 */
export function numbersFor(
  here: readonly Numbered[],
  keys: readonly number[],
  missing: readonly Missing[],
): readonly (number | undefined)[] {
  const behind = new Map<number, Missing[]>();
  let reached = Number.NEGATIVE_INFINITY;
  let i = 0;
  let low = Number.NEGATIVE_INFINITY;
  for (const one of missing) {
    for (let next = here[i]; next !== undefined; next = here[++i]) {
      reached = Math.max(reached, next.at);
      if (reached > one.reached) break;
      low = next.n;
    }
    const group = behind.get(low);
    if (group === undefined) behind.set(low, [one]);
    else group.push(one);
  }
  let next = 0;
  return [...behind].flatMap(([after, some]) => {
    while ((keys[next] ?? Number.POSITIVE_INFINITY) <= after) next += 1;
    return between(after, keys[next], some.length);
  });
}

/** @param low minus infinity: before all @param high undefined: behind all */
function between(
  low: number,
  high: number | undefined,
  count: number,
): readonly (number | undefined)[] {
  const atEnd = Array.from({ length: count }, () => undefined);
  if (high === undefined) return atEnd;
  const from = Math.max(low, high - 1);
  const numbers = atEnd.map((_, k) => from + ((high - from) * (k + 1)) / (count + 1));
  // Between two numbers there is room for thousands a time, and for that not for ever.
  const all = [from, ...numbers, high];
  return all.every((one, k) => k === 0 || one > (all[k - 1] ?? one)) ? numbers : atEnd;
}
