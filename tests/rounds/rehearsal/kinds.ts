/** A question of each kind, of which the first varies and the last is typed. */
import type { Varied } from '../../../src/quiz/asked.ts';
import {
  ask,
  gap,
  match,
  number,
  order,
  several,
  shortCase,
  single,
  spot,
} from '../../quiz/sample.ts';

const VARIANTS = ['a', 'b', 'c', 'd', 'e', 'f'];

/** In each variant another option is right, so that an answer to one is graded against no other. */
function varying(id: string): Varied {
  const [first, ...others] = VARIANTS.map((variant, i) => ({
    ...ask({
      ...single,
      id,
      stem: `A gauge reads {pressure ${300 + 100 * i}}. What is it?`,
      options: single.options.map((option, at) => ({ ...option, correct: at === i % 3 })),
    }),
    variant,
  }));
  if (first === undefined) throw new Error('There are six variants.');
  return { ...first, others };
}

export const oneOfEach = (lesson: string): readonly Varied[] => [
  varying(`${lesson}-0`),
  ...[several, order, match, spot, gap, shortCase, number].map((question, i) =>
    ask({ ...question, id: `${lesson}-${i + 1}`, concept: `${lesson}-${(i + 1) % 4}` }),
  ),
];
