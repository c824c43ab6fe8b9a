import type { Signal } from '@preact/signals';
import type { ComponentChildren } from 'preact';
import type { ChoiceOption } from '../ui/Choice.tsx';
import type { Quantity } from '../quantity/quantity.ts';
import type { UnitSystem, UnitText } from '../quantity/unit-system.ts';
import type { Stage } from './stages.ts';

/** The values a person may set. Numbers are metric; choices are strings; switches are booleans. */
export type Givens = Record<string, number | string | boolean>;

/**
 * What the shell needs of a widget's model: the givens as signals, and two ways to set them.
 * Everything else the model has (its computed results) only the widget's own functions read.
 */
export interface SimModel<G extends Givens> {
  readonly givens: { readonly [K in keyof G]: Signal<G[K]> };
  reset(): void;
  apply(partial: Partial<G>): void;
  /**
   * Where the run asks much of the engine: solves ahead, while the reader chooses an answer. A solver that has run once
   * is several times as quick.
   */
  warm?(): void;
}

interface ControlBase<G> {
  readonly key: keyof G & string;
  readonly label: UnitText;
}
export interface NumberSpec<G> extends ControlBase<G> {
  readonly kind: 'number';
  readonly quantity: Quantity;
  readonly min: number;
  readonly max: number;
  readonly step: number;
  /** Words beside the number, as in "two hairs". */
  readonly words?: (value: number, system: UnitSystem) => string;
}
export interface ChoiceSpec<G> extends ControlBase<G> {
  readonly kind: 'choice';
  readonly options: readonly ChoiceOption[];
  readonly as?: 'radio' | 'select';
}
export interface FlagSpec<G> extends ControlBase<G> {
  readonly kind: 'flag';
  readonly on: string;
  readonly off: string;
}
export type ControlSpec<G> = NumberSpec<G> | ChoiceSpec<G> | FlagSpec<G>;

/**
 * Controls that the widget draws itself, by key, where no slider, choice or switch fits (a pair of
 * numbers that is only right together). They stay declared, so that links carry them.
 */
export type DrawnControls<G> = {
  readonly [K in keyof G & string]?: (id: string) => ComponentChildren;
};

export interface PredictOption {
  readonly id: string;
  readonly words: UnitText;
  /** Why somebody would say this, and what the model says to it. Every option has its own. */
  readonly why: UnitText;
}

export interface PredictSpec<G extends Givens, M extends SimModel<G>> {
  readonly question: UnitText;
  readonly options: readonly PredictOption[];
  /** The state the run starts from and the state it goes to; numbers are swept, the rest is set at once. */
  readonly start: Partial<G>;
  readonly end: Partial<G>;
  /** What the button says: "Run it hot". */
  readonly runLabel: string;
  /** How long the run takes [ms], where a second and a half is too quick to follow. */
  readonly runMs?: number;
  /** Reads the model after the run: which option came true, and the sentence with its numbers. */
  readonly outcome: (model: M) => { readonly option: string; readonly words: UnitText };
}

/** How near the state is to what a task asks for, and what it has come to, in a sentence of its own. */
export interface Verdict {
  readonly is: 'too-high' | 'too-low' | 'too-early' | 'too-late' | 'nearly' | 'not-that' | 'done';
  readonly reached: UnitText;
}

export interface TaskSpec<G extends Givens, M extends SimModel<G>> {
  readonly id: string;
  readonly words: UnitText;
  /** The state it starts from; `done` must be false there. */
  readonly start: Partial<G>;
  /** Keys of the controls that are live. The first task has three at most. */
  readonly controls: readonly (keyof G & string)[];
  /** Judged from the model's state, never from what was pressed. */
  readonly done: (model: M) => boolean;
  /**
   * What a hand is told that has come to rest short of it or past it. Null where there is nothing
   * to say. Write it with `judged`, which makes `done` of it as well.
   */
  readonly verdict?: (model: M) => Verdict | null;
  readonly hint: UnitText;
  /** What was learnt by it, shown once done. */
  readonly after: UnitText;
}

export interface SimSpec<G extends Givens, M extends SimModel<G>> {
  /** Unique on the page and stable for ever: links carry it. Letters, digits, "-" and "_". */
  readonly id: string;
  readonly title: string;
  /** Raise when a given changes its meaning; older links then open with the usual values. */
  readonly linkVersion: number;
  /** How many of your own controls stand open; three where nothing is said. */
  readonly open?: number;
  /** In the order of your own controls: the first ones stand open, the rest behind "More controls". */
  readonly controls: readonly ControlSpec<G>[];
  readonly predict: PredictSpec<G, M>;
  /** On the state as it stands; shown under the picture and spoken. What a task asks for is not said while it is on. */
  readonly says: (model: M, system: UnitSystem, inTask?: boolean) => string;
}

/** The guided tasks, a file of their own: nobody sees them before the run, and nobody pays for them. */
export interface TasksFile<G extends Givens, M extends SimModel<G>> {
  readonly tasks: readonly TaskSpec<G, M>[];
}

/** What the widget's picture is told besides the model. */
export interface PictureContext {
  readonly stage: Stage;
  /** False until the run has ended (or was skipped): then the picture must not show the answer. */
  readonly revealed: boolean;
  /** Whether a given may be moved now, so that the picture may be a handle for it. */
  readonly live: (key: string) => boolean;
}
