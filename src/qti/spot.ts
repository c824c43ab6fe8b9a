/** A job in steps: point at the one that is wrong, or at the place where one is missing. */
import type { Element } from 'xast';
import { x } from 'xastscript';
import type { UnitSystem } from '../quantity/unit-system.ts';
import { START, type AskedSpot } from '../quiz/asked.ts';
import { declaration } from './declaration.ts';
import { feedback, toldIn } from './feedback.ts';
import { named, RESPONSE, unnamed } from './names.ts';
import { passageIn, passageNodes, stemIn, stemNode } from './passage.ts';
import type { Parts } from './parts.ts';
import { either, given, processing, value } from './rules.ts';
import { words } from './words.en.ts';
import { all, attribute, one } from './xml.ts';

/** No id of ours has a dot. */
const MISSING = '.missing';

const choice = (id: string, content: Parameters<typeof x>[2]): Element =>
  x('qti-simple-choice', { identifier: named(id) }, content);

/** The steps themselves, or the places between them. */
const choices = ({ steps, missing }: AskedSpot, system: UnitSystem): Element[] =>
  missing === undefined
    ? steps.map((step) => choice(step.id, passageNodes(step.words, system)))
    : [
        choice(START, words.beforeAll),
        ...steps.map(({ id }, place) => choice(id, words.after({ step: String(place + 1) }))),
      ];

export function spotParts(asked: AskedSpot, system: UnitSystem): Parts {
  const { steps, answers, missing } = asked;
  const [best = ''] = answers;
  const lines = steps.map(({ id, words: text, why }) => ({
    id,
    mark: missing === undefined && answers.includes(id) ? words.thisStep : words.stepIsRight,
    words: text,
    why,
  }));
  const explained =
    missing === undefined ? lines : [{ id: MISSING, mark: words.missing, ...missing }, ...lines];
  return {
    declaration: declaration('single', 'identifier', [named(best)]),
    body: [
      stemNode(asked.stem, system),
      ...(missing === undefined
        ? []
        : [
            x(
              'ol',
              steps.map((step) =>
                x('li', { 'data-step': step.id }, passageNodes(step.words, system)),
              ),
            ),
          ]),
      x(
        'qti-choice-interaction',
        {
          'response-identifier': RESPONSE,
          shuffle: 'false',
          'max-choices': '1',
          'min-choices': '1',
        },
        choices(asked, system),
      ),
    ],
    processing: processing(
      [
        {
          id: 'right',
          score: 1,
          when: either(
            answers.map((id) => x('qti-match', [given(), value('identifier', named(id))])),
          ),
        },
      ],
      { id: 'wrong', score: 0 },
    ),
    feedback: [
      feedback('right', words.right, explained, system),
      feedback('wrong', words.notThatOne, explained, system),
    ],
  };
}

/** Which choices score, as the rules have them. */
const answersIn = (item: Element): string[] =>
  all(one(item, 'qti-response-else-if'), 'qti-match').map((rule) =>
    unnamed(textIn(one(rule, 'qti-base-value'))),
  );

const textIn = (element: Element): string =>
  passageIn(element)
    .filter((piece) => typeof piece === 'string')
    .join('');

export function readSpot(item: Element) {
  const told = toldIn(item);
  const body = one(item, 'qti-item-body');
  const listed = all(body, 'li').filter((line) => 'data-step' in line.attributes);
  const steps =
    listed.length > 0
      ? listed.map((line) => ({ id: attribute(line, 'data-step'), words: passageIn(line) }))
      : all(body, 'qti-simple-choice').map((line) => ({
          id: unnamed(attribute(line, 'identifier')),
          words: passageIn(line),
        }));
  const missing = told.get(MISSING);
  return {
    stem: stemIn(item),
    steps: steps.map((step) => ({ ...step, why: told.get(step.id)?.why })),
    answers: answersIn(item),
    ...(missing !== undefined && { missing: { words: missing.words, why: missing.why } }),
  };
}
