import * as z from 'zod';
import { cut, shown } from './shown.ts';

type Issue = z.core.$ZodIssue;

/** One sentence and the key it belongs to. */
export interface Refusal {
  readonly error: string;
  readonly path: string;
}

/** What stands at a path of a request, or undefined. */
export function valueAt(input: unknown, path: readonly PropertyKey[]): unknown {
  return path.reduce<unknown>(
    (value, key) =>
      typeof value === 'object' && value !== null && Object.hasOwn(value, key)
        ? (value as Record<PropertyKey, unknown>)[key]
        : undefined,
    input,
  );
}

/** How far a branch of a union got before it failed: the furthest is the one the writer meant. */
function progress(issue: Issue): number {
  return (
    issue.path.length * 10 +
    (issue.code === 'invalid_type' ? 0 : issue.code === 'invalid_value' ? 1 : 5)
  );
}

function deepest(issue: Issue): Issue {
  if (issue.code !== 'invalid_union') return issue;
  const firsts = issue.errors
    .flatMap((issues) => issues.slice(0, 1))
    .map((first) => deepest(first));
  const best = firsts.reduce<Issue | undefined>(
    (a, b) => (a === undefined || progress(b) > progress(a) ? b : a),
    undefined,
  );
  return best === undefined ? issue : { ...best, path: [...issue.path, ...best.path] };
}

function expectation(issue: Issue): string {
  switch (issue.code) {
    case 'invalid_value':
      return `must be one of ${issue.values.map((value) => String(value)).join(', ')}`;
    case 'invalid_type':
      // A number's own message names its range; zod's stock message for the rest does not help a person.
      return issue.message.startsWith('must')
        ? issue.message
        : `must be ${/^[aeiou]/.test(issue.expected) ? 'an' : 'a'} ${issue.expected}`;
    default:
      return issue.message;
  }
}

/** The keys that a schema knows at a path. */
function keysAt(schema: unknown, path: readonly PropertyKey[]): readonly string[] {
  if (schema instanceof z.ZodOptional) return keysAt(schema.unwrap(), path);
  if (schema instanceof z.ZodUnion) return schema.options.flatMap((option) => keysAt(option, path));
  if (!(schema instanceof z.ZodObject)) return [];
  const [first, ...rest] = path;
  const shape = schema.shape as Readonly<Record<PropertyKey, unknown>>;
  return first === undefined ? Object.keys(shape) : keysAt(shape[first], rest);
}

/** One sentence and one path for a request that did not parse: what was wrong and what is allowed. */
export function sentenceFor(error: z.ZodError, input: unknown, schema: z.ZodType): Refusal {
  const issue = deepest(error.issues[0] as Issue);
  const path = issue.path.map(String).join('.');
  if (issue.code !== 'unrecognized_keys') {
    const value = shown(valueAt(input, issue.path));
    return { error: `${path} is ${value}; it ${expectation(issue)}.`, path };
  }
  const [first = ''] = issue.keys;
  const others = issue.keys.length - 1;
  const more =
    others === 0 ? '' : ` and ${others} more that ${others === 1 ? 'is' : 'are'} not known`;
  const where = path === '' ? 'a request of this kind' : path;
  return {
    error: `There is no key ${cut(first)}${more} in ${where}; the keys are ${keysAt(schema, issue.path).join(', ')}.`,
    path: path === '' ? cut(first) : `${path}.${cut(first)}`,
  };
}
