/**
 * A question as it is put to a person: engine numbers filled in, both unit systems written out. Plain data, so that it
 * can be computed at build time and sent to the page as a file; nothing here knows zod or the engine.
 */
import type { Quantity } from './quantities.ts';

/** A piece of text that reads differently in the two unit systems. */
export interface TwoUnits {
  readonly si: string;
  readonly us: string;
}
export type Words = readonly (string | TwoUnits)[];

export interface AskedOption {
  readonly id: string;
  readonly words: Words;
  readonly correct: boolean;
  readonly why: Words;
}

interface AskedCommon {
  readonly id: string;
  readonly objectives: readonly string[];
  readonly concept: string;
  readonly lookAlikes: readonly string[];
  readonly level: 'recall' | 'apply' | 'diagnose';
  readonly unseen: boolean;
  readonly stem: Words;
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
  readonly quantity: Quantity;
  /** In the SI display unit of the quantity. */
  readonly value: number;
  readonly within: number;
  readonly valueWords: Words;
  readonly why: Words;
  readonly distractors: readonly {
    readonly rule: string;
    readonly value: number;
    readonly valueWords: Words;
    /** The mistake in words: "took the hole for a gap". */
    readonly mistake: string;
    readonly why: Words;
  }[];
}

export type Asked = AskedChoice | AskedNumber;

export function plain(words: Words, system: 'si' | 'us'): string {
  return words.map((w) => (typeof w === 'string' ? w : w[system])).join('');
}
