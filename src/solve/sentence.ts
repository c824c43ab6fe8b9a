import type * as z from 'zod';

type Issue = z.core.$ZodIssue;

/** What was given, short enough for a sentence. */
function shown(value: unknown): string {
  if (value === undefined) return 'missing';
  const text = JSON.stringify(value);
  return text.length > 60 ? `${text.slice(0, 57)}...` : text;
}

function valueAt(input: unknown, path: readonly PropertyKey[]): unknown {
  return path.reduce<unknown>(
    (value, key) =>
      typeof value === 'object' && value !== null
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

/** One sentence and one path for a request that did not parse: what was wrong and what is allowed. */
export function sentenceFor(error: z.ZodError, input: unknown): { error: string; path: string } {
  const issue = deepest(error.issues[0] as Issue);
  const path = issue.path.map(String).join('.');
  const name = path === '' ? 'The request' : path;
  if (issue.code === 'unrecognized_keys') {
    const first = issue.keys[0] as string;
    return {
      error: `${name} has a key that is not known: ${issue.keys.join(', ')}.`,
      path: path === '' ? first : `${path}.${first}`,
    };
  }
  const value = shown(valueAt(input, issue.path));
  return { error: `${name} is ${value}; it ${expectation(issue)}.`, path };
}
