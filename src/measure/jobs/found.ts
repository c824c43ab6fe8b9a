import { isFault, SURE } from '../../diagnosis/index.ts';
import type { FaultId } from '../../engine/index.ts';
import type { Advice, PlannerModel } from '../../planner/model.ts';
import { beyondOne, type Pair } from '../../planner/two-faults.ts';
import { soundOf } from './Repair.tsx';
import type { Sheet } from './sheet.ts';

/** From this share on a cause is worth a name in front of a customer, and so many of them. */
const NAMED = 0.1;
const MOST = 3;

/**
 * What the readings before the repair have found. `unjudged`: there is nothing to judge by, or it is still at work. `clash`: two of
 * them cannot both be right. `nothing`: a healthy car fits best. `outside`: no single fault of the list explains them.
 */
export type Found =
  | { readonly kind: 'unread' | 'unjudged' | 'clash' | 'nothing' | 'outside' }
  | { readonly kind: 'pair'; readonly pair: Pair }
  | { readonly kind: 'sure'; readonly cause: FaultId }
  | { readonly kind: 'open'; readonly likeliest: FaultId; readonly others: readonly FaultId[] };

function foundBy(advice: Advice): Found {
  if (advice.clash === true) return { kind: 'clash' };
  const [top, ...rest] = advice.faults;
  const beyond = beyondOne(advice);
  if (top === undefined || top.fault === 'unlisted' || beyond === 'many' || beyond === 'misfit')
    return { kind: 'outside' };
  if (beyond !== null) return { kind: 'pair', pair: beyond };
  if (top.fault === 'healthy') return { kind: 'nothing' };
  if (top.probability >= SURE) return { kind: 'sure', cause: top.fault };
  const others = rest.flatMap(({ fault, probability }) =>
    isFault(fault) && probability >= NAMED ? [fault] : [],
  );
  return { kind: 'open', likeliest: top.fault, others: others.slice(0, MOST - 1) };
}

/** Whether the planner has said all that it has to say to the readings as they stand. */
const atWork = ({ ranking, advice }: PlannerModel): boolean =>
  ranking.value || advice.value === null || advice.value.clash === null;

export function foundIn(sheet: Sheet): Found {
  const { planner, before } = sheet;
  if (before.value.length === 0) return { kind: 'unread' };
  const advice = planner.advice.value;
  if (advice === null || soundOf(sheet) === null || atWork(planner)) return { kind: 'unjudged' };
  return foundBy(advice);
}
