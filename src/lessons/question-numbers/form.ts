/** The form of an entry in the registry of question numbers. Values are in the SI unit that src/quantity/quantities.ts prints. */
import type { QuantityName } from '../../quantity/by-name.ts';

export interface WrongRule {
  /** Completes "This is the number you get if you ...". */
  readonly mistake: string;
  readonly value: () => number;
}

export interface QuestionNumber {
  readonly quantity: QuantityName;
  /** What it is, for whoever reads the registry. */
  readonly what: string;
  readonly value: () => number;
  readonly wrong?: Readonly<Record<string, WrongRule>>;
}

export type QuestionNumbers = Readonly<Record<string, QuestionNumber>>;

/** A number that a text quotes and nobody is asked for. */
export const quoted = (
  quantity: QuantityName,
  what: string,
  value: () => number,
): QuestionNumber => ({
  quantity,
  what,
  value,
});
