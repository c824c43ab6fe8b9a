/** Steps to put in order. Those of one rank may swap, so several orders can be right. */
import type { Element } from 'xast';
import { x } from 'xastscript';
import type { UnitSystem } from '../quantity/unit-system.ts';
import type { AskedOrder } from '../quiz/asked.ts';
import { declaration } from './declaration.ts';
import { feedback, toldIn } from './feedback.ts';
import { named, RESPONSE, unnamed } from './names.ts';
import { passageIn, passageNodes, stemIn, stemNode } from './passage.ts';
import type { Parts } from './parts.ts';
import { either, given, processing, value } from './rules.ts';
import { words } from './words.en.ts';
import { all, attribute } from './xml.ts';

type Step = AskedOrder['steps'][number];

/** Each right order is written out; six of one rank would take hundreds of lines. */
const MOST_ORDERS = 120;

const permutations = (steps: readonly Step[]): readonly (readonly Step[])[] =>
  steps.length < 2
    ? [steps]
    : steps.flatMap((first, place) =>
        permutations(steps.toSpliced(place, 1)).map((rest) => [first, ...rest]),
      );

/** Every order in which no rank comes after a higher one. */
export function rightOrders({ id, steps }: AskedOrder): readonly (readonly Step[])[] {
  const ranks = [...new Set(steps.map(({ rank }) => rank))].sort((a, b) => a - b);
  const orders = ranks
    .map((rank) => permutations(steps.filter((step) => step.rank === rank)))
    .reduce<readonly (readonly Step[])[]>(
      (before, group) => before.flatMap((start) => group.map((next) => [...start, ...next])),
      [[]],
    );
  if (orders.length > MOST_ORDERS)
    throw new Error(
      `Question "${id}" is right in ${orders.length} orders; QTI takes ${MOST_ORDERS}.`,
    );
  return orders;
}

const isOrder = (steps: readonly Step[]): Element =>
  x('qti-match', [
    given(),
    x(
      'qti-ordered',
      steps.map(({ id }) => value('identifier', named(id))),
    ),
  ]);

export function orderParts(asked: AskedOrder, system: UnitSystem): Parts {
  const orders = rightOrders(asked);
  const [best = []] = orders;
  const places = (rank: number): readonly number[] =>
    best.flatMap((step, place) => (step.rank === rank ? [place + 1] : []));
  const explained = best.map(({ id, words: text, why, rank }) => ({
    id,
    mark: words.step({ from: String(places(rank)[0]), to: String(places(rank).at(-1)) }),
    words: text,
    why,
    data: { 'data-rank': String(rank) },
  }));
  return {
    declaration: declaration(
      'ordered',
      'identifier',
      best.map(({ id }) => named(id)),
    ),
    body: [
      x('qti-order-interaction', { 'response-identifier': RESPONSE, shuffle: 'false' }, [
        x('qti-prompt', [stemNode(asked.stem, system), x('p', words.putInOrder)]),
        ...asked.steps.map((step) =>
          x('qti-simple-choice', { identifier: named(step.id) }, passageNodes(step.words, system)),
        ),
      ]),
    ],
    processing: processing([{ id: 'right', score: 1, when: either(orders.map(isOrder)) }], {
      id: 'wrong',
      score: 0,
    }),
    feedback: [
      feedback('right', words.right, explained, system),
      feedback('wrong', words.notThatOrder, explained, system),
    ],
  };
}

export function readOrder(item: Element) {
  const told = toldIn(item);
  return {
    stem: stemIn(item),
    steps: all(item, 'qti-simple-choice').map((choice) => {
      const id = unnamed(attribute(choice, 'identifier'));
      const line = told.get(id);
      return {
        id,
        words: passageIn(choice),
        why: line?.why,
        rank: line && Number(attribute(line.line, 'data-rank')),
      };
    }),
  };
}
