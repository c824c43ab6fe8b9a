import type { Asked, Varied } from '../../quiz/asked.ts';
import { pickVariant, variantNamed } from '../../quiz/pick-variant.ts';
import type { Rehearsal, RehearsalItem } from '../../storage/rehearsals.ts';

/**
 * A question as a rehearsal asks it. Its seed picks the variant, and from then on it goes by name: another one that the site gets
 * later changes nothing here.
 * @returns undefined if that variant is gone from the site
 */
export const askedIn = (
  { begun, ended }: Pick<Rehearsal, 'begun' | 'ended'>,
  { variant }: Pick<RehearsalItem, 'variant'>,
  question: Varied,
): Asked | undefined =>
  variant === undefined && ended === null
    ? pickVariant(question, begun)
    : variantNamed(question, variant);
