/** The variants of a lesson's questions on their way: five copies of a question differ in a few fields, and only those go. */
import type { Asked, Varied } from './asked.ts';

/** By the id of the question: of each further variant, the fields that the first has otherwise. */
export type Changes = Readonly<Record<string, readonly Readonly<Record<string, unknown>>[]>>;

const same = (a: unknown, b: unknown): boolean => JSON.stringify(a) === JSON.stringify(b);

/** Undefined where none varies. */
export function changesOf(questions: readonly Varied[]): Changes | undefined {
  const changes = questions.flatMap(({ others = [], ...first }) => {
    const has = new Map<string, unknown>(Object.entries(first));
    const each = others.map((other) =>
      Object.fromEntries(
        Object.entries(other).filter(([key, value]) => !same(value, has.get(key))),
      ),
    );
    return others.length === 0 ? [] : [[first.id, each] as const];
  });
  return changes.length === 0 ? undefined : Object.fromEntries(changes);
}

/** @param read throws on what is no question */
export const withChanges = (
  questions: readonly Asked[],
  changes: Changes,
  read: (value: unknown) => Asked,
): readonly Varied[] =>
  questions.map((question) => {
    const others = changes[question.id];
    if (others === undefined) return question;
    return { ...question, others: others.map((change) => read({ ...question, ...change })) };
  });
