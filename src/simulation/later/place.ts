import { useEffect } from 'preact/hooks';
import { parseLink, printLink, type LinkValues } from '../../ui/link-state.ts';
import { currentValues } from '../current-values.ts';
import type { Givens, SimModel, SimSpec } from '../sim-spec.ts';
import { CONFIDENCES, startState, type Stage, type StageState } from '../stages.ts';
import { linkSchema } from './link-schema.ts';

/**
 * Where a reader stood: kept with the page in the history of the tab, so that Reload and Back come
 * to the same stage and values, and gone with the tab. Links carry the values alone.
 */
interface Kept extends StageState {
  /** The values, as a link carries them. */
  readonly search: string;
}

const KEPT = 'simulations';
/** How long the controls rest before it is written [ms]: browsers count the calls. */
const REST_MS = 300;
/** A run that was broken off is one that has not begun. */
const STAGES: readonly Stage[] = ['predict', 'compare', 'tasks', 'own'];

const all = (): Readonly<Record<string, unknown>> =>
  (history.state as { readonly [KEPT]?: Readonly<Record<string, unknown>> } | null)?.[KEPT] ?? {};

interface KeepPlaceProps<G extends Givens, M extends SimModel<G>> {
  readonly sim: SimSpec<G, M>;
  readonly model: M;
  readonly defaults: LinkValues;
  readonly state: StageState;
}

/** In a pause between frames; Safari has no call for it. */
function whenIdle(work: () => void): void {
  if (typeof requestIdleCallback === 'function') requestIdleCallback(work);
  else setTimeout(work);
}

/**
 * Draws nothing; writes down where the reader stands whenever that has changed and come to rest. It is there from the
 * first touch on, so the model is warmed from here.
 */
export function KeepPlace<G extends Givens, M extends SimModel<G>>(props: KeepPlaceProps<G, M>) {
  const { sim, model, defaults, state } = props;
  useEffect(() => whenIdle(() => model.warm?.()), []);
  // Read here, so that each move sets it off again; what is written is worked out once all rests.
  const moved = sim.controls.map(({ key }) => String(model.givens[key].value)).join('|');
  useEffect(() => {
    const timer = setTimeout(() => {
      const search = printLink(linkSchema(sim, defaults), currentValues(sim, model), '');
      const place: Kept = { ...state, search };
      history.replaceState(
        { ...(history.state as object | null), [KEPT]: { ...all(), [sim.id]: place } },
        '',
      );
    }, REST_MS);
    return () => clearTimeout(timer);
  }, [moved, state]);
  return null;
}

const isText = (value: unknown): value is string => typeof value === 'string';

/** Where the reader stood when this page was left; null where nothing was kept, or nothing that fits. */
export function readPlace<G extends Givens, M extends SimModel<G>>(
  sim: SimSpec<G, M>,
  defaults: LinkValues,
  tasks: number,
): { readonly state: StageState; readonly values: Partial<G> } | null {
  const kept = all()[sim.id] as Partial<Kept> | undefined;
  if (!isText(kept?.search)) return null;
  const ids = sim.predict.options.map(({ id }) => id);
  const known = (id: unknown): string | null => (isText(id) && ids.includes(id) ? id : null);
  const stage = STAGES.find((one) => one === kept.stage) ?? 'predict';
  const outcome = known(kept.outcome);
  // Comparison and tasks lean on a run.
  const shut = outcome === null && (stage === 'compare' || stage === 'tasks');
  const task = Number(kept.task);
  return {
    values: parseLink(linkSchema(sim, defaults), kept.search).values as Partial<G>,
    state: {
      ...startState(),
      stage: shut ? 'predict' : stage,
      prediction: known(kept.prediction),
      confidence: CONFIDENCES.find((one) => one === kept.confidence) ?? null,
      outcome,
      task: Number.isInteger(task) && task >= 0 && task < tasks ? task : 0,
      done: Array.from({ length: tasks }, (_, i) => kept.done?.[i] === true),
      hint: kept.hint === true,
      ...(isText(kept.before?.us) && isText(kept.before.si) && { before: kept.before }),
    },
  };
}
