/**
 * A question as it is put to a person: engine numbers filled in, both unit systems written out. Plain data, so that it
 * can be computed at build time and sent to the page as a file; nothing here knows zod or the engine.
 */
import type { QuantityName } from '../quantity/by-name.ts';
import type { Passage } from './passage.ts';
import type { UnitSystem } from '../quantity/unit-system.ts';
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

/** Those in which one arranges, pairs or points. */
export type AskedForm = AskedOrder | AskedMatch | AskedSpot;
export type Asked = AskedChoice | AskedNumber | AskedForm;

/** A passage as one reader sees it. */
export function passageText(passage: Passage, system: UnitSystem): string {
  return passage.map((piece) => (typeof piece === 'string' ? piece : piece[system])).join('');
}
