import { useEffect, useRef } from 'preact/hooks';
import { type UnitSystem, textFor } from '../../quantity/unit-system.ts';
import type { ControlSpec, DrawnControls, Givens, SimModel, TaskSpec } from '../sim-spec.ts';
import type { StageEvent, StageState } from '../stages.ts';
import { useArrival } from '../use-arrival.ts';
import { Controls } from './Controls.tsx';
import { useSettled } from './use-settled.ts';
import { words } from './words.en.ts';

interface TaskProps<G extends Givens, M extends SimModel<G>> {
  readonly sim: string;
  readonly tasks: readonly TaskSpec<G, M>[];
  readonly controls: readonly ControlSpec<G>[];
  readonly model: M;
  readonly state: StageState;
  readonly system: UnitSystem;
  /** False where a reload or Back led here. */
  readonly byHand: boolean;
  readonly send: (event: StageEvent) => void;
  readonly drawn?: DrawnControls<G> | undefined;
}

/** One guided task: its words, its few live controls, a hint for the asking. The model says when it is done. */
export function Task<G extends Givens, M extends SimModel<G>>(props: TaskProps<G, M>) {
  const { sim, tasks, controls, model, state, system, byHand, send, drawn } = props;
  const task = tasks[state.task];
  const head = useArrival<HTMLHeadingElement>(byHand, state.task);
  // Reading the givens here makes this redraw, and be judged, whenever one of them moves.
  const givens = controls.map(({ key }) => String(model.givens[key].value)).join('|');
  const begun = useRef({ task: state.task, givens });
  if (begun.current.task !== state.task) begun.current = { task: state.task, givens };
  const moved = begun.current.givens !== givens;
  const met = task?.done(model) ?? false;
  const at = `${state.task}|${givens}`;
  const settled = useSettled(met, at);
  // Where a hand has come to rest and it is not the answer: then it is told how far off it is.
  const missed = useSettled(moved && !met, at);
  useEffect(() => {
    if (settled) send({ type: 'task-done' });
  }, [settled]);
  if (!task) return null;

  const done = state.done[state.task] === true;
  const last = state.task + 1 === tasks.length;
  const verdict = missed && !done ? (task.verdict?.(model) ?? null) : null;
  return (
    <div class="sim-stage">
      <h4 class="stage-head" ref={head} tabIndex={-1} aria-describedby={`${sim}-task`}>
        {words.task({ number: state.task + 1, of: tasks.length })}
      </h4>
      <p class="task-words" id={`${sim}-task`}>
        {textFor(task.words, system)}
      </p>
      <Controls
        sim={sim}
        model={model}
        controls={controls.filter(({ key }) => task.controls.includes(key))}
        drawn={drawn}
      />
      <div role="status" class="task-result">
        {done && (
          <p>
            <strong>{words.done}</strong> {textFor(task.after, system)}
          </p>
        )}
        {verdict && verdict.is !== 'done' && (
          <p>
            <strong>{words.verdicts[verdict.is]}</strong> {textFor(verdict.reached, system)}
          </p>
        )}
        {state.hint && !done && <p>{textFor(task.hint, system)}</p>}
      </div>
      <div class="sim-go">
        {done ? (
          <button type="button" class="act" onClick={() => send({ type: 'next-task' })}>
            {last ? words.toOwnControls : words.nextTask}
          </button>
        ) : (
          !state.hint && (
            <button type="button" class="quiet" onClick={() => send({ type: 'hint' })}>
              {words.hint}
            </button>
          )
        )}
        <button type="button" class="quiet" onClick={() => model.apply(task.start)}>
          {words.startOver}
        </button>
      </div>
    </div>
  );
}
