/** Lines on the left, each to find its own on the right. */
import type { Element } from 'xast';
import { x } from 'xastscript';
import type { UnitSystem } from '../quantity/unit-system.ts';
import type { AskedMatch, Passage } from '../quiz/asked.ts';
import { EXTRA } from '../quiz/asked.ts';
import { declaration } from './declaration.ts';
import { feedback, toldIn } from './feedback.ts';
import { RESPONSE } from './names.ts';
import { passageIn, passageNodes, stemIn, stemNode } from './passage.ts';
import type { Parts } from './parts.ts';
import { given, key, processing } from './rules.ts';
import { words } from './words.en.ts';
import { all, attribute } from './xml.ts';

/** No id of ours has a dot. */
const NOTHING = '.extra';
/** In one item every identifier is its own, and a partner has the id of its line. */
const LEFT = 'from-';
const RIGHT = 'to-';

interface Line {
  readonly id: string;
  readonly words: Passage;
}

const side = (lines: readonly Line[], prefix: string, system: UnitSystem): Element =>
  x(
    'qti-simple-match-set',
    lines.map((line) =>
      x(
        'qti-simple-associable-choice',
        { identifier: `${prefix}${line.id}`, 'match-max': '1' },
        passageNodes(line.words, system),
      ),
    ),
  );

export function matchParts(asked: AskedMatch, system: UnitSystem): Parts {
  const { pairs, partners, extraWhy } = asked;
  const partner = (id: string): Passage => partners.find((one) => one.id === id)?.words ?? [];
  const explained = [
    ...pairs.map(({ id, words: text, why }) => ({
      id,
      mark: words.pair,
      words: [...text, ` ${words.goesWith} `, ...partner(id)],
      why,
    })),
    ...(extraWhy === undefined
      ? []
      : [{ id: NOTHING, mark: words.goesWithNothing, words: partner(EXTRA), why: extraWhy }]),
  ];
  return {
    declaration: declaration(
      'multiple',
      'directedPair',
      pairs.map(({ id }) => `${LEFT}${id} ${RIGHT}${id}`),
    ),
    body: [
      x(
        'qti-match-interaction',
        {
          'response-identifier': RESPONSE,
          shuffle: 'false',
          'max-associations': String(pairs.length),
          'min-associations': String(pairs.length),
        },
        [
          x('qti-prompt', [stemNode(asked.stem, system)]),
          side(pairs, LEFT, system),
          side(partners, RIGHT, system),
        ],
      ),
    ],
    processing: processing([{ id: 'right', score: 1, when: x('qti-match', [given(), key()]) }], {
      id: 'wrong',
      score: 0,
    }),
    feedback: [
      feedback('right', words.allRight, explained, system),
      feedback('wrong', words.notAllPairs, explained, system),
    ],
  };
}

export function readMatch(item: Element) {
  const told = toldIn(item);
  const [left, right] = all(item, 'qti-simple-match-set').map((set) =>
    all(set, 'qti-simple-associable-choice').map((choice) => ({
      id: attribute(choice, 'identifier').replace(/^(from|to)-/u, ''),
      words: passageIn(choice),
    })),
  );
  const extra = told.get(NOTHING);
  return {
    stem: stemIn(item),
    pairs: left?.map((line) => ({ ...line, why: told.get(line.id)?.why })),
    partners: right,
    ...(extra !== undefined && { extraWhy: extra.why }),
  };
}
