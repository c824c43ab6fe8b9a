/** How an answer is scored, in the operators that every processor of the standard has. */
import type { Element } from 'xast';
import { x } from 'xastscript';
import { FEEDBACK, RESPONSE, SCORE } from './names.ts';

export const given = (): Element => x('qti-variable', { identifier: RESPONSE });
export const key = (): Element => x('qti-correct', { identifier: RESPONSE });
export const value = (type: 'identifier' | 'float', of: string): Element =>
  x('qti-base-value', { 'base-type': type }, of);

/** One rule needs no "or". */
export const either = (rules: readonly Element[]): Element => {
  const [only] = rules;
  return rules.length === 1 && only !== undefined ? only : x('qti-or', [...rules]);
};

const set = (outcome: string, to: Element): Element =>
  x('qti-set-outcome-value', { identifier: outcome }, [to]);

export interface Verdict {
  /** Of the feedback that is shown. */
  readonly id: string;
  readonly score: 0 | 1;
}

const told = ({ id, score }: Verdict): Element[] => [
  set(SCORE, value('float', String(score))),
  set(FEEDBACK, value('identifier', id)),
];

/** The first case that is so decides; no answer earns nothing and is told nothing. */
export const processing = (
  cases: readonly (Verdict & { readonly when: Element })[],
  otherwise: Verdict,
): Element =>
  x('qti-response-processing', [
    x('qti-response-condition', [
      x('qti-response-if', [x('qti-is-null', [given()]), set(SCORE, value('float', '0'))]),
      ...cases.map(({ when, ...verdict }) => x('qti-response-else-if', [when, ...told(verdict)])),
      x('qti-response-else', told(otherwise)),
    ]),
  ]);
