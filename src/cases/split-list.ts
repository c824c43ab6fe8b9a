/** How checks split the list of a complaint, and what is the quickest way to one name. */
import type { Check, Complaint } from './complaints.ts';

type Names = readonly string[];

/** What a check says to a cause, by place. */
export function answerOf({ parts }: Check, cause: string): number {
  const place = parts.findIndex((group) => group.includes(cause));
  return place < 0 ? parts.length : place;
}

/** The list in as many heaps as a check has answers to it. */
export function heaps(check: Check, names: Names): readonly Names[] {
  const all = [...check.parts.keys(), check.parts.length];
  return all
    .map((place) => names.filter((cause) => answerOf(check, cause) === place))
    .filter(({ length }) => length > 0);
}
export const splits = (check: Check, names: Names): boolean => heaps(check, names).length > 1;

/** Whoever answers these checks as this cause does. */
export const leftWith = (names: Names, taken: readonly Check[], cause: string): Names =>
  names.filter((other) =>
    taken.every((check) => answerOf(check, other) === answerOf(check, cause)),
  );

export interface Plan {
  /** What to take first; null where nothing splits the list. */
  readonly first: string | null;
  /** Until no check splits it further, on the average over the list [min]. */
  readonly minutes: number;
}

/** The mean minutes if this check comes next and the quickest way follows. */
export function minutesFrom({ checks }: Complaint, first: string, names: Names): number {
  const check = checks[first];
  if (check === undefined || names.length === 0) return Infinity;
  return heaps(check, names).reduce(
    (sum, heap) => sum + (heap.length / names.length) * planOf({ checks }, heap).minutes,
    check.minutes,
  );
}

/** The quickest way, by trying every order; every cause of the list alike. */
export function planOf({ checks }: Pick<Complaint, 'checks'>, names: Names): Plan {
  const useful = Object.keys(checks).filter((key) => {
    const check = checks[key];
    return check !== undefined && splits(check, names);
  });
  return useful.reduce<Plan>(
    (best, first) => {
      const minutes = minutesFrom({ causes: names, checks }, first, names);
      return best.first === null || minutes < best.minutes ? { first, minutes } : best;
    },
    { first: null, minutes: 0 },
  );
}
