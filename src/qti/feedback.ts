/** What is told after an answer: a verdict, and every option with its reason, whatever was chosen. */
import type { Element } from 'xast';
import { x } from 'xastscript';
import type { UnitSystem } from '../quantity/unit-system.ts';
import type { Passage } from '../quiz/asked.ts';
import { FEEDBACK } from './names.ts';
import { passageIn, passageNodes } from './passage.ts';
import { all, attribute, classed } from './xml.ts';

export interface Explained {
  readonly id: string;
  readonly mark: string;
  readonly words: Passage;
  readonly why: Passage;
  readonly data?: Readonly<Record<string, string>>;
  /** Stands between the words and the reason. */
  readonly between?: string | undefined;
}

const line = ({ id, mark, words, why, data, between }: Explained, system: UnitSystem): Element =>
  x('li', { 'data-for': id, ...data }, [
    x('p', [x('strong', mark), ' ', x('span', { class: 'words' }, passageNodes(words, system))]),
    ...(between === undefined ? [] : [x('p', between)]),
    x('p', { class: 'why' }, passageNodes(why, system)),
  ]);

export const feedback = (
  id: string,
  verdict: string,
  explained: readonly Explained[],
  system: UnitSystem,
): Element =>
  x('qti-modal-feedback', { 'outcome-identifier': FEEDBACK, identifier: id, 'show-hide': 'show' }, [
    x('qti-content-body', [
      x('p', verdict),
      x(
        'ul',
        explained.map((one) => line(one, system)),
      ),
    ]),
  ]);

export interface Told {
  readonly line: Element;
  readonly words: Passage;
  readonly why: Passage;
}

/** What the first feedback of an item says, by what it is about. */
export function toldIn(item: Element): ReadonlyMap<string, Told> {
  const [first] = all(item, 'qti-modal-feedback');
  return new Map(
    (first === undefined ? [] : all(first, 'li')).map((line) => [
      attribute(line, 'data-for'),
      {
        line,
        words: passageIn(classed(line, 'span', 'words')),
        why: passageIn(classed(line, 'p', 'why')),
      },
    ]),
  );
}
