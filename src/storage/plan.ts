/** What a learner has set for practice, and the round that is under way. The answers themselves are in the log of answers. */
import { keeper, type Area, type Keeper } from './envelope.ts';
import { isRecord, type Form } from './versioned.ts';

/** How long a round may take [min]. */
export const ROUND_MINUTES = [5, 10, 20] as const;
export type RoundMinutes = (typeof ROUND_MINUTES)[number];

export interface RoundKept {
  /** The day it was begun, as day.ts of the quiz counts it. */
  readonly day: number;
  /** Order of the options follows from it, and the answers of the round carry it. */
  readonly seed: number;
  readonly items: readonly { readonly id: string; readonly lesson: string }[];
}
export interface Plan {
  /** Year, month and day; null without an exam. */
  readonly exam: string | null;
  readonly minutes: RoundMinutes;
  readonly round: RoundKept | null;
}

function parseRound(value: unknown): RoundKept | null | undefined {
  if (value === null) return null;
  if (!isRecord(value)) return undefined;
  const { day, seed, items } = value;
  if (!Number.isInteger(day) || !Number.isFinite(seed) || !Array.isArray(items)) return undefined;
  const read = items.map((one: unknown) =>
    isRecord(one) && typeof one['id'] === 'string' && typeof one['lesson'] === 'string'
      ? { id: one['id'], lesson: one['lesson'] }
      : undefined,
  );
  const good = read.filter((one) => one !== undefined);
  if (good.length !== read.length) return undefined;
  return { day: day as number, seed: seed as number, items: good };
}

function parse(data: unknown): Plan | undefined {
  if (!isRecord(data)) return undefined;
  const { exam, minutes } = data;
  const length = ROUND_MINUTES.find((one) => one === minutes);
  const round = parseRound(data['round']);
  if (exam !== null && (typeof exam !== 'string' || !/^\d{4}-\d{2}-\d{2}$/u.test(exam))) {
    return undefined;
  }
  if (length === undefined || round === undefined) return undefined;
  return { exam, minutes: length, round };
}

export const planForm: Form<Plan> = { name: 'plan', version: 1, parse };

export function planKeeper(area?: Area): Keeper<Plan> {
  return keeper({ ...planForm, empty: { exam: null, minutes: 5, round: null }, area });
}
