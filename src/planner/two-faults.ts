import { areTwo, type TwoFaults } from '../diagnosis/index.ts';
import type { Advice } from './model.ts';

/** From this share of all pairs on one is named. */
const LIKELY_PAIR = 0.5;

export type Pair = TwoFaults['pairs'][number];

/**
 * What one fault alone does not explain: the pair that does, `many` where more than one pair would, `misfit` where nothing is
 * known to; null where one fault does.
 */
export function beyondOne({ two, fit }: Advice): Pair | 'many' | 'misfit' | null {
  const [best] = two?.pairs ?? [];
  if (!two || !best || !areTwo(two)) return fit.singleFaultFits === false ? 'misfit' : null;
  return best.share < LIKELY_PAIR ? 'many' : best;
}
