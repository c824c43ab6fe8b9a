import type { Asked } from '../asked.ts';
import { numberMet } from '../number-met.ts';
import type { Given } from '../outcome.ts';

/** The named wrong rule that a typed number came from, as the id that was chosen; none where it met none. */
export function typedRule(asked: Asked | undefined, given: Given): readonly string[] {
  if (asked?.kind !== 'number' || given.kind !== 'typed') return [];
  const met = numberMet(asked, given);
  return met.ok && met.rule !== undefined ? [met.rule.rule] : [];
}
