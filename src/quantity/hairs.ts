/** A human hair in millimetres, the site's yardstick for cracks; about, hairs run from 0.05 to 0.1 (common practice, no source). */
export const HAIR_MM = 0.07;

const WHOLE = ['', 'one hair', 'two hairs', 'three hairs', 'four hairs', 'five hairs', 'six hairs'];

/** A crack's width in hairs, in words: what the number beside it feels like. */
export function hairs(mm: number): string {
  const n = mm / HAIR_MM;
  if (n <= 0) return 'no crack';
  if (n < 0.25) return 'a fraction of a hair';
  if (n < 0.75) return 'half a hair';
  if (n >= 1.25 && n < 1.75) return 'one and a half hairs';
  return WHOLE[Math.round(n)] ?? `${Math.round(n)} hairs`;
}
