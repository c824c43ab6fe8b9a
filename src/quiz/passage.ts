import type { PrintedBoth } from '../quantity/print-both.ts';

/** An amount; only the page's own list has it before rounding, the questions that travel do without. */
export type TwoUnits = Pick<PrintedBoth, 'si' | 'us'> & Partial<PrintedBoth>;
/** Text of a question in pieces: what stands as it is, and amounts in both systems. Plain data, unlike `UnitText`. */
export type Passage = readonly (string | TwoUnits)[];
