/** One best answer, or several that fit. */
import type { Element } from 'xast';
import { x } from 'xastscript';
import type { UnitSystem } from '../quantity/unit-system.ts';
import type { AskedChoice, AskedOption } from '../quiz/asked.ts';
import { declaration } from './declaration.ts';
import { feedback, toldIn, type Explained } from './feedback.ts';
import { named, RESPONSE, unnamed } from './names.ts';
import { passageIn, passageNodes, stemIn, stemNode } from './passage.ts';
import type { Parts } from './parts.ts';
import { given, key, processing } from './rules.ts';
import { words } from './words.en.ts';
import { all, attribute, one, textOf } from './xml.ts';

type Options = readonly AskedOption[];

export const rightOf = (options: Options): readonly string[] =>
  options.filter(({ correct }) => correct).map(({ id }) => named(id));

export const optionNodes = (options: Options, system: UnitSystem): Element[] =>
  options.map(({ id, words: text }) =>
    x('qti-simple-choice', { identifier: named(id) }, passageNodes(text, system)),
  );

export const explainedOptions = (options: Options): readonly Explained[] =>
  options.map(({ id, words: text, correct, why }) => ({
    id,
    mark: correct ? words.fits : words.fitsNot,
    words: text,
    why,
  }));

export function choiceParts(asked: AskedChoice, system: UnitSystem): Parts {
  const several = asked.kind === 'several';
  const explained = explainedOptions(asked.options);
  return {
    declaration: declaration(several ? 'multiple' : 'single', 'identifier', rightOf(asked.options)),
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
          ...optionNodes(asked.options, system),
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

export const readChoice = (item: Element) => ({
  stem: stemIn(item),
  ordered: attribute(one(item, 'qti-choice-interaction'), 'shuffle') === 'false',
  options: readOptions(item),
});

export function readOptions(item: Element) {
  const keys = all(one(item, 'qti-correct-response'), 'qti-value').map(textOf);
  const told = toldIn(item);
  return all(item, 'qti-simple-choice').map((choice) => {
    const identifier = attribute(choice, 'identifier');
    const id = unnamed(identifier);
    return {
      id,
      words: passageIn(choice),
      correct: keys.includes(identifier),
      why: told.get(id)?.why,
    };
  });
}
