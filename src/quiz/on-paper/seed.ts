/** The seed of a question sheet: a short word or number that somebody reads off one sheet and types for the next. */
import { hashOf } from './hash.ts';
import { seededRandom } from '../seeded-order.ts';

export const LONGEST_SEED = 16;

export type SeedRead =
  | { readonly ok: true; readonly seed: string }
  | { readonly ok: false; readonly fault: 'none' | 'long' }
  | { readonly ok: false; readonly fault: 'sign'; readonly sign: string };

/** As typed, without regard to capitals: who reads "Friday" off a sheet may type "friday". */
export function readSeed(typed: string): SeedRead {
  const seed = typed.normalize('NFKC').trim().toLowerCase();
  if (seed === '') return { ok: false, fault: 'none' };
  const sign = /[^a-z0-9-]/u.exec(seed)?.[0];
  if (sign !== undefined) return { ok: false, fault: 'sign', sign };
  return seed.length > LONGEST_SEED ? { ok: false, fault: 'long' } : { ok: true, seed };
}

/** Chance of its own for each thing that is drawn, so that one more question in a lesson does not shift the rest. */
export const chanceFor = (seed: string, what: string): (() => number) =>
  seededRandom(hashOf(`${seed}\n${what}`));
