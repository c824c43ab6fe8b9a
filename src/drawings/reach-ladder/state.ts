import { words } from './words.en.ts';

/** Least and most minutes of each rung, as its label has them; the last has no end. Common practice, no source. */
export const MINUTES = [
  [5, 45],
  [10, 30],
  [15, 60],
  [35, 180],
  [180, 180],
] as const;

export const describeReachLadder = (): string => words.describe;
