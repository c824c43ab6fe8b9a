/** A meeting as the stage shows it: numbers filled in, both unit systems written out. Plain data that travels. */
import type { ChartPicture } from '../quiz/chart-picture.ts';
import type { Passage } from '../quiz/passage.ts';

interface Common {
  readonly heading: string;
  readonly lines: readonly Passage[];
  readonly notes: Passage;
}

/** Lines, and perhaps a picture: a chart as data, or a drawing that stands in the page. */
export interface ShownScene extends Common {
  readonly kind: 'say' | 'picture';
  readonly chart?: ChartPicture | undefined;
  readonly drawing?: string | undefined;
}

export interface SimulationScene extends Common {
  readonly kind: 'simulation';
  readonly state: string;
  readonly run?: string | undefined;
}

export interface VoteOption {
  readonly words: Passage;
  readonly correct: boolean;
  /** Why it is right, or why not; nothing where a meeting of one's own says nothing. */
  readonly why: Passage;
}
export interface VoteScene extends Common {
  readonly kind: 'vote';
  readonly stem: Passage;
  readonly chart?: ChartPicture | undefined;
  readonly options: readonly VoteOption[];
  /** Of a meeting of one's own: the lesson that a question of the course was taken from. */
  readonly lesson?: string;
}

export interface CaseScene extends Common {
  readonly kind: 'case';
  /** What stands behind the ? of the page of cases; a car of the week is drawn when it is shown. */
  readonly car: { readonly search: string } | { readonly week: 1 | 2 | 3 };
  /** In the customer's words, where they are known beforehand. */
  readonly complaint?: string | undefined;
}

export type Scene = ShownScene | SimulationScene | VoteScene | CaseScene;

export interface Meeting {
  readonly id: string;
  readonly title: string;
  readonly minutes: number;
  /** It runs out of no time, so the clock is there for whoever asks for it. */
  readonly clockHidden?: boolean;
  readonly scenes: readonly Scene[];
}
