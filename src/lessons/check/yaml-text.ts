/** YAML with the place of every key and value: front matter, glossary entries, sources. */
import { isMap, isNode, isScalar, parseDocument, visit, type Document } from 'yaml';
import type { z } from 'astro/zod';
import type { Placed } from './fault.ts';
import { complaints } from './shape.ts';

export interface YamlText {
  readonly value: unknown;
  readonly faults: readonly Placed[];
  /** Offset of the key or value at a path, or of the nearest thing round it that is there. */
  readonly placeOf: (path: readonly PropertyKey[], key?: string) => number;
}

export function readYaml(text: string, schema: z.ZodType): YamlText {
  const document = parseDocument(text, { prettyErrors: false });
  if (document.errors.length > 0) {
    const faults = document.errors.map(({ pos, message }) => ({
      offset: /closing "?'?quote/.test(message) ? lastQuoted(document) : pos[0],
      sentence: `This is not valid YAML: ${sentence(message)} Words with a colon, a # or quotes in them stand in quotes as a whole.`,
    }));
    return { value: undefined, faults, placeOf: () => 0 };
  }
  const value: unknown = document.toJS();
  const placeOf = (path: readonly PropertyKey[], key?: string) => place(document, path, key);
  const faults = complaints(schema, value).map(({ path, key, sentence }) => ({
    offset: placeOf(path, key),
    sentence,
  }));
  return { value, faults, placeOf };
}

const sentence = (words: string): string => (/[.!?]$/.test(words) ? words : `${words}.`);

/** A quote that is never closed is missed at the end of the file; it was forgotten where it opens. */
function lastQuoted(document: Document): number {
  let offset = 0;
  visit(document, {
    Scalar: (_, { type, range }) => {
      if (type?.startsWith('QUOTE') === true) offset = range?.[0] ?? offset;
    },
  });
  return offset;
}

function place(document: Document, path: readonly PropertyKey[], key?: string): number {
  const full = key === undefined ? path : [...path, key];
  for (let length = full.length; length > 0; length -= 1) {
    const parent: unknown =
      length === 1 ? document.contents : document.getIn(full.slice(0, length - 1), true);
    const last = full[length - 1];
    if (isMap(parent)) {
      const pair = parent.items.find((item) => isScalar(item.key) && item.key.value === last);
      if (pair !== undefined && isNode(pair.key)) return pair.key.range?.[0] ?? 0;
    }
    const node: unknown = document.getIn(full.slice(0, length), true);
    if (isNode(node)) return node.range?.[0] ?? 0;
  }
  return 0;
}
