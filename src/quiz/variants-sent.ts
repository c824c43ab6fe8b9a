/**
 * The variants of a lesson's questions on their way. Five copies of a question differ in a few amounts, and only those go: what
 * differs stands under the keys that lead to it, and what takes its place in a list of one.
 */
import type { Asked, Varied } from './asked.ts';

/** By the id of the question: of each further variant, where it differs from the first. */
export type Changes = Readonly<Record<string, readonly Change[]>>;
type Change = Readonly<Record<string, unknown>>;

const isBranch = (value: unknown): value is object =>
  typeof value === 'object' && value !== null && !('si' in value);

function changeOf(from: unknown, to: unknown): unknown {
  if (JSON.stringify(from) === JSON.stringify(to)) return undefined;
  if (!isBranch(from) || !isBranch(to) || Array.isArray(from) !== Array.isArray(to)) return [to];
  const before = new Map<string, unknown>(Object.entries(from));
  const after = Object.entries(to);
  if (after.length !== before.size || !after.every(([key]) => before.has(key))) return [to];
  const changes = after
    .map(([key, value]) => [key, changeOf(before.get(key), value)] as const)
    .filter(([, change]) => change !== undefined);
  return Object.fromEntries(changes);
}

function changed(from: unknown, change: unknown): unknown {
  if (Array.isArray(change)) return change[0] as unknown;
  if (!isBranch(change) || !isBranch(from)) return from;
  const changes = new Map<string, unknown>(Object.entries(change));
  const each = Object.entries(from).map(([key, value]): [string, unknown] => [
    key,
    changes.has(key) ? changed(value, changes.get(key)) : value,
  ]);
  return Array.isArray(from) ? each.map(([, value]) => value) : Object.fromEntries(each);
}

/** Undefined where none varies. */
export function changesOf(questions: readonly Varied[]): Changes | undefined {
  const changes = questions.flatMap(({ others = [], ...first }) =>
    others.length === 0
      ? []
      : [[first.id, others.map((other) => changeOf(first, other) as Change)] as const],
  );
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
    return { ...question, others: others.map((change) => read(changed(question, change))) };
  });
