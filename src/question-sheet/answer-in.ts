import { passageText } from '../quiz/asked.ts';
import type { Right } from '../quiz/on-paper/put-parts.ts';
import type { UnitSystem } from '../quantity/unit-system.ts';
import { gapIn } from './gap-in.ts';
import { words } from './words.en.ts';

const { key: said } = words;

/** What is right, as short as a person reads it off who marks a pile of papers. */
export function answerIn(right: Right, units: UnitSystem): string {
  switch (right.kind) {
    case 'letters':
      return right.letters.join(' ');
    case 'amount':
      return said.from({
        amount: passageText(right.words, units),
        least: right.least[units],
        most: right.most[units],
      });
    case 'order': {
      const swaps = right.swap.map((numbers) => said.swap({ numbers: numbers.map(String) }));
      return [right.numbers.join(' '), ...swaps.map((one) => `(${one})`)].join(' ');
    }
    case 'gaps':
      return right.gaps.map(gapIn).reduce((one, other) => said.either({ one, other }));
  }
}
