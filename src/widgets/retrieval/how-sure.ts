import type { Certainty } from '../../quiz/certainty.ts';
import { marks } from '../../quiz/certainty.ts';

/** How sure, in words; the price stands beside each, because honest marking only works when it is known. */
export const howSure: Readonly<Record<Certainty, string>> = {
  1: 'Guessing',
  2: 'Fairly sure',
  3: 'Certain',
};

export function price(certainty: Certainty): string {
  const lost = marks(false, certainty);
  return `right +${marks(true, certainty)}, wrong ${lost === 0 ? '0' : `−${Math.abs(lost)}`}`;
}
