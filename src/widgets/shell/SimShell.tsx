import type { ComponentChildren } from 'preact';
import { useLayoutEffect, useMemo, useReducer, useRef, useState } from 'preact/hooks';
import { LiveText } from '../../ui/LiveText.tsx';
import { parseLink } from '../../ui/link-state.ts';
import type { UnitSystem } from '../../ui/quantity.ts';
import { useReady, useUnits } from '../../ui/use-units.ts';
import type { Words } from '../../ui/words.ts';
import { Compare } from './Compare.tsx';
import { FreePlay } from './FreePlay.tsx';
import { currentValues, linkSchema } from './link-schema.ts';
import { Predict } from './Predict.tsx';
import type {
  Answer,
  DrawnControls,
  Givens,
  PictureContext,
  SimModel,
  SimSpec,
} from './sim-spec.ts';
import { advance, startState, type StageEvent } from './stages.ts';
import { sweep } from './sweep.ts';
import { Task } from './Task.tsx';

export interface SimShellProps<G extends Givens, M extends SimModel<G>> {
  /** The simulation as data: question, tasks, controls. A constant; `simProblems` checks it in the widget's test. */
  readonly sim: SimSpec<G, M>;
  /** One model per island: make it with `useMemo(makeModel, [])`, never at module level. */
  readonly model: M;
  /** The picture that shares the first screen with the controls. Reads the model's signals freely. */
  readonly picture: (context: PictureContext) => ComponentChildren;
  /** Further pictures, under picture and controls; shown once the answer is out. */
  readonly below?: (context: PictureContext) => ComponentChildren;
  /** Controls that are neither slider, choice nor switch. */
  readonly drawn?: DrawnControls<G>;
  /** Called once per run with what was predicted; the widget's view stores it. */
  readonly onAnswer?: (answer: Answer) => void;
}

/**
 * The form every simulation takes: predict, run, compare; guided tasks; free play. A foreman can
 * skip to free play at once, and a link that carries a state lands there.
 */
export function SimShell<G extends Givens, M extends SimModel<G>>(props: SimShellProps<G, M>) {
  const { sim, model, picture, below, drawn, onAnswer } = props;
  const { predict, tasks } = sim;
  const system = useUnits();
  const ready = useReady();
  const [state, dispatch] = useReducer(advance, tasks.length, startState);
  const [search, setSearch] = useState('');
  const [outcomeWords, setOutcomeWords] = useState<Words>('');
  const stop = useRef<() => void>(() => undefined);
  // Taken before anything is applied: these are what a link falls back to.
  const defaults = useMemo(() => currentValues(sim, model), [sim, model]);
  const schema = useMemo(() => linkSchema(sim, defaults, system), [sim, defaults, system]);
  // Told again when the units change, in the new ones.
  const notes = useMemo(() => parseLink(schema, search).notes, [schema, search]);
  // The run's start is the first picture, on the server too.
  useMemo(() => model.apply(predict.start), [model]);

  useLayoutEffect(() => {
    const link = parseLink(schema, location.search);
    if (link.present) {
      model.apply(link.values as Partial<G>);
      setSearch(location.search);
      dispatch({ type: 'to-free' });
    }
    return () => stop.current();
  }, []);

  const send = (event: StageEvent) => {
    const next = advance(state, event);
    dispatch(event);
    const task = tasks[next.task];
    const taskBegins =
      next.stage === 'tasks' && (state.stage !== 'tasks' || next.task !== state.task);
    if (taskBegins && task) model.apply(task.start);
    if (next.stage === 'predict' && state.stage !== 'predict') {
      model.reset();
      model.apply(predict.start);
    }
    // The notes belong to the arrival by link; whoever has been elsewhere since needs them no more.
    if (next.stage !== 'free') setSearch('');
  };

  const run = () => {
    const { prediction, confidence } = state;
    dispatch({ type: 'run' });
    model.apply(predict.start);
    stop.current = sweep({
      from: predict.start,
      to: predict.end,
      apply: (givens) => model.apply(givens),
      onEnd: () => {
        const { option, words } = predict.outcome(model);
        // A function would be taken for a state updater.
        setOutcomeWords(() => words);
        dispatch({ type: 'ran', outcome: option });
        if (prediction !== null && confidence !== null) {
          onAnswer?.({ sim: sim.id, prediction, confidence, right: prediction === option });
        }
      },
    });
  };

  const { stage } = state;
  const revealed = stage === 'tasks' || stage === 'free' || stage === 'compare';
  const context: PictureContext = { stage, revealed };
  return (
    <section class="sim" id={sim.id} aria-labelledby={`${sim.id}-title`} data-ready={ready}>
      <div class="sim-head">
        <h3 id={`${sim.id}-title`}>{sim.title}</h3>
        <StageNav sim={sim.id} state={state} send={send} />
      </div>
      <div class="sim-bench">
        <div class="sim-picture">
          <Drawn draw={() => picture(context)} />
          {(revealed || stage === 'running') && <Says sim={sim} model={model} system={system} />}
        </div>
        <div class="sim-controls">
          {(stage === 'predict' || stage === 'running') && (
            <Predict
              {...predict}
              sim={sim.id}
              state={state}
              system={system}
              send={send}
              onRun={run}
            />
          )}
          {stage === 'compare' && (
            <Compare
              options={predict.options}
              outcomeWords={outcomeWords}
              state={state}
              system={system}
              send={send}
            />
          )}
          {stage === 'tasks' && (
            <Task
              sim={sim.id}
              tasks={tasks}
              controls={sim.controls}
              model={model}
              state={state}
              system={system}
              send={send}
              drawn={drawn}
            />
          )}
          {stage === 'free' && (
            <FreePlay sim={sim} model={model} schema={schema} notes={notes} drawn={drawn} />
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
}

function Says<G extends Givens, M extends SimModel<G>>({ sim, model, system }: SaysProps<G, M>) {
  return <LiveText visible text={sim.says(model, system)} />;
}

interface StageNavProps {
  readonly sim: string;
  readonly state: ReturnType<typeof startState>;
  readonly send: (event: StageEvent) => void;
}

/** Where you are, and the ways that are open from here. */
function StageNav({ state, send }: StageNavProps) {
  const { stage, outcome } = state;
  const running = stage === 'running';
  const early = stage === 'predict' || running;
  return (
    <div class="sim-nav">
      {!early && (
        <button type="button" class="quiet" onClick={() => send({ type: 'predict-again' })}>
          {outcome === null ? 'Predict first' : 'Predict again'}
        </button>
      )}
      {outcome !== null && stage !== 'tasks' && (
        <button
          type="button"
          class="quiet"
          disabled={running}
          onClick={() => send({ type: 'to-tasks' })}
        >
          Tasks
        </button>
      )}
      {stage !== 'free' && (
        <button
          type="button"
          class="quiet"
          disabled={running}
          onClick={() => send({ type: 'to-free' })}
        >
          Skip to free play
        </button>
      )}
    </div>
  );
}
