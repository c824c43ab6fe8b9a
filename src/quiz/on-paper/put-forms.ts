/** On paper: steps get a number written before them, options have one, pairs a letter, and of a case every reading is printed. */
import {
  EXTRA,
  START,
  type AskedCase,
  type AskedMatch,
  type AskedOrder,
  type AskedSpot,
} from '../asked.ts';
import { minutesOf } from '../case-minutes.ts';
import { letterOf } from '../letter-of.ts';
import { numberOf, type Mix, type Put, type Reason } from './put-parts.ts';

type Step = AskedOrder['steps'][number];

const inOrder = (steps: readonly Step[]): boolean =>
  steps.every(({ rank }, place) => rank >= (steps[place - 1]?.rank ?? rank));

export function putOrder({ id, stem, chart, steps }: AskedOrder, mix: Mix): Put {
  const mixed = mix(steps, inOrder);
  const sorted = [...mixed].sort((a, b) => a.rank - b.rank);
  const rightPlace = (step: Step): number => sorted.indexOf(step) + 1;
  const ranks = [...new Set(sorted.map(({ rank }) => rank))];
  return {
    ...{ id, stem, chart },
    asks: 'order',
    lines: mixed.map(({ words }) => words),
    right: {
      kind: 'order',
      numbers: mixed.map(rightPlace),
      swap: ranks
        .map((rank) => sorted.filter((step) => step.rank === rank).map(rightPlace))
        .filter(({ length }) => length > 1),
    },
    reasons: sorted.map(({ words, why }, place) => ({
      letter: numberOf(place),
      ...{ words, correct: true, why },
    })),
  };
}

export function putMatch(asked: AskedMatch, mix: Mix): Put {
  const { id, stem, chart, pairs, partners, extraWhy } = asked;
  const mixed = mix(partners).map((partner, place) => ({ ...partner, letter: letterOf(place) }));
  const partnerOf = (pair: string) => mixed.find((partner) => partner.id === pair);
  const matched = pairs.map(({ id: pair, words, why }): Reason & { readonly letter: string } => ({
    letter: partnerOf(pair)?.letter ?? '',
    words: [...words, ': ', ...(partnerOf(pair)?.words ?? [])],
    correct: true,
    why,
  }));
  const extra = partnerOf(EXTRA);
  return {
    ...{ id, stem, chart },
    asks: 'match',
    lines: pairs.map(({ words }) => words),
    partners: mixed.map(({ letter, words }) => ({ letter, words })),
    right: { kind: 'letters', letters: matched.map(({ letter }) => letter) },
    reasons: [
      ...matched,
      ...(extra === undefined || extraWhy === undefined
        ? []
        : [
            {
              letter: extra.letter,
              words: extra.words,
              correct: false,
              mark: 'withNothing' as const,
              why: extraWhy,
            },
          ]),
    ],
  };
}

export function putSpot({ id, stem, chart, steps, answers, missing }: AskedSpot): Put {
  const lettered = steps.map((step, place) => ({ ...step, letter: numberOf(place) }));
  const reasons = lettered.map(({ letter, words, why, id: step }): Reason => {
    const correct = missing === undefined && answers.includes(step);
    return { letter, words, correct, ...(!correct && { mark: 'rightStep' }), why };
  });
  if (missing === undefined)
    return {
      ...{ id, stem, chart },
      asks: 'step',
      options: lettered.map(({ letter, words }) => ({ letter, words })),
      right: {
        kind: 'letters',
        letters: lettered.filter((step) => answers.includes(step.id)).map(({ letter }) => letter),
      },
      reasons,
    };
  const places = [START, ...steps.map((step) => step.id)];
  return {
    ...{ id, stem, chart },
    asks: 'gap',
    steps: steps.map(({ words }) => words),
    gaps: places.map((_, above) => above),
    right: {
      kind: 'gaps',
      gaps: places.flatMap((place, above) => (answers.includes(place) ? above : [])),
    },
    reasons: [{ ...missing, correct: true }, ...reasons],
  };
}

export function putCase(asked: AskedCase, mix: Mix): Put {
  const { id, stem, chart, options, readings, cheapest, arrives } = asked;
  const lettered = mix(options).map(({ words, correct, why }, place) => ({
    letter: numberOf(place),
    ...{ words, correct, why },
  }));
  const best = cheapest.flatMap((one) => readings.find((reading) => reading.id === one) ?? []);
  return {
    ...{ id, stem, chart },
    asks: 'fault',
    readings: readings.map((reading) => ({
      words: reading.words,
      minutes: minutesOf([reading], arrives),
      reads: reading.reads,
    })),
    options: lettered.map(({ letter, words }) => ({ letter, words })),
    right: {
      kind: 'letters',
      letters: lettered.flatMap(({ letter, correct }) => (correct ? letter : [])),
    },
    reasons: lettered,
    cheapest: {
      minutes: minutesOf(best, arrives),
      readings: best.map(({ words, why }) => ({ words, why })),
    },
  };
}
