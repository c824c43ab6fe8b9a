import type { StateLink } from '../../meeting/state-link.ts';
import type { UnitSystem } from '../../quantity/unit-system.ts';
import { stateWords } from '../../simulation/state-words.ts';
import { viewOf } from '../simulations.ts';

export interface NamedScene {
  readonly title: string;
  /** What it is set to; empty where the link sets nothing that is still there. */
  readonly set: (system: UnitSystem) => string;
}

/** The state of a link in words; undefined if there is no such simulation any more. */
export async function nameState({ id, state }: StateLink): Promise<NamedScene | undefined> {
  const sim = (await viewOf(id)?.())?.View.sim;
  return (
    sim && {
      title: sim.title,
      set: (system) =>
        stateWords(sim, state, system)
          .map(({ label, value }) => `${label}: ${value}`)
          .join('; '),
    }
  );
}
