/**
 * A question as it is put to a person: engine numbers filled in, both unit systems written out. Plain data, so that it
 * can be computed at build time and sent to the page as a file; nothing here knows zod or the engine.
 */
import type { QuantityName } from '../quantity/by-name.ts';
import type { Passage } from './passage.ts';
import type { UnitSystem } from '../quantity/unit-system.ts';
import type { Arrives, Priced } from './case-minutes.ts';
import type { ChartPicture } from './chart-picture.ts';

export type { Passage, TwoUnits } from './passage.ts';

export interface AskedOption {
  readonly id: string;
  readonly words: Passage;
  readonly correct: boolean;
  readonly why: Passage;
}

export interface AskedCommon {
  readonly id: string;
  readonly objectives: readonly string[];
  readonly concept: string;
  readonly lookAlikes: readonly string[];
  readonly level: 'recall' | 'apply' | 'diagnose';
  readonly unseen: boolean;
  readonly stem: Passage;
  readonly chart?: ChartPicture | undefined;
  readonly source: string;
  /** Address of a simulation at the state that it is about. */
  readonly tryIt?: string | undefined;
  /** Which of its variants this is, where the question varies. */
  readonly variant?: string | undefined;
}

export interface AskedChoice extends AskedCommon {
  readonly kind: 'single' | 'several';
  readonly options: readonly AskedOption[];
  /** Options are amounts: they stay in order of size instead of being shuffled. */
  readonly ordered: boolean;
}

export interface AskedNumber extends AskedCommon {
  readonly kind: 'number';
  readonly quantity: QuantityName;
  /** In the SI display unit of the quantity. */
  readonly value: number;
  readonly within: number;
  readonly valueWords: Passage;
  readonly why: Passage;
  readonly distractors: readonly {
    readonly rule: string;
    readonly value: number;
    readonly valueWords: Passage;
    /** The mistake in words: "took the hole for a gap". */
    readonly mistake: string;
    readonly why: Passage;
  }[];
}

export interface AskedStep {
  readonly id: string;
  readonly words: Passage;
  readonly why: Passage;
}

/** Steps to put in order. */
export interface AskedOrder extends AskedCommon {
  readonly kind: 'order';
  /** As shown. Right is every order in which no rank comes after a higher one; equal ranks may swap. */
  readonly steps: readonly (AskedStep & { readonly rank: number })[];
}

/** Lines on the left, each to find its own on the right. */
export interface AskedMatch extends AskedCommon {
  readonly kind: 'match';
  readonly pairs: readonly AskedStep[];
  /** As shown; a partner has the id of its pair, and one may go with nothing. */
  readonly partners: readonly { readonly id: string; readonly words: Passage }[];
  /** Why the one that goes with nothing does so, if there is one. */
  readonly extraWhy?: Passage | undefined;
}

/** A job in steps, of which one is wrong, or one is missing. */
export interface AskedSpot extends AskedCommon {
  readonly kind: 'spot';
  readonly steps: readonly AskedStep[];
  /** Steps that are right to point at; where one is missing, those above the gap, or `start`. */
  readonly answers: readonly string[];
  /** The step that is missing, if one is. */
  readonly missing?: { readonly words: Passage; readonly why: Passage } | undefined;
}
/** Above the first step, among the places where one may be missing. */
export const START = 'start';
/** The partner that goes with nothing. */
export const EXTRA = 'extra';

export interface AskedReading extends Priced {
  /** What a shop calls it, and what it reads on this car. */
  readonly words: Passage;
  readonly reads: Passage;
  /** What it told. */
  readonly why: Passage;
}

/** A car with one hidden fault: one pays for readings in minutes, then names it. */
export interface AskedCase extends AskedCommon {
  readonly kind: 'case';
  readonly arrives: Arrives;
  readonly readings: readonly AskedReading[];
  readonly options: readonly AskedOption[];
  /** The readings that decide for the fewest minutes, in the order of taking them. */
  readonly cheapest: readonly string[];
}

/** Of a case: what each reading costs and shows, in the order they were written, and the cheapest that decide. */
export interface CaseMade {
  readonly readings: readonly Omit<AskedReading, 'why'>[];
  readonly cheapest: readonly string[];
}

/** Those in which one arranges, pairs, points or measures. */
export type AskedForm = AskedOrder | AskedMatch | AskedSpot | AskedCase;
export type Asked = AskedChoice | AskedNumber | AskedForm;
/** A question in the first of its variants, with the rest of them where it varies. */
export type Varied = Asked & { readonly others?: readonly Asked[] };

/** A passage as one reader sees it. */
export function passageText(passage: Passage, system: UnitSystem): string {
  return passage.map((piece) => (typeof piece === 'string' ? piece : piece[system])).join('');
}
