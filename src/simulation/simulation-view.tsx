import type { ComponentType } from 'preact';
import { useMemo } from 'preact/hooks';
import { onPaper } from '../ui/on-paper.ts';
import { Ran } from './frame/Ran.tsx';
import { Later } from './Later.tsx';
import type {
  DrawnControls,
  Givens,
  PictureContext,
  SimModel,
  SimSpec,
  TasksFile,
} from './sim-spec.ts';
import { SimShell } from './SimShell.tsx';

export interface PictureProps<M> extends PictureContext {
  readonly model: M;
}

interface SimulationParts<G extends Givens, M extends SimModel<G>> {
  /** The simulation as data: question, controls, what is said. */
  readonly sim: SimSpec<G, M>;
  /** Fetches the guided tasks, `() => import('./tasks.ts')`. */
  readonly tasks: () => Promise<TasksFile<G, M>>;
  /** Called once for each island on the page, never at module level. */
  readonly makeModel: () => M;
  /** Shares the first screen with the controls. */
  readonly Picture: ComponentType<PictureProps<M>>;
  /**
   * Fetches what explains the answer, `() => import('./Below.tsx')`; nobody sees it, and nobody
   * pays for it, before the answer is out.
   */
  readonly below?: () => Promise<{ readonly Below: ComponentType<PictureProps<M>> }>;
  /** Fetches what moves the picture and no given, as a cursor in time does: `() => import('./Hand.tsx')`. */
  readonly hand?: () => Promise<{ readonly Hand: ComponentType<PictureProps<M>> }>;
  /** Controls that are neither slider, choice nor switch. */
  readonly drawn?: (model: M) => DrawnControls<G>;
}

/** Asking for the dozen files of a picture takes a tenth of the time that the frame of a press has: they can wait for the next. */
const afterFrame = (): Promise<void> =>
  new Promise((done) => {
    requestAnimationFrame(() => setTimeout(done));
  });

/** The island of a simulation, out of its parts. */
export function simulationView<G extends Givens, M extends SimModel<G>>(
  parts: SimulationParts<G, M>,
) {
  const { sim, tasks, makeModel, Picture, below, hand, drawn } = parts;
  const loadHand =
    hand &&
    (async () => {
      await afterFrame();
      return (await hand()).Hand;
    });
  const load =
    below &&
    (async () => {
      await afterFrame();
      return (await below()).Below;
    });
  function View() {
    const model = useMemo(makeModel, []);
    const own = useMemo(() => drawn?.(model), [model]);
    if (import.meta.env.SSR && onPaper.units !== null) {
      return <Ran {...{ sim, model, Picture }} drawn={own} units={onPaper.units} />;
    }
    return (
      <SimShell
        sim={sim}
        tasks={tasks}
        model={model}
        drawn={own}
        picture={(context) => <Picture model={model} {...context} />}
        hand={loadHand && ((context) => <Later load={loadHand} props={{ model, ...context }} />)}
        below={load && ((context) => <Later load={load} props={{ model, ...context }} />)}
      />
    );
  }
  // For whoever has to name a state of it.
  return Object.assign(View, { sim });
}
