/** What goes into grading and what comes out of it. */
import type { UnitSystem } from '../quantity/unit-system.ts';
import type { Passage } from './passage.ts';
import type { Certainty } from './certainty.ts';

/**
 * What a person gave. Of the kinds without options too: `chosen` holds the steps in their order, `left:right` for each pair,
 * the step that was pointed at.
 */
export type Given =
  | { readonly kind: 'chosen'; readonly ids: readonly string[] }
  | { readonly kind: 'typed'; readonly text: string; readonly system: UnitSystem };

export interface Explained {
  readonly id: string;
  readonly words: Passage;
  readonly correct: boolean;
  /** What the person ticked, or the wrong rule their number came from. */
  readonly taken: boolean;
  readonly why: Passage;
  /** How it stands with this one, in words of its own, where fitting and taken do not say it. */
  readonly note?: Passage;
}

export interface Outcome {
  readonly right: boolean;
  readonly certainty: Certainty;
  readonly marks: number;
  /** One sentence, never the whole of the feedback. */
  readonly verdict: string;
  readonly explained: readonly Explained[];
}
