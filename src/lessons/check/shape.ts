/** What a schema has against a value, as sentences: for front matter, data files, questions and the props of tags alike. */
import { z } from 'astro/zod';
import { allowedWords, nearest } from './nearest.ts';

export interface Complaint {
  /** Where in the value. */
  readonly path: readonly PropertyKey[];
  /** The key in it that nobody knows, if that is what is wrong. */
  readonly key?: string;
  readonly sentence: string;
}

/** Stands where a schema says nothing of its own, so that we know to say it. */
const UNSAID = '';

export function complaints(schema: z.ZodType, value: unknown): readonly Complaint[] {
  const result = schema.safeParse(value, { error: () => UNSAID });
  if (result.success) return [];
  const found = result.error.issues.flatMap((issue): Complaint[] => {
    const { path } = issue;
    if (issue.code === 'unrecognized_keys') {
      return issue.keys.map((key) => ({
        path,
        key,
        sentence:
          issue.message === UNSAID
            ? `"${key}" is not known here.${knownKeys(schema, key)}`
            : issue.message,
      }));
    }
    return [{ path, sentence: issue.message === UNSAID ? say(issue, value) : issue.message }];
  });
  return found.filter((complaint) => !isMisspelt(complaint, found, value));
}

/** A key that is missing only because it was misspelt beside it is one fault, not two. */
function isMisspelt({ path, key }: Complaint, all: readonly Complaint[], value: unknown): boolean {
  const missing = path.at(-1);
  if (key !== undefined || typeof missing !== 'string' || at(value, path) !== undefined)
    return false;
  const parent = path.slice(0, -1).join();
  return all.some(
    (other) =>
      other.key !== undefined &&
      other.path.join() === parent &&
      nearest(other.key, [missing]).length > 0,
  );
}

function knownKeys(schema: z.ZodType, key: string): string {
  if (!(schema instanceof z.ZodObject)) return '';
  const known = Object.keys(schema.shape);
  return known.length === 0 ? ' It takes none.' : ` ${allowedWords(key, known)}`;
}

const kinds: Readonly<Record<string, string>> = {
  string: 'text',
  number: 'a number',
  int: 'a whole number',
  boolean: 'true or false',
  array: 'a list, as in [one, two]',
  object: 'a set of "key: value" lines',
  record: 'a set of "key: value" lines',
};

function say(issue: z.core.$ZodIssue, value: unknown): string {
  const given = at(value, issue.path);
  const name = nameOf(issue.path);
  switch (issue.code) {
    case 'invalid_type': {
      const wanted = kinds[issue.expected] ?? issue.expected;
      return given === undefined
        ? `${name} is missing. It is ${wanted}.`
        : `${name} must be ${wanted}, and is ${shown(given)}.`;
    }
    case 'invalid_value':
      return given === undefined
        ? `${name} is missing. Choose one of: ${issue.values.join(', ')}.`
        : `${name} is ${shown(given)}. ${allowedWords(shown(given).replaceAll('"', ''), issue.values.map(String))}`;
    case 'too_small':
      return `${name} ${measure(given)}, and must have at least ${String(issue.minimum)}.`.replace(
        ...ofNumber(given),
      );
    case 'too_big':
      return `${name} ${measure(given)}, and may have at most ${String(issue.maximum)}.`.replace(
        ...ofNumber(given),
      );
    case 'invalid_format':
      return issue.format === 'url'
        ? `${name} is ${shown(given)}, and must be an address that begins with https://.`
        : `${name} is ${shown(given)}, which has the wrong form.`;
    default:
      return `${name} is ${shown(given)}, which is not allowed here.`;
  }
}

/** A number is a size, it does not have one. */
const ofNumber = (given: unknown): [RegExp, string] =>
  typeof given === 'number' ? [/\b(must|may) have\b/, '$1 be'] : [/$^/, ''];

function measure(given: unknown): string {
  if (typeof given === 'string') return `has ${given.length} characters`;
  if (Array.isArray(given)) return `has ${given.length} items`;
  return `is ${shown(given)}`;
}

/** `needs, item 2` for ["needs", 1]. */
function nameOf(path: readonly PropertyKey[]): string {
  if (path.length === 0) return 'The whole of it';
  return path
    .map((part) => (typeof part === 'number' ? `item ${part + 1}` : `"${String(part)}"`))
    .join(', ');
}

const at = (value: unknown, path: readonly PropertyKey[]): unknown =>
  path.reduce<unknown>(
    (inner, key) =>
      typeof inner === 'object' && inner !== null
        ? (inner as Record<PropertyKey, unknown>)[key]
        : undefined,
    value,
  );

const shown = (value: unknown): string => {
  const text = value === undefined ? 'nothing' : JSON.stringify(value);
  return text.length > 60 ? `${text.slice(0, 57)}…` : text;
};
