/** What a question on paper is made of, whatever its kind. */
import type { Passage, TwoUnits } from '../asked.ts';
import type { ChartPicture } from '../chart-picture.ts';

/** What an option is answered by: no letter, since those name the lines of charts, the partners of pairs and the sheets. */
export const numberOf = (place: number): string => String(place + 1);

export interface Lettered {
  /** A number, or of a partner its letter. */
  readonly letter: string;
  readonly words: Passage;
}
export interface Reason {
  /** Missing where nothing is lettered. */
  readonly letter?: string;
  readonly words: Passage;
  readonly correct: boolean;
  /** What it is if it is neither the answer nor a wrong one. */
  readonly mark?: 'rightStep' | 'withNothing';
  /** What somebody did who wrote this amount: "forget the spring". */
  readonly mistake?: string;
  readonly why: Passage;
}
/** Where a step is missing: how many steps stand above. */
export type Gap = number;
export type Right =
  | { readonly kind: 'letters'; readonly letters: readonly string[] }
  | {
      readonly kind: 'amount';
      readonly words: Passage;
      /** Whatever lies from here to there counts; without its unit. */
      readonly least: TwoUnits;
      readonly most: TwoUnits;
    }
  | {
      readonly kind: 'order';
      /** What is written at each step, from top to bottom. */
      readonly numbers: readonly number[];
      /** Numbers that may stand for one another. */
      readonly swap: readonly (readonly number[])[];
    }
  | { readonly kind: 'gaps'; readonly gaps: readonly Gap[] };

export interface Put {
  readonly id: string;
  readonly stem: Passage;
  readonly chart?: ChartPicture | undefined;
  /** What is to be done, by the name of its sentence. */
  readonly asks: 'one' | 'several' | 'amount' | 'order' | 'match' | 'step' | 'gap' | 'fault';
  /** Lines, each with a short one before it to write on. */
  readonly lines?: readonly Passage[];
  /** Steps with a number each, to read. */
  readonly steps?: readonly Passage[];
  /** Boxes for the places before, between and after the steps. */
  readonly gaps?: readonly Gap[];
  readonly readings?: readonly {
    readonly words: Passage;
    readonly minutes: number;
    readonly reads: Passage;
  }[];
  /** To be ticked. */
  readonly options?: readonly Lettered[];
  /** With a letter each, to be written elsewhere. */
  readonly partners?: readonly Lettered[];
  /** The unit after a line to write on. */
  readonly blank?: TwoUnits;
  readonly right: Right;
  readonly reasons: readonly Reason[];
  /** Of a case: the readings that decide for the fewest minutes. */
  readonly cheapest?: {
    readonly minutes: number;
    readonly readings: readonly { readonly words: Passage; readonly why: Passage }[];
  };
}

/**
 * Puts the parts of one question into the order of one sheet.
 * @param isAnswer says of an order that it gives the answer away
 */
export type Mix = <T>(
  items: readonly T[],
  isAnswer?: (items: readonly T[]) => boolean,
) => readonly T[];
