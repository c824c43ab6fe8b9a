/**
 * A question as it stands on paper and in the key. The kinds of question are told apart here and nowhere else: a sheet
 * prints whatever is put to it.
 */
import { formatNumber } from '../../quantity/print.ts';
import type { Quantity } from '../../quantity/quantity.ts';
import { quantityOf } from '../../quantity/by-name.ts';
import type { Asked, AskedChoice, AskedNumber, Passage, TwoUnits } from '../asked.ts';

export interface Lettered {
  readonly letter: string;
  readonly words: Passage;
}
export interface Reason {
  /** Missing where nothing is lettered. */
  readonly letter?: string;
  readonly words: Passage;
  readonly correct: boolean;
  /** What somebody did who wrote this amount: "forget the spring". */
  readonly mistake?: string;
  readonly why: Passage;
}
export type Right =
  | { readonly kind: 'letters'; readonly letters: readonly string[] }
  | {
      readonly kind: 'amount';
      readonly words: Passage;
      /** Whatever lies from here to there counts; without its unit. */
      readonly least: TwoUnits;
      readonly most: TwoUnits;
    };

export interface Put {
  readonly id: string;
  readonly stem: Passage;
  /** What is to be done, by the name of its sentence. */
  readonly asks: 'one' | 'several' | 'amount';
  readonly options: readonly Lettered[];
  /** The unit after a line to write on. */
  readonly blank?: TwoUnits;
  readonly right: Right;
  readonly reasons: readonly Reason[];
}

/** Puts the options of one question into the order of one sheet. */
export type Mix = <T>(items: readonly T[]) => readonly T[];

export function putOnPaper(asked: Asked, mix: Mix): Put {
  switch (asked.kind) {
    case 'single':
    case 'several':
      return putChoice(asked, mix);
    case 'number':
      return putAmount(asked);
  }
}

const letterAt = (place: number): string => String.fromCharCode(65 + place);

function putChoice({ id, stem, kind, options, ordered }: AskedChoice, mix: Mix): Put {
  const reasons = (ordered ? options : mix(options)).map(({ words, correct, why }, place) => ({
    letter: letterAt(place),
    ...{ words, correct, why },
  }));
  return {
    id,
    stem,
    asks: kind === 'single' ? 'one' : 'several',
    options: reasons.map(({ letter, words }) => ({ letter, words })),
    right: {
      kind: 'letters',
      letters: reasons.flatMap(({ letter, correct }) => (correct ? letter : [])),
    },
    reasons,
  };
}

function putAmount(asked: AskedNumber): Put {
  const { id, stem, quantity, value, within, valueWords, why, distractors } = asked;
  const measured = quantityOf(quantity);
  const { si, us } = measured;
  return {
    id,
    stem,
    asks: 'amount',
    options: [],
    blank: { si: si.symbol, us: us.symbol },
    right: {
      kind: 'amount',
      words: valueWords,
      least: bare(value - within, measured),
      most: bare(value + within, measured),
    },
    reasons: [
      { words: valueWords, correct: true, why },
      ...distractors.map((one) => ({
        words: one.valueWords,
        correct: false,
        mistake: one.mistake,
        why: one.why,
      })),
    ],
  };
}

const bare = (metric: number, quantity: Quantity): TwoUnits => ({
  si: formatNumber(metric, quantity, 'si'),
  us: formatNumber(metric, quantity, 'us'),
});
