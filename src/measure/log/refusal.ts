import type { FileTrouble } from '../../log/trouble.ts';
import { formatNumber } from '../../quantity/print.ts';
import { count } from '../../quantity/quantities.ts';
import { words } from './words.en.ts';

const MOST = 2_000_000;

/** Why a file was not taken, and what is. */
export function refusal(trouble: FileTrouble, name: string): string {
  if (trouble.kind === 'foreign') return words.refused[trouble.what](name);
  if (trouble.kind === 'tooLarge') {
    const print = (rows: number) => formatNumber(rows, count, 'si');
    return words.refused.tooLarge(name, print(MOST), print(MOST));
  }
  return words.refused[trouble.kind](name);
}
