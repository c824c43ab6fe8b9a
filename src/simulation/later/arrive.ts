import { textFor } from '../../quantity/unit-system.ts';
import type { LinkValues } from '../../ui/link-state.ts';
import type { Givens, SimModel, SimSpec } from '../sim-spec.ts';
import { startState, type StageEvent } from '../stages.ts';
import { readLink } from './link-schema.ts';
import { readPlace } from './place.ts';
import { readPredicted } from './read-predicted.ts';

/**
 * Sets the values that a reload, Back or a link comes with, and says which stage they belong to. Where the reader stood wins over the
 * link that once led here. In another visit his controls are free and what he predicted stands beside them; null where nothing
 * came and nothing was predicted.
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
  if (link.present) {
    model.apply(link.values as Partial<G>);
    return { type: 'to-own' };
  }
  const predicted = readPredicted(sim);
  if (!predicted) return null;
  model.apply(sim.predict.end);
  const { option, words } = sim.predict.outcome(model);
  // As they read now: some are worked out when they are read, and the model moves on.
  const before = { us: textFor(words, 'us'), si: textFor(words, 'si') };
  model.reset();
  return {
    type: 'back-to',
    state: { ...startState(), ...predicted, stage: 'own', outcome: option, before },
  };
}
