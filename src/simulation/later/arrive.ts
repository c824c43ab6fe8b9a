import type { LinkValues } from '../../ui/link-state.ts';
import type { Givens, SimModel, SimSpec } from '../sim-spec.ts';
import type { StageEvent } from '../stages.ts';
import { readLink } from './link-schema.ts';
import { readPlace } from './place.ts';

/**
 * Sets the values that a reload, Back or a link comes with, and says which stage they belong to; null where nothing
 * came. Where the reader stood wins over the link that once led here.
 */
export function arrive<G extends Givens, M extends SimModel<G>>(
  sim: SimSpec<G, M>,
  model: M,
  defaults: LinkValues,
  search: string,
  tasks: number,
): Extract<StageEvent, { type: 'back-to' | 'to-own' }> | null {
  const place = readPlace(sim, defaults, tasks);
  const link = readLink(sim, defaults, search);
  if (place) {
    model.apply(place.values);
    return { type: 'back-to', state: place.state };
  }
  if (!link.present) return null;
  model.apply(link.values as Partial<G>);
  return { type: 'to-own' };
}
