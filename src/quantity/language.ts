import { marks, words } from './words.en.ts';

/**
 * How numbers are marked, thousands and decimals, as ",.": an argument everywhere, and as in the language of the build
 * unless said. Written down there and not asked of `Intl`, whose first use takes Chromium 30 ms, half of what a
 * simulation needed to come alive; lists and plurals are its business, in lists.ts.
 */
export type Marks = ',.' | '.,';
export const MARKS: Marks = marks;

/** A number as printed, as `Intl` does it: halves go up, and a real minus sign, but never "-0". */
export function printNumber(
  value: number,
  decimals: number,
  least = decimals,
  [group = '', decimal = '']: Marks = MARKS,
): string {
  if (!Number.isFinite(value)) return words.noValue;
  // A hair more: a half whose binary form lies under it would fall by its dust, as 1.005 does.
  const text = (Math.abs(value) * (1 + Number.EPSILON)).toFixed(decimals);
  const [whole = '', all = ''] = text.split('.');
  const part = all.replace(/0+$/u, '').padEnd(least, '0');
  // Four figures stand together, as on a tester: 1500 rpm.
  const grouped = whole.length < 5 ? whole : whole.replace(/\B(?=(\d{3})+$)/gu, group);
  return (value < 0 && Number(text) > 0 ? '\u2212' : '') + grouped + (part && decimal + part);
}
