/**
 * Certainty marking: Gardner-Medwin 2005. Right earns 1, 2 or 3, wrong costs 0, 2 or 6, by how sure you said you were
 * BEFORE you knew. Honest is best: 2 pays from about 67 % sure, 3 from 80 %.
 */
export type Certainty = 1 | 2 | 3;
export const certainties = [1, 2, 3] as const;

const marksRight = { 1: 1, 2: 2, 3: 3 } as const;
const marksWrong = { 1: 0, 2: -2, 3: -6 } as const;

export function marks(right: boolean, certainty: Certainty): number {
  return right ? marksRight[certainty] : marksWrong[certainty];
}
