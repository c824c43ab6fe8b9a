/** A learner's file as the class reads it. */
import type { ClassAnswer } from '../../quiz/class/first-answers.ts';
import type { RetrievalAnswer } from '../../storage/answer.ts';
import { readBundle } from '../../storage/bundle/read-bundle.ts';

export { tooLarge } from '../../storage/bundle/read-bundle.ts';

/** An answer, and what was typed; which rule it came from shows once its question is here. */
export interface MemberAnswer extends ClassAnswer {
  readonly typed?: Pick<RetrievalAnswer, 'given' | 'variant'>;
}

export interface Member {
  /** Of this visit, in the order taken in, from 1. */
  readonly number: number;
  /** Null where none was typed. */
  readonly name: string | null;
  /** When the file was written [ms of Unix time]. */
  readonly written: number;
  readonly answers: readonly MemberAnswer[];
}

export type Taken =
  | { readonly kind: 'refused'; readonly sentence: string }
  | { readonly kind: 'empty' }
  | { readonly kind: 'same'; readonly as: Member }
  | { readonly kind: 'fuller'; readonly as: Member; readonly member: Member }
  | { readonly kind: 'new'; readonly member: Member };

const asClass = (
  at: number,
  { item, result, certainty, given, variant }: RetrievalAnswer,
): MemberAnswer => ({
  ...{ item, result, certainty, at },
  ...(given.kind === 'chosen' ? { ids: given.ids } : { ids: [], typed: { given, variant } }),
});

const marksOf = (answers: readonly ClassAnswer[]): ReadonlySet<string> =>
  new Set(answers.map(({ at, item }) => `${at} ${item}`));

const within = (some: ReadonlySet<string>, all: ReadonlySet<string>): boolean =>
  [...some].every((one) => all.has(one));

/**
 * What becomes of a file beside those that are there. The same answers at the same moments are the same learner, whatever the
 * name says; of two such files the fuller one counts.
 */
export function takeFile(text: string, there: readonly Member[], number: number): Taken {
  const read = readBundle(text);
  if (!read.ok) return { kind: 'refused', sentence: read.sentence };
  const { name, written } = read.bundle;
  const answers = read.bundle.answers
    .flatMap(({ at, answer }) => (answer.kind === 'retrieval' ? [asClass(at, answer)] : []))
    .sort((a, b) => a.at - b.at);
  if (answers.length === 0) return { kind: 'empty' };
  const marks = marksOf(answers);
  for (const one of there) {
    const its = marksOf(one.answers);
    if (within(marks, its)) return { kind: 'same', as: one };
    if (within(its, marks)) {
      return {
        kind: 'fuller',
        as: one,
        member: { ...one, name: name ?? one.name, written, answers },
      };
    }
  }
  return { kind: 'new', member: { number, name, written, answers } };
}
