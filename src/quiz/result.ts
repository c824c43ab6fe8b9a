import type { Outcome } from './grade.ts';

export type Result = 'right' | 'partial' | 'wrong';

/**
 * Part of it was right where more was ticked that fits than does not. Ticking everything is no
 * knowledge, so an even count is wrong.
 */
export function resultOf({ right, explained }: Pick<Outcome, 'right' | 'explained'>): Result {
  if (right) return 'right';
  const taken = explained.filter((e) => e.taken);
  const fitting = taken.filter((e) => e.correct).length;
  return fitting > taken.length - fitting ? 'partial' : 'wrong';
}
