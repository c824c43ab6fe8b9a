/** Questions in which one arranges, pairs or points, as they are asked. */
import {
  EXTRA,
  type AskedCommon,
  type AskedMatch,
  type AskedOrder,
  type AskedSpot,
} from './asked.ts';
import { readPassage, type Lookup } from './read-passage.ts';
import type { MatchQuestion, OrderQuestion, SpotQuestion } from './schema.ts';

interface Told {
  readonly id: string;
  readonly text: string;
  readonly why: string;
}

const told = ({ id, text, why }: Told, lookup: Lookup) => ({
  id,
  words: readPassage(text, lookup),
  why: readPassage(why, lookup),
});

export function resolveOrder(
  { steps, anyOrder = [] }: OrderQuestion,
  lookup: Lookup,
): Omit<AskedOrder, keyof AskedCommon> {
  const ids = steps.map(({ id }) => id);
  /** A group has the place of its first step. */
  const rankOf = (id: string): number =>
    Math.min(
      ...(anyOrder.find((group) => group.includes(id)) ?? [id]).map((one) => ids.indexOf(one)),
    );
  return {
    kind: 'order',
    steps: steps.map((step) => ({ ...told(step, lookup), rank: rankOf(step.id) })),
  };
}

export function resolveMatch(
  { pairs, extra }: MatchQuestion,
  lookup: Lookup,
): Omit<AskedMatch, keyof AskedCommon> {
  return {
    kind: 'match',
    pairs: pairs.map(({ id, left, why }) => told({ id, text: left, why }, lookup)),
    partners: [
      ...pairs.map(({ id, right }) => ({ id, words: readPassage(right, lookup) })),
      ...(extra === undefined ? [] : [{ id: EXTRA, words: readPassage(extra.text, lookup) }]),
    ],
    ...(extra !== undefined && { extraWhy: readPassage(extra.why, lookup) }),
  };
}

export function resolveSpot(
  { steps, unsafe, missing }: SpotQuestion,
  lookup: Lookup,
): Omit<AskedSpot, keyof AskedCommon> {
  return {
    kind: 'spot',
    steps: steps.map((step) => told(step, lookup)),
    answers: missing?.after ?? (unsafe === undefined ? [] : [unsafe]),
    ...(missing !== undefined && {
      missing: { words: readPassage(missing.text, lookup), why: readPassage(missing.why, lookup) },
    }),
  };
}
