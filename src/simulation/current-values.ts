import type { LinkValues } from '../ui/link-state.ts';
import type { Givens, SimModel, SimSpec } from './sim-spec.ts';

/** The controls' values as they stand. */
export function currentValues<G extends Givens, M extends SimModel<G>>(
  sim: Pick<SimSpec<G, M>, 'controls'>,
  model: M,
): LinkValues {
  return Object.fromEntries(sim.controls.map(({ key }) => [key, model.givens[key].peek()]));
}
