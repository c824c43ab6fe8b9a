/** One best answer, or several that fit. */
import type { Element } from 'xast';
import { x } from 'xastscript';
import type { UnitSystem } from '../quantity/unit-system.ts';
import type { AskedChoice } from '../quiz/asked.ts';
import { declaration } from './declaration.ts';
import { feedback, toldIn } from './feedback.ts';
import { named, RESPONSE, unnamed } from './names.ts';
import { passageIn, passageNodes, stemIn, stemNode } from './passage.ts';
import type { Parts } from './parts.ts';
import { given, key, processing } from './rules.ts';
import { words } from './words.en.ts';
import { all, attribute, one, textOf } from './xml.ts';

export function choiceParts(asked: AskedChoice, system: UnitSystem): Parts {
  const several = asked.kind === 'several';
  const explained = asked.options.map(({ id, words: text, correct, why }) => ({
    id,
    mark: correct ? words.fits : words.fitsNot,
    words: text,
    why,
  }));
  return {
    declaration: declaration(
      several ? 'multiple' : 'single',
      'identifier',
      asked.options.filter(({ correct }) => correct).map(({ id }) => named(id)),
    ),
    body: [
      x(
        'qti-choice-interaction',
        {
          'response-identifier': RESPONSE,
          shuffle: String(!asked.ordered),
          'max-choices': several ? '0' : '1',
          'min-choices': '1',
        },
        [
          x('qti-prompt', [
            stemNode(asked.stem, system),
            ...(several ? [x('p', words.severalFit)] : []),
          ]),
          ...asked.options.map((option) =>
            x(
              'qti-simple-choice',
              { identifier: named(option.id) },
              passageNodes(option.words, system),
            ),
          ),
        ],
      ),
    ],
    processing: processing([{ id: 'right', score: 1, when: x('qti-match', [given(), key()]) }], {
      id: 'wrong',
      score: 0,
    }),
    feedback: [
      feedback('right', several ? words.allRight : words.right, explained, system),
      feedback('wrong', several ? words.notAll : words.notThatOne, explained, system),
    ],
  };
}

export function readChoice(item: Element) {
  const interaction = one(item, 'qti-choice-interaction');
  const keys = all(one(item, 'qti-correct-response'), 'qti-value').map(textOf);
  const told = toldIn(item);
  return {
    stem: stemIn(item),
    ordered: attribute(interaction, 'shuffle') === 'false',
    options: all(interaction, 'qti-simple-choice').map((choice) => {
      const identifier = attribute(choice, 'identifier');
      const id = unnamed(identifier);
      return {
        id,
        words: passageIn(choice),
        correct: keys.includes(identifier),
        why: told.get(id)?.why,
      };
    }),
  };
}
