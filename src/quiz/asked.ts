/**
 * A question as it is put to a person: engine numbers filled in, both unit systems written out. Plain data, so that it
 * can be computed at build time and sent to the page as a file; nothing here knows zod or the engine.
 */
import type { QuantityName } from '../quantity/by-name.ts';
import type { PrintedBoth } from '../quantity/print-both.ts';
import type { UnitSystem } from '../quantity/unit-system.ts';

/** An amount; only the page's own list has it before rounding, the questions that travel do without. */
export type TwoUnits = Pick<PrintedBoth, 'si' | 'us'> & Partial<PrintedBoth>;
/** Text of a question in pieces: what stands as it is, and amounts in both systems. Plain data, unlike `UnitText`. */
export type Passage = readonly (string | TwoUnits)[];

export interface AskedOption {
  readonly id: string;
  readonly words: Passage;
  readonly correct: boolean;
  readonly why: Passage;
}

interface AskedCommon {
  readonly id: string;
  readonly objectives: readonly string[];
  readonly concept: string;
  readonly lookAlikes: readonly string[];
  readonly level: 'recall' | 'apply' | 'diagnose';
  readonly unseen: boolean;
  readonly stem: Passage;
  readonly source: string;
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

export type Asked = AskedChoice | AskedNumber;
/** A question in the first of its variants, with the rest of them where it varies. */
export type Varied = Asked & { readonly others?: readonly Asked[] };

/** A passage as one reader sees it. */
export function passageText(passage: Passage, system: UnitSystem): string {
  return passage.map((piece) => (typeof piece === 'string' ? piece : piece[system])).join('');
}
