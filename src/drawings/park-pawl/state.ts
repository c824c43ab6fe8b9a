import { format } from '../../quantity/print.ts';
import { percent } from '../../quantity/quantities.ts';
import { clamp01 } from '../scale.ts';
import { words } from './words.en.ts';

export interface ParkPawlState {
  /** What moves the rod. */
  kind: 'cable' | 'controller';
  /** 0 released, 1 engaged. */
  engage: number;
}

export const parkPawlExample: ParkPawlState = { kind: 'cable', engage: 1 };

/** Within a hundredth of either end it is there. */
export function parkPawlAt(engage: number): 'in' | 'partly' | 'out' {
  const e = clamp01(engage);
  if (e >= 0.99) return 'in';
  return e <= 0.01 ? 'out' : 'partly';
}

export function describeParkPawl({ kind, engage }: ParkPawlState): string {
  const { describe } = words;
  const at = parkPawlAt(engage);
  const where =
    at === 'partly'
      ? describe.partly({ share: format(clamp01(engage) * 100, percent, 'si') })
      : describe[at];
  return [where, describe[kind]].join(' ');
}
