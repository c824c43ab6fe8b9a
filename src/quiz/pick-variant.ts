/** Which variant of a question a round asks: the same after a reload, another one when the question comes back. */
import type { Asked, Varied } from './asked.ts';
import { seededRandom, seedOf } from './seeded-order.ts';

const variantsOf = ({ others = [], ...first }: Varied): readonly Asked[] => [first, ...others];

/**
 * Those seen least often first, and never the one seen last.
 * @param seed of the round
 * @param seen variants of this question in earlier rounds, in the order they were answered
 */
export function pickVariant(
  question: Varied,
  seed: number,
  seen: readonly (string | undefined)[] = [],
): Asked {
  const all = variantsOf(question);
  const times = (variant: Asked): number => seen.filter((one) => one === variant.variant).length;
  const fresh = all.length > 1 ? all.filter(({ variant }) => variant !== seen.at(-1)) : all;
  const least = Math.min(...fresh.map(times));
  const open = fresh.filter((variant) => times(variant) === least);
  const random = seededRandom(seed ^ seedOf(question.id));
  return open[Math.floor(random() * open.length)] ?? question;
}

/** The variant that an answer says it had; undefined if there is no such any more. */
export const variantNamed = (question: Varied, variant: string | undefined): Asked | undefined =>
  variantsOf(question).find((one) => one.variant === variant);
