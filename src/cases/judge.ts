/** Whether a conclusion is what is wrong with the car, and whether the readings had shown it. */
import { FAULT_IDS, type Circuit, type FaultId, type FaultSet } from '../engine/index.ts';
import { inOneCircuit, SURE, type Advice, type Name } from '../diagnosis/index.ts';
import type { Outside, Repair } from './lists.ts';

/** A fault of the list, a cause outside it, or nothing at all. */
export type Cause = FaultId | Outside | 'healthy';
export interface Named {
  readonly cause: Cause;
  readonly circuit?: Circuit;
}
export interface Conclusion {
  /** One or two. */
  readonly causes: readonly Named[];
  readonly repairs: readonly Repair[];
}

/** What the car really has. */
export interface Truth {
  readonly causes: readonly Named[];
  /** Tests and looks that decide; none for a made case. */
  readonly decides: readonly string[];
}

export function causesOf(given: {
  readonly faults: FaultSet;
  readonly healthy?: boolean | undefined;
  readonly outside?: { readonly cause: Outside } | undefined;
}): readonly Named[] {
  if (given.healthy) return [{ cause: 'healthy' }];
  if (given.outside) return [{ cause: given.outside.cause }];
  return Object.entries(given.faults).flatMap(([cause, setting]) =>
    setting === undefined
      ? []
      : [
          {
            cause: cause as FaultId,
            ...(inOneCircuit(cause as Name) &&
              setting.circuit !== undefined && { circuit: setting.circuit }),
          },
        ],
  );
}

const same = (a: Named, b: Named): boolean => a.cause === b.cause && a.circuit === b.circuit;

export interface Judged {
  /** `solved`: every cause and no other. `part`: some of it. */
  readonly verdict: 'solved' | 'part' | 'wrong';
  readonly missed: readonly Named[];
  readonly accused: readonly Named[];
  /** The right part of the wrong clutch. */
  readonly elsewhere: readonly Named[];
}

/**
 * A case is solved when every cause is named, with its clutch where it sits in one, and nothing else is accused. A car with
 * nothing wrong is solved by saying so; one with a cause that the planner does not list, by naming that cause.
 */
export function judge(truth: readonly Named[], { causes }: Conclusion): Judged {
  const missed = truth.filter((one) => !causes.some((named) => same(one, named)));
  const accused = causes.filter((named) => !truth.some((one) => same(one, named)));
  const elsewhere = accused.filter((named) => truth.some(({ cause }) => cause === named.cause));
  const verdict =
    missed.length === 0 && accused.length === 0
      ? 'solved'
      : missed.length < truth.length || elsewhere.length > 0
        ? 'part'
        : 'wrong';
  return { verdict, missed, accused, elsewhere };
}

/** From this share on, readings speak for a cause more than for all the others together. */
export const LIKELY = 0.5;

/**
 * How far the readings carried the conclusion when it was drawn. `shown`: at least nine parts in ten, or everything that
 * decides was seen. `likely`: more than half. `outran`: less.
 */
export type Carried = 'shown' | 'likely' | 'outran';

/** Share of one cause among what still fits; null for a cause that the planner does not list. */
export function shareOf({ cause, circuit }: Named, { faults }: Pick<Advice, 'faults'>) {
  const found = faults.find(({ fault }) => fault === cause);
  if (found === undefined) return null;
  if (circuit === undefined || found.probability === 0) return found.probability;
  return found.circuits?.[circuit] ?? found.probability;
}

/** See `Carried`. `seen` holds the ids of the tests and looks that were taken. */
export function carried(
  { causes }: Conclusion,
  { decides }: Truth,
  advice: Pick<Advice, 'faults' | 'fit'>,
  seen: readonly string[],
): Carried {
  const known = decides.filter((id) => seen.includes(id)).length;
  if (decides.length > 0 && known === decides.length) return 'shown';
  const [first, second] = causes;
  // Of two faults neither has a share of its own; what can be seen is that one alone does not explain it.
  if (second !== undefined) return advice.fit.singleFaultFits === false ? 'likely' : 'outran';
  const share = first === undefined ? null : shareOf(first, advice);
  if (share === null) return 2 * known >= decides.length ? 'likely' : 'outran';
  return share >= SURE ? 'shown' : share >= LIKELY ? 'likely' : 'outran';
}

/** What a repair plan lacks, and what it does for nothing; what may go with it counts as neither. */
export function repairGaps(
  { repair, also = [] }: { readonly repair: readonly Repair[]; readonly also?: readonly Repair[] },
  planned: readonly Repair[],
) {
  return {
    missing: repair.filter((one) => !planned.includes(one)),
    needless: planned.filter((one) => !repair.includes(one) && !also.includes(one)),
  };
}

/** Whether the name is one that sits in one clutch, so that a conclusion has to say which. */
export const asksCircuit = (cause: Cause): boolean =>
  (FAULT_IDS as readonly string[]).includes(cause) && inOneCircuit(cause as FaultId);
