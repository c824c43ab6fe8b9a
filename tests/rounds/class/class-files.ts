import type { RetrievalAnswer } from '../../../src/storage/answer.ts';
import { nothingKept, writeBundle, type Bundle } from '../../../src/storage/bundle/bundle.ts';

/** Noon in Greenwich on 29 November 2026 [ms of Unix time]. */
export const NOON = Date.UTC(2026, 10, 29, 12);
const MINUTE = 60_000;

export const emptyBundle: Bundle = nothingKept(0);

/** "id right certain" and so on, a minute apart from `from` on. */
export function answersFrom(said: readonly string[], from = NOON) {
  return said.map((text, i) => {
    const [item = '', result, sure] = text.split(' ');
    const answer: RetrievalAnswer = {
      kind: 'retrieval',
      lesson: 'some-lesson',
      item,
      seed: 1,
      given: { kind: 'chosen', ids: [result === 'right' ? 'yes' : 'no'] },
      result: result as RetrievalAnswer['result'],
      certainty: sure === 'certain' ? 3 : sure === 'fairly' ? 2 : 1,
    };
    return { at: from + i * MINUTE, answer };
  });
}

/** A learner's file with these answers. */
export const classFile = (name: string | null, said: readonly string[], from = NOON): string =>
  writeBundle({ ...emptyBundle, name, written: from, answers: answersFrom(said, from) });
