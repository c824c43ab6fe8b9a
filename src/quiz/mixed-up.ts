import type { Asked } from './asked.ts';
import { longestRising } from './longest-rising.ts';
import { seededRandom, shuffled } from './seeded-order.ts';

/** With what is shown in an order of chance. What has an order of its own keeps it. */
export function mixedUp(question: Asked, random: () => number): Asked {
  switch (question.kind) {
    case 'single':
    case 'several':
      return question.ordered
        ? question
        : { ...question, options: shuffled(question.options, random) };
    case 'order':
      return { ...question, steps: outOfOrder(question.steps, random) };
    case 'match':
      return { ...question, partners: shuffled(question.partners, random) };
    case 'number':
    case 'spot':
      return question;
  }
}

/** Steps in an order that is no answer yet. */
function outOfOrder<Step extends { readonly rank: number }>(
  steps: readonly Step[],
  random: () => number,
): readonly Step[] {
  const mixed = shuffled(steps, random);
  const inOrder = longestRising(mixed.map(({ rank }) => rank)).length === mixed.length;
  return inOrder ? [...mixed].reverse() : mixed;
}

/**
 * As it is shown where nothing is drawn by chance, on paper and without a script: what stands in its right order when it is
 * written is mixed up by its id, always alike. Options stay as they were written.
 */
export const asPrinted = (question: Asked): Asked =>
  question.kind === 'order' || question.kind === 'match'
    ? mixedUp(question, seededRandom(seedOf(question.id)))
    : question;

const seedOf = (id: string): number =>
  Array.from(id).reduce((sum, letter) => (Math.imul(sum, 31) + letter.charCodeAt(0)) | 0, 7);
