/**
 * Which of a lesson's questions one round asks. A bank of a dozen per lesson is right for coming back to, and too much at
 * the end of a ten-minute lesson; so a round is short, touches every objective it can, and always has a new setting (L5).
 */
import type { Asked } from './asked.ts';
import { shuffled } from './seeded-order.ts';

export const ROUND_SIZE = 6;

export function pickRound<Item extends Asked>(
  questions: readonly Item[],
  random: () => number,
  /** Ids asked in earlier rounds: the others go first. */
  before: ReadonlySet<string> = new Set(),
  size: number = ROUND_SIZE,
): readonly Item[] {
  const mixed = shuffled(questions, random);
  const left = [
    ...mixed.filter((q) => !before.has(q.id)),
    ...mixed.filter((q) => before.has(q.id)),
  ];
  const round: Item[] = [];
  const take = (want: (q: Item) => boolean): boolean => {
    const at = left.findIndex(want);
    if (at < 0 || round.length >= size) return false;
    round.push(...left.splice(at, 1));
    return true;
  };

  take((q) => q.unseen);
  const covered = new Set(round.flatMap((q) => q.objectives));
  while (take((q) => q.objectives.some((o) => !covered.has(o)))) {
    for (const o of round.at(-1)?.objectives ?? []) covered.add(o);
  }
  while (take(() => true));
  return round;
}
