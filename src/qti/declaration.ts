import type { Element } from 'xast';
import { x } from 'xastscript';
import { RESPONSE } from './names.ts';

/** The variable that holds an answer, with the right one. */
export const declaration = (
  cardinality: 'single' | 'multiple' | 'ordered',
  type: 'identifier' | 'float' | 'directedPair',
  right: readonly string[],
): Element =>
  x('qti-response-declaration', { identifier: RESPONSE, cardinality, 'base-type': type }, [
    x(
      'qti-correct-response',
      right.map((one) => x('qti-value', one)),
    ),
  ]);
