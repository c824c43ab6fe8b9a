/** The two sheets of a seed: the same questions, in such an order each that a look at the next seat is worth nothing. */
import type { Asked } from '../asked.ts';
import { shuffled } from '../seeded-order.ts';
import { chooseQuestions, type LessonQuestions } from './choose.ts';
import { pickVariant } from '../pick-variant.ts';
import { hashOf } from './hash.ts';
import { putOnPaper } from './put.ts';
import type { Mix, Put } from './put-parts.ts';
import { chanceFor } from './seed.ts';

export const SHEETS = ['a', 'b'] as const;
export type Sheet = (typeof SHEETS)[number];
export type Sheets = Readonly<Record<Sheet, readonly Put[]>>;

export const FEWEST = 5;
export const MOST = 40;

const never = (): boolean => false;

export function makeSheets(sets: readonly LessonQuestions[], count: number, seed: string): Sheets {
  const chosen = chooseQuestions(sets, count, seed).map((question) =>
    pickVariant(question, hashOf(`${seed}\nvariant`)),
  );
  const orderA = shuffled(chosen, chanceFor(seed, 'sheet a'));
  const orderB = allMoved(orderA, chanceFor(seed, 'sheet b'));
  const mixA =
    ({ id }: Asked): Mix =>
    (items, isAnswer = never) => {
      const mixed = shuffled(items, chanceFor(seed, `a ${id}`));
      return isAnswer(mixed) ? [...mixed].reverse() : mixed;
    };
  const mixB =
    (asked: Asked): Mix =>
    (items, isAnswer = never) => {
      const moved = (from: typeof items) => allMoved(from, chanceFor(seed, `b ${asked.id}`));
      const once = moved(mixA(asked)(items, isAnswer));
      // The same cycle again takes everything from its place once more, on A and from the answer.
      return isAnswer(once) ? moved(once) : once;
    };
  return {
    a: orderA.map((asked) => putOnPaper(asked, mixA(asked))),
    b: orderB.map((asked) => putOnPaper(asked, mixB(asked))),
  };
}

/**
 * One cycle through all of them (Sattolo 1986), so that none stays in its place; and no part of them keeps its places
 * among itself either, which means that the right letters of a question are others.
 */
function allMoved<T>(items: readonly T[], random: () => number): readonly T[] {
  const out = [...items];
  for (let i = out.length - 1; i > 0; i -= 1) {
    const j = Math.floor(random() * i);
    const a = out[i] as T;
    out[i] = out[j] as T;
    out[j] = a;
  }
  return out;
}
