/** What is kept of an answer. A change of its form is a step in answer-steps.ts. */

export interface RetrievalAnswer {
  readonly kind: 'retrieval';
  readonly lesson: string;
  /** The question, by its id, which stays the same for ever. */
  readonly item: string;
  /** The seed of the round: order of questions and options follow from it. */
  readonly seed: number;
  /** Which of its variants was asked, where the question varies; left out in answers from before there were any. */
  readonly variant?: string | undefined;
  readonly given:
    | { readonly kind: 'chosen'; readonly ids: readonly string[] }
    | { readonly kind: 'typed'; readonly text: string; readonly system: 'si' | 'us' };
  readonly result: 'right' | 'partial' | 'wrong';
  /** How sure before it was known: 1 guessing, 2 fairly sure, 3 certain. */
  readonly certainty: 1 | 2 | 3;
}

export interface PredictionAnswer {
  readonly kind: 'prediction';
  /** The simulation, by its id, which links carry as well. */
  readonly sim: string;
  readonly option: string;
  readonly confidence: 'guessing' | 'fairly-sure' | 'certain';
  readonly right: boolean;
}

export type Answer = RetrievalAnswer | PredictionAnswer;
