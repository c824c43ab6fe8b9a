/**
 * A question as it stands on paper and in the key. The kinds of question are told apart here and nowhere else: a sheet
 * prints whatever is put to it. Those in which one arranges, pairs, points or measures are in put-forms.ts.
 */
import { formatNumber } from '../../quantity/print.ts';
import type { Quantity } from '../../quantity/quantity.ts';
import { quantityOf } from '../../quantity/by-name.ts';
import type { Asked, AskedChoice, AskedNumber, TwoUnits } from '../asked.ts';
import { numberOf, type Mix, type Put } from './put-parts.ts';
import { putCase, putMatch, putOrder, putSpot } from './put-forms.ts';

export function putOnPaper(asked: Asked, mix: Mix): Put {
  switch (asked.kind) {
    case 'single':
    case 'several':
      return putChoice(asked, mix);
    case 'number':
      return putAmount(asked);
    case 'order':
      return putOrder(asked, mix);
    case 'match':
      return putMatch(asked, mix);
    case 'spot':
      return putSpot(asked);
    case 'case':
      return putCase(asked, mix);
  }
}

function putChoice({ id, stem, chart, kind, options, ordered }: AskedChoice, mix: Mix): Put {
  const reasons = (ordered ? options : mix(options)).map(({ words, correct, why }, place) => ({
    letter: numberOf(place),
    ...{ words, correct, why },
  }));
  return {
    ...{ id, stem, chart },
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
  const { id, stem, chart, quantity, value, within, valueWords, why, distractors } = asked;
  const measured = quantityOf(quantity);
  const { si, us } = measured;
  return {
    ...{ id, stem, chart },
    asks: 'amount',
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
