/** A question as an item of the standard. */
import type { Element } from 'xast';
import { x } from 'xastscript';
import { language } from '../language/current.ts';
import type { UnitSystem } from '../quantity/unit-system.ts';
import type { Asked } from '../quiz/asked.ts';
import { choiceParts, readChoice } from './choice.ts';
import { ASI, FEEDBACK, named, SCORE, TOOL, unnamed } from './names.ts';
import { numberParts, readNumber } from './number.ts';
import type { Parts } from './parts.ts';
import { Refusal } from './refusal.ts';
import { words } from './words.en.ts';
import { all, attribute, maybe } from './xml.ts';

/** The one place where kinds part, on the way out. */
function partsOf(asked: Asked, system: UnitSystem): Parts {
  switch (asked.kind) {
    case 'single':
    case 'several':
      return choiceParts(asked, system);
    case 'number':
      return numberParts(asked, system);
  }
}

/** And on the way in: an interaction stands for a kind. */
function readKind(item: Element): object {
  if (all(item, 'qti-choice-interaction').length > 0) return readChoice(item);
  if (all(item, 'qti-text-entry-interaction').length > 0) return readNumber(item);
  throw new Refusal(words.refused.part({ file: 'An item', what: 'a question that we know' }));
}

const outcome = (identifier: string, type: 'float' | 'identifier', most?: string): Element =>
  x(
    'qti-outcome-declaration',
    {
      identifier,
      cardinality: 'single',
      'base-type': type,
      ...(most !== undefined && { 'normal-maximum': most, 'normal-minimum': '0' }),
    },
    type === 'float' ? [x('qti-default-value', [x('qti-value', '0')])] : [],
  );

export const titleOf = (id: string): string => {
  const text = id.replaceAll('-', ' ');
  return text.charAt(0).toUpperCase() + text.slice(1);
};

export function itemOf(asked: Asked, system: UnitSystem, version: string): Element {
  const parts = partsOf(asked, system);
  return x(
    'qti-assessment-item',
    {
      xmlns: ASI,
      identifier: named(asked.id),
      title: titleOf(asked.id),
      adaptive: 'false',
      'time-dependent': 'false',
      'xml:lang': language.id,
      'tool-name': TOOL,
      'tool-version': version,
      'data-objectives': asked.objectives.join(' '),
      'data-concept': asked.concept,
      ...(asked.lookAlikes.length > 0 && { 'data-look-alikes': asked.lookAlikes.join(' ') }),
      'data-level': asked.level,
      'data-unseen': String(asked.unseen),
      'data-source': asked.source,
    },
    [
      parts.declaration,
      outcome(SCORE, 'float', '1'),
      outcome(FEEDBACK, 'identifier'),
      x('qti-item-body', [...parts.body]),
      parts.processing,
      ...parts.feedback,
    ],
  );
}

const ids = (list: string | undefined): string[] => list?.split(' ') ?? [];

/** What stands in an item; whether it makes a question is for the reader of questions to say. */
export const readItem = (item: Element): object => ({
  id: unnamed(attribute(item, 'identifier')),
  objectives: ids(attribute(item, 'data-objectives')),
  concept: attribute(item, 'data-concept'),
  lookAlikes: ids(maybe(item, 'data-look-alikes')),
  level: attribute(item, 'data-level'),
  unseen: attribute(item, 'data-unseen') === 'true',
  source: attribute(item, 'data-source'),
  ...readKind(item),
});
