import type { ComponentChildren } from 'preact';
import { useLayoutEffect, useMemo, useReducer, useRef, useState } from 'preact/hooks';
import { predictedBefore } from '../storage/predicted-before.ts';
import { LiveText } from '../ui/LiveText.tsx';
import type { UnitSystem, UnitText } from '../quantity/unit-system.ts';
import { useUnits } from '../ui/use-units.ts';
import { currentValues } from './current-values.ts';
import { Waiting } from './Later.tsx';
import { Predict } from './Predict.tsx';
import type {
  DrawnControls,
  Givens,
  PictureContext,
  SimModel,
  SimSpec,
  TasksFile,
} from './sim-spec.ts';
import { advance, startState, type Stage, type StageEvent } from './stages.ts';
import { sweep } from './sweep.ts';
import { useHeldHeight } from './use-held-height.ts';
import { useLaterStages } from './use-later-stages.ts';
import { words } from './words.en.ts';

export interface SimShellProps<G extends Givens, M extends SimModel<G>> {
  /** The simulation as data: question, tasks, controls. A constant; `simProblems` checks it in the widget's test. */
  readonly sim: SimSpec<G, M>;
  /** Fetches the guided tasks, `() => import('./tasks.ts')`. */
  readonly tasks: () => Promise<TasksFile<G, M>>;
  /** One model per island: make it with `useMemo(makeModel, [])`, never at module level. */
  readonly model: M;
  /** The picture that shares the first screen with the controls. Reads the model's signals freely. */
  readonly picture: (context: PictureContext) => ComponentChildren;
  /** Further pictures, under picture and controls; shown once the answer is out. */
  readonly below?: ((context: PictureContext) => ComponentChildren) | undefined;
  /** Moves the picture itself and no given, as a cursor in time does; one row, which stays in sight with it. */
  readonly hand?: ((context: PictureContext) => ComponentChildren) | undefined;
  /** Controls that are neither slider, choice nor switch. */
  readonly drawn?: DrawnControls<G> | undefined;
}

/**
 * The form every simulation takes: predict, run, compare; guided tasks; your own controls. A foreman
 * can skip to those at once, and a link that carries a state lands there.
 */
export function SimShell<G extends Givens, M extends SimModel<G>>(props: SimShellProps<G, M>) {
  const { sim, model, picture, below, hand, drawn } = props;
  const { predict } = sim;
  const system = useUnits();
  const [state, dispatch] = useReducer(advance, undefined, startState);
  const [search, setSearch] = useState('');
  const [outcomeWords, setOutcomeWords] = useState<UnitText>('');
  const stop = useRef<() => void>(() => undefined);
  // Whether somebody has gone from stage to stage; the focus then follows.
  const byHand = useRef(false);
  // Taken before anything is applied: these are what a link falls back to.
  const defaults = useMemo(() => currentValues(sim, model), [sim, model]);
  const later = useLaterStages(props.tasks);
  const bench = useRef<HTMLDivElement>(null);
  useHeldHeight(bench);
  // The run's start is the first picture, on the server too.
  useMemo(() => model.apply(predict.start), [model]);

  useLayoutEffect(() => {
    const { search: asked } = location;
    const left = history.state as { readonly simulations?: Record<string, unknown> } | null;
    if (asked !== '' || left?.simulations?.[sim.id] || predictedBefore(sim.id)) {
      void later.load().then((stages) => {
        // Whoever was quicker than the network has begun by hand.
        if (!stages || byHand.current) return;
        const event = stages.arrive(sim, model, defaults, asked, stages.tasks.length);
        if (!event) return;
        if (event.type === 'to-own') setSearch(asked);
        else if (event.state.stage === 'compare') {
          setOutcomeWords(() => predict.outcome(model).words);
        }
        dispatch(event);
      });
    }
    return () => stop.current();
  }, []);

  const send = (event: StageEvent) => {
    const next = advance(state, event);
    byHand.current = true;
    // The pressed button goes with its stage: taking away what has the focus lays the half-changed page out.
    if (next.stage !== state.stage) (document.activeElement as HTMLElement | null)?.blur();
    if (event.type !== 'predict' && event.type !== 'rate') void later.load();
    dispatch(event);
    const task = later.stages?.tasks[next.task];
    const taskBegins =
      next.stage === 'tasks' && (state.stage !== 'tasks' || next.task !== state.task);
    if (taskBegins && task) model.apply(task.start);
    if (next.stage === 'predict' && state.stage !== 'predict') {
      model.reset();
      model.apply(predict.start);
    }
    // The run's start is one half of a comparison; who skips the run gets the state worth playing with.
    if (next.stage === 'own' && state.stage === 'predict') model.reset();
    // The notes belong to the arrival by link; whoever has been elsewhere since needs them no more.
    if (next.stage !== 'own') setSearch('');
  };

  const run = () => {
    byHand.current = true;
    void later.load();
    dispatch({ type: 'run' });
    model.apply(predict.start);
    stop.current = sweep({
      from: predict.start,
      to: predict.end,
      lasts: predict.runMs,
      apply: (givens) => model.apply(givens),
      onEnd: () => {
        const { option, words: told } = predict.outcome(model);
        // A function would be taken for a state updater.
        setOutcomeWords(() => told);
        dispatch({ type: 'ran', outcome: option });
      },
    });
  };

  const { stage } = state;
  const { stages } = later;
  const revealed = stage === 'tasks' || stage === 'own' || stage === 'compare';
  const live = (key: string): boolean =>
    stage === 'own' ||
    (stage === 'tasks' && stages?.tasks[state.task]?.controls.includes(key) === true);
  const context: PictureContext = { stage, revealed, live };
  return (
    <section
      class={revealed ? 'sim' : 'sim sim-asking'}
      id={sim.id}
      aria-labelledby={`${sim.id}-title`}
      // The first touch fetches what comes after the prediction, so that it is here by then.
      onFocusCapture={() => void later.load()}
      onPointerDown={() => void later.load()}
    >
      <div class="sim-head">
        <h3 id={`${sim.id}-title`}>{sim.title}</h3>
        <StageNav tasks={later.stages?.tasks.length} state={state} send={send} />
      </div>
      <div class="sim-bench" ref={bench}>
        {/* Stays at the top of the screen while the controls under it are scrolled. */}
        <div class="sim-picture">
          <Drawn draw={() => picture(context)} />
          <Says {...{ sim, model, system, stage }} />
          {hand && revealed && <Drawn draw={() => hand(context)} />}
        </div>
        <div class="sim-controls">
          {(stage === 'predict' || stage === 'running') && (
            <Predict
              {...predict}
              sim={sim.id}
              state={state}
              system={system}
              byHand={byHand.current}
              send={send}
              onRun={run}
            />
          )}
          {revealed && !stages && <Waiting what="controls" failed={later.failed} />}
          {stages && <stages.KeepPlace {...{ sim, model, defaults, state }} />}
          {stages && stage === 'compare' && (
            <stages.Compare
              sim={sim.id}
              byHand={byHand.current}
              options={predict.options}
              tasks={stages.tasks.length}
              outcomeWords={outcomeWords}
              state={state}
              system={system}
              send={send}
            />
          )}
          {stages && stage === 'tasks' && (
            <stages.Task
              sim={sim.id}
              byHand={byHand.current}
              tasks={stages.tasks}
              controls={sim.controls}
              model={model}
              state={state}
              system={system}
              send={send}
              drawn={drawn}
            />
          )}
          {stages && stage === 'own' && (
            <stages.OwnControls
              sim={sim}
              model={model}
              defaults={defaults}
              search={search}
              state={state}
              system={system}
              byHand={byHand.current}
              drawn={drawn}
            />
          )}
        </div>
      </div>
      {below && revealed && (
        <div class="sim-below">
          <Drawn draw={() => below(context)} />
        </div>
      )}
    </section>
  );
}

/** Signals read while drawing redraw this component alone, not the shell about it. */
function Drawn({ draw }: { readonly draw: () => ComponentChildren }) {
  return <>{draw()}</>;
}

interface SaysProps<G extends Givens, M extends SimModel<G>> {
  readonly sim: SimSpec<G, M>;
  readonly model: M;
  readonly system: UnitSystem;
  readonly stage: Stage;
}

function Says<G extends Givens, M extends SimModel<G>>(props: SaysProps<G, M>) {
  const { sim, model, system, stage } = props;
  // While a prediction is asked for, the region is there already: one that came with its words would not be read out.
  const silent = stage === 'predict';
  return (
    <LiveText visible={!silent} text={silent ? '' : sim.says(model, system, stage === 'tasks')} />
  );
}

interface StageNavProps {
  /** How many there are, once that is known. */
  readonly tasks: number | undefined;
  readonly state: ReturnType<typeof startState>;
  readonly send: (event: StageEvent) => void;
}

/** Where you are, and the ways that are open from here. */
function StageNav({ tasks, state, send }: StageNavProps) {
  const { stage, outcome } = state;
  const running = stage === 'running';
  const early = stage === 'predict' || running;
  return (
    <div class="sim-nav">
      {!early && (
        <button type="button" class="quiet" onClick={() => send({ type: 'predict-again' })}>
          {outcome === null ? words.predictFirst : words.predictAgain}
        </button>
      )}
      {outcome !== null && tasks !== undefined && stage !== 'tasks' && (
        <button
          type="button"
          class="quiet"
          disabled={running}
          onClick={() => send({ type: 'to-tasks', of: tasks })}
        >
          {words.tasks}
        </button>
      )}
      {stage !== 'own' && (
        <button
          type="button"
          class="quiet"
          disabled={running}
          onClick={() => send({ type: 'to-own' })}
        >
          {words.ownControls}
        </button>
      )}
    </div>
  );
}
