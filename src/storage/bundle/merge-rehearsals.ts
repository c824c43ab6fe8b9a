/** Rehearsals of this device and of a file, which know each other by when they were begun. Pure. */
import { withPast, type Past, type Rehearsal, type UnderWay } from '../rehearsals.ts';
import type { Side } from './merge-parts.ts';

export interface Rehearsals {
  readonly rehearsal: UnderWay | null;
  readonly rehearsed: Past | null;
}

/** As they belong: one that was handed in and found no room among the others yet stands there, and what is empty is nothing. */
export function inOrder({ rehearsal, rehearsed }: Rehearsals): Rehearsals {
  const one = rehearsal?.rehearsal ?? null;
  const isOpen = one?.ended === null;
  const past = rehearsed ?? { rehearsals: [] };
  const filed = one === null || isOpen ? past : withPast(past, one);
  return {
    rehearsal: isOpen ? rehearsal : null,
    rehearsed: filed.rehearsals.length === 0 ? null : filed,
  };
}

/** The seeds of all that were handed in: what each is named by. */
export const seedsOf = (...sides: readonly Rehearsals[]): ReadonlySet<number> =>
  new Set(
    sides.flatMap((side) => inOrder(side).rehearsed?.rehearsals.map(({ begun }) => begun) ?? []),
  );

const has = (past: Past | null, { begun }: Rehearsal): boolean =>
  past?.rehearsals.some((one) => one.begun === begun) === true;

/**
 * What the file says about the rehearsal under way: which one it has, or that the one here is over, since it was handed in there. One
 * that was handed in here does not come back to life.
 */
export function underWayFrom(here: Rehearsals, file: Rehearsals): Rehearsal | 'over' | null {
  const came = inOrder(file).rehearsal?.rehearsal;
  if (came && !has(here.rehearsed, came)) return came;
  const own = inOrder(here).rehearsal?.rehearsal;
  return own && has(file.rehearsed, own) ? 'over' : null;
}

export function mergeUnderWay(here: Rehearsals, file: Rehearsals, side: Side): UnderWay | null {
  const own = here.rehearsal?.rehearsal ?? null;
  const from = underWayFrom(here, file);
  // One that waits here to be filed is the only copy of a result.
  const stays = own !== null && (side === 'here' || own.ended !== null);
  if (from === null || stays) return here.rehearsal;
  return { rehearsal: from === 'over' ? null : from };
}

/** Those of both, as they are here; all answers of one are in the log if they are in one of the two logs. */
export function mergeRehearsed(here: Past | null, file: Past | null): Past | null {
  if (here === null || file === null) return here ?? file;
  const own = here.rehearsals.map((one) =>
    file.rehearsals.some(({ begun, logged }) => logged && begun === one.begun)
      ? { ...one, logged: true }
      : one,
  );
  return file.rehearsals.filter((one) => !has(here, one)).reduce(withPast, { rehearsals: own });
}
