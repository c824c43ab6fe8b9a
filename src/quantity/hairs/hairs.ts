import { words } from './words.en.ts';

/** A human hair in millimetres, the site's yardstick for cracks; about, hairs run from 0.05 to 0.1 (common practice, no source). */
export const HAIR_MM = 0.07;

/** A crack's width in hairs, in words: what the number beside it feels like. */
export function hairs(mm: number): string {
  const n = mm / HAIR_MM;
  if (n <= 0) return words.none;
  if (n < 0.25) return words.fraction;
  if (n < 0.75) return words.half;
  if (n >= 1.25 && n < 1.75) return words.oneAndAHalf;
  const count = Math.round(n);
  return words.whole[count - 1] ?? words.many({ count: String(count) });
}
