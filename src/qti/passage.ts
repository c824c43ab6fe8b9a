/** Text with amounts: shown in one unit system, with both kept beside it, so that it can be read back. */
import type { Element, ElementContent } from 'xast';
import { x } from 'xastscript';
import type { UnitSystem } from '../quantity/unit-system.ts';
import type { Passage } from '../quiz/asked.ts';
import { attribute, classed, textOf } from './xml.ts';

/** The same text in as few pieces as it takes: amounts that read alike in both systems are text. */
export function settled(passage: Passage): Passage {
  const out: (Passage[number] | undefined)[] = [];
  for (const piece of passage) {
    const text = typeof piece === 'string' ? piece : piece.si === piece.us ? piece.si : undefined;
    const last = out.at(-1);
    if (text === undefined && typeof piece !== 'string') out.push({ si: piece.si, us: piece.us });
    else if (typeof last === 'string') out[out.length - 1] = last + (text ?? '');
    else if (text !== '') out.push(text);
  }
  return out.filter((piece) => piece !== undefined);
}

export const passageNodes = (passage: Passage, system: UnitSystem): ElementContent[] =>
  settled(passage).map((piece) =>
    typeof piece === 'string'
      ? { type: 'text', value: piece }
      : x('span', { 'data-si': piece.si, 'data-us': piece.us }, piece[system]),
  );

export const passageIn = (element: Element): Passage =>
  settled(
    element.children.map((child) =>
      child.type === 'element' && child.name === 'span'
        ? { si: attribute(child, 'data-si'), us: attribute(child, 'data-us') }
        : textOf(child),
    ),
  );

export const stemNode = (stem: Passage, system: UnitSystem): Element =>
  x('p', { class: 'stem' }, passageNodes(stem, system));

export const stemIn = (item: Element): Passage => passageIn(classed(item, 'p', 'stem'));
