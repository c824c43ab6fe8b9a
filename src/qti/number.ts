/** A number that is typed, in the unit of the package. */
import type { Element } from 'xast';
import { x } from 'xastscript';
import { quantityOf } from '../quantity/by-name.ts';
import { toShown } from '../quantity/quantity.ts';
import type { UnitSystem } from '../quantity/unit-system.ts';
import type { AskedNumber } from '../quiz/asked.ts';
import { declaration } from './declaration.ts';
import { feedback, toldIn } from './feedback.ts';
import { RESPONSE } from './names.ts';
import { stemIn, stemNode } from './passage.ts';
import type { Parts } from './parts.ts';
import { given, processing, value } from './rules.ts';
import { words } from './words.en.ts';
import { attribute, one } from './xml.ts';

/** The answer itself among the lines that explain. No rule has a dot. */
const ANSWER = '.answer';
/** Conversions leave dust, and a number typed at the very limit counts: this much of the tolerance. */
const HAIR = 1e-9;

const between = (low: number, high: number): Element =>
  x('qti-and', [
    x('qti-gte', [given(), value('float', String(low))]),
    x('qti-lte', [given(), value('float', String(high))]),
  ]);

interface Range {
  readonly low: number;
  readonly high: number;
}

/** From where to where a number counts as the result of each mistake: the nearest wins where two reach. */
export function mistakeRanges({ distractors, within }: AskedNumber): readonly Range[] {
  const reach = within * (1 + HAIR);
  return distractors.map(({ value: own }) => {
    const others = distractors.map((d) => d.value).filter((other) => other !== own);
    const middles = others.map((other) => (own + other) / 2);
    return {
      low: Math.max(own - reach, ...middles.filter((m) => m < own)),
      high: Math.min(own + reach, ...middles.filter((m) => m > own)),
    };
  });
}

export function numberParts(asked: AskedNumber, system: UnitSystem): Parts {
  const quantity = quantityOf(asked.quantity);
  const shown = (metric: number): number => toShown(metric, quantity, system);
  const reach = asked.within * (1 + HAIR);
  const ranges = mistakeRanges(asked);
  const explained = [
    { id: ANSWER, mark: words.fits, words: asked.valueWords, why: asked.why },
    ...asked.distractors.map((d) => ({
      id: d.rule,
      mark: words.fitsNot,
      words: d.valueWords,
      why: d.why,
      data: { 'data-value': String(d.value), 'data-mistake': d.mistake },
      between: words.ifYou({ mistake: d.mistake }),
    })),
  ];
  const told = (id: string, verdict: string): Element => feedback(id, verdict, explained, system);
  return {
    declaration: declaration('single', 'float', [String(shown(asked.value))]),
    body: [
      stemNode(asked.stem, system),
      x('p', [
        words.answerIn({ unit: quantity[system].symbol }),
        ' ',
        x('qti-text-entry-interaction', {
          'response-identifier': RESPONSE,
          'expected-length': '10',
          'data-quantity': asked.quantity,
          'data-value': String(asked.value),
          'data-within': String(asked.within),
        }),
      ]),
    ],
    processing: processing(
      [
        {
          id: 'right',
          score: 1,
          when: between(shown(asked.value - reach), shown(asked.value + reach)),
        },
        ...ranges.map(({ low, high }, index) => ({
          id: `mistake-${index + 1}`,
          score: 0 as const,
          when: between(shown(low), shown(high)),
        })),
        {
          id: 'high',
          score: 0,
          when: x('qti-gt', [given(), value('float', String(shown(asked.value)))]),
        },
      ],
      { id: 'low', score: 0 },
    ),
    feedback: [
      told('right', words.right),
      ...asked.distractors.map(({ mistake }, index) =>
        told(`mistake-${index + 1}`, words.byMistake({ mistake })),
      ),
      told('high', words.tooHigh),
      told('low', words.tooLow),
    ],
  };
}

export function readNumber(item: Element) {
  const entry = one(item, 'qti-text-entry-interaction');
  const told = toldIn(item);
  const right = told.get(ANSWER);
  return {
    stem: stemIn(item),
    quantity: attribute(entry, 'data-quantity'),
    value: Number(attribute(entry, 'data-value')),
    within: Number(attribute(entry, 'data-within')),
    valueWords: right?.words,
    why: right?.why,
    distractors: [...told]
      .filter(([rule]) => rule !== ANSWER)
      .map(([rule, { line, words: valueWords, why }]) => ({
        rule,
        value: Number(attribute(line, 'data-value')),
        valueWords,
        mistake: attribute(line, 'data-mistake'),
        why,
      })),
  };
}
