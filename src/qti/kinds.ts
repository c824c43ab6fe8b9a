/** The one place where kinds part, on the way out and on the way in. A new kind does not compile until it stands in both. */
import type { Element } from 'xast';
import type { UnitSystem } from '../quantity/unit-system.ts';
import type { Asked } from '../quiz/asked.ts';
import { caseParts, readCase } from './case.ts';
import { choiceParts, readChoice } from './choice.ts';
import { matchParts, readMatch } from './match.ts';
import { numberParts, readNumber } from './number.ts';
import { orderParts, readOrder } from './order.ts';
import type { Parts } from './parts.ts';
import { Refusal } from './refusal.ts';
import { readSpot, spotParts } from './spot.ts';
import { words } from './words.en.ts';
import { attribute } from './xml.ts';

export function partsOf(asked: Asked, system: UnitSystem): Parts {
  switch (asked.kind) {
    case 'single':
    case 'several':
      return choiceParts(asked, system);
    case 'number':
      return numberParts(asked, system);
    case 'order':
      return orderParts(asked, system);
    case 'match':
      return matchParts(asked, system);
    case 'spot':
      return spotParts(asked, system);
    case 'case':
      return caseParts(asked, system);
  }
}

const readers = {
  single: readChoice,
  several: readChoice,
  number: readNumber,
  order: readOrder,
  match: readMatch,
  spot: readSpot,
  case: readCase,
} as const satisfies Record<Asked['kind'], (item: Element) => object>;

export function readParts(item: Element): object {
  const kind = attribute(item, 'data-kind');
  if (!Object.hasOwn(readers, kind)) {
    throw new Refusal(words.refused.kind({ kind, kinds: Object.keys(readers).join(', ') }));
  }
  return { kind, ...readers[kind as Asked['kind']](item) };
}
