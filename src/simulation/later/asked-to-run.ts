import { useEffect } from 'preact/hooks';
import { parseLink, type LinkSchema } from '../../ui/link-state.ts';
import { currentValues } from '../current-values.ts';
import type { Givens, SimModel, SimSpec } from '../sim-spec.ts';
import { sweep } from '../sweep.ts';

/** Asks a simulation on the page to go to another state, as its run does. Whoever heard it says so by preventing the default. */
const ASKED = 'simulation-asked-to-run';
/** It may still be on its way [ms]. */
const AGAIN_MS = 100;

interface Asked {
  readonly id: string;
  /** The state as a link has it. */
  readonly search: string;
}

/** Asks until it is heard. Returns how to give up. */
export function askToRun(box: Element, { id, search }: Asked): () => void {
  let timer: ReturnType<typeof setTimeout> | undefined;
  const ask = (): void => {
    const heard = new CustomEvent(ASKED, { detail: search, cancelable: true });
    const unheard = box.querySelector(`#${CSS.escape(id)}`)?.dispatchEvent(heard) ?? true;
    if (unheard) timer = setTimeout(ask, AGAIN_MS);
  };
  ask();
  return () => clearTimeout(timer);
}

/** Goes wherever it is asked to, numbers swept and the rest at once. */
export function useAskedToRun<G extends Givens, M extends SimModel<G>>(
  sim: SimSpec<G, M>,
  model: M,
  schema: LinkSchema,
): void {
  useEffect(() => {
    let stop = (): void => undefined;
    const go = (event: Event): void => {
      event.preventDefault();
      stop();
      stop = sweep<G>({
        from: currentValues(sim, model) as Partial<G>,
        to: parseLink(schema, String((event as CustomEvent<unknown>).detail)).values as Partial<G>,
        lasts: sim.predict.runMs,
        apply: (givens) => model.apply(givens),
        onEnd: () => undefined,
      });
    };
    const section = document.getElementById(sim.id);
    section?.addEventListener(ASKED, go);
    return () => {
      stop();
      section?.removeEventListener(ASKED, go);
    };
  }, [schema]);
}
