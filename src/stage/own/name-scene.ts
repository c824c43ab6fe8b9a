import type { StateLink } from '../../meeting/state-link.ts';
import type { Passage } from '../../quiz/passage.ts';
import { viewOf } from '../simulations.ts';

export interface NamedScene {
  readonly title: string;
  /** What it is set to, in pieces, so that it breaks into lines where values end; none where the link sets nothing that is still there. */
  readonly set: Passage;
}

/** The state of a link in words; undefined if there is no such simulation any more. */
export async function nameState({ id, state }: StateLink): Promise<NamedScene | undefined> {
  const [view, { stateWords }] = await Promise.all([
    viewOf(id)?.(),
    // In what a simulation fetches as well: pieces shared with it here would be cut out of what every lesson loads.
    import('../../simulation/later/index.ts'),
  ]);
  const sim = view?.View.sim;
  if (!sim) return undefined;
  const us = stateWords(sim, state, 'us');
  return {
    title: sim.title,
    set: stateWords(sim, state, 'si').flatMap(({ label, value }, i) => [
      ...(i === 0 ? [] : ['; ']),
      both(label, us[i]?.label),
      ': ',
      both(value, us[i]?.value),
    ]),
  };
}

const both = (si: string, us = si): Passage[number] => (si === us ? si : { si, us });
