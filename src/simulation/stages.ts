/**
 * How a simulation teaches: predict, run, compare, then guided tasks, then your own controls. The whole
 * course of it is this one pure function, so that its promises can be tested without a screen:
 * no run without a prediction and a confidence, no prediction changed while it runs.
 */

import type { UnitSystem } from '../quantity/unit-system.ts';

export type Confidence = 'guessing' | 'fairly-sure' | 'certain';
export const CONFIDENCES: readonly Confidence[] = ['guessing', 'fairly-sure', 'certain'];

export type Stage = 'predict' | 'running' | 'compare' | 'tasks' | 'own';

export interface StageState {
  readonly stage: Stage;
  /** The option chosen, by id. */
  readonly prediction: string | null;
  readonly confidence: Confidence | null;
  /** The option the model's run came to, by id; set once a run has ended. */
  readonly outcome: string | null;
  readonly task: number;
  /** One for each task; empty until the tasks have been opened. */
  readonly done: readonly boolean[];
  readonly hint: boolean;
  /** What the run came to when it was run in another visit, in words. */
  readonly before?: Readonly<Record<UnitSystem, string>>;
}

export type StageEvent =
  | { readonly type: 'predict'; readonly option: string }
  | { readonly type: 'rate'; readonly confidence: Confidence }
  | { readonly type: 'run' }
  | { readonly type: 'ran'; readonly outcome: string }
  | { readonly type: 'to-tasks'; readonly of: number }
  | { readonly type: 'hint' }
  | { readonly type: 'task-done' }
  | { readonly type: 'next-task' }
  | { readonly type: 'to-own' }
  | { readonly type: 'predict-again' }
  | { readonly type: 'back-to'; readonly state: StageState };

export function startState(): StageState {
  return {
    stage: 'predict',
    prediction: null,
    confidence: null,
    outcome: null,
    task: 0,
    done: [],
    hint: false,
  };
}

/** What the run still waits for; null when it may go. */
export function whyNotYet({ prediction, confidence }: StageState): Missing | null {
  if (prediction === null) return confidence === null ? 'both' : 'prediction';
  return confidence === null ? 'confidence' : null;
}
export type Missing = 'both' | 'prediction' | 'confidence';

/** The state after an event. An event that has no place in a stage changes nothing. */
export function advance(state: StageState, event: StageEvent): StageState {
  const { stage } = state;
  switch (event.type) {
    case 'predict':
      return stage === 'predict' ? { ...state, prediction: event.option } : state;
    case 'rate':
      return stage === 'predict' ? { ...state, confidence: event.confidence } : state;
    case 'run':
      return stage === 'predict' && whyNotYet(state) === null
        ? { ...state, stage: 'running' }
        : state;
    case 'ran':
      return stage === 'running' ? { ...state, stage: 'compare', outcome: event.outcome } : state;
    case 'to-tasks': {
      // The tasks lean on what the run showed; before it only your own controls are open.
      if (state.outcome === null || stage === 'running') return state;
      const done = Array.from({ length: event.of }, (_, i) => state.done[i] ?? false);
      const open = done.indexOf(false);
      return { ...state, stage: 'tasks', done, task: open === -1 ? 0 : open, hint: false };
    }
    case 'hint':
      return stage === 'tasks' ? { ...state, hint: true } : state;
    case 'task-done':
      return stage === 'tasks' && state.done[state.task] === false
        ? { ...state, done: state.done.map((was, i) => was || i === state.task) }
        : state;
    case 'next-task':
      if (stage !== 'tasks' || state.done[state.task] !== true) return state;
      return state.task + 1 < state.done.length
        ? { ...state, task: state.task + 1, hint: false }
        : { ...state, stage: 'own', hint: false };
    case 'to-own':
      return stage === 'running' ? state : { ...state, stage: 'own', hint: false };
    case 'back-to':
      return event.state;
    case 'predict-again':
      return stage === 'running' ? state : { ...startState(), done: state.done, task: state.task };
  }
}
