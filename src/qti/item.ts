/** A question as an item of the standard. */
import type { Element } from 'xast';
import { x } from 'xastscript';
import { language } from '../language/current.ts';
import type { UnitSystem } from '../quantity/unit-system.ts';
import type { Asked } from '../quiz/asked.ts';
import { chartNodes, readChart } from './chart.ts';
import { partsOf, readParts } from './kinds.ts';
import { ASI, FEEDBACK, named, SCORE, TOOL, unnamed } from './names.ts';
import { attribute, maybe } from './xml.ts';

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
      'data-kind': asked.kind,
      'data-objectives': asked.objectives.join(' '),
      'data-concept': asked.concept,
      ...(asked.lookAlikes.length > 0 && { 'data-look-alikes': asked.lookAlikes.join(' ') }),
      'data-level': asked.level,
      'data-unseen': String(asked.unseen),
      'data-source': asked.source,
      ...(asked.variant !== undefined && { 'data-variant': asked.variant }),
    },
    [
      parts.declaration,
      outcome(SCORE, 'float', '1'),
      outcome(FEEDBACK, 'identifier'),
      x('qti-item-body', [
        ...(asked.chart === undefined ? [] : chartNodes(asked.id, asked.chart, system)),
        ...parts.body,
      ]),
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
  variant: maybe(item, 'data-variant'),
  ...readParts(item),
  ...readChart(item),
});
