import type { Certainty } from '../../quiz/certainty.ts';
import { marks } from '../../quiz/certainty.ts';
import { words } from './player/words.en.ts';

/** The price stands beside each answer to "how sure", because honest marking only works when it is known. */
export function price(certainty: Certainty): string {
  const lost = marks(false, certainty);
  return words.price(`+${marks(true, certainty)}`, lost === 0 ? '0' : `−${Math.abs(lost)}`);
}
