import { readFileSync, statSync } from 'node:fs';
import { cut } from './shown.ts';
import { keepAsWritten } from './written-numbers.ts';

/** What may be read at once. It is far more than anybody asks, and parses within a second. */
export const MOST_BYTES = 16e6;
/** Brackets within brackets; the parser itself slows down badly beyond. */
const DEEPEST = 10_000;

export type Requests = { readonly requests: unknown } | { readonly error: string };

const reasons: Readonly<Record<string, string>> = {
  ENOENT: 'there is no such file',
  EISDIR: 'it is a folder, not a file',
  EACCES: 'you may not read it',
  ENOTDIR: 'part of the path is a file, not a folder',
  ENAMETOOLONG: 'the name is too long',
};

/** Reads the requests; what cannot be read at all is refused like a bad request, in one sentence. `-` is standard input. */
export function readRequests(path: string): Requests {
  const source = path === '-' ? 'Standard input' : cut(path, 200);
  let text: string;
  try {
    // A file's size is asked before it is read, since a huge one may not fit at all.
    if (path !== '-' && statSync(path).size > MOST_BYTES)
      return tooLarge(source, statSync(path).size);
    text = readFileSync(path === '-' ? 0 : path, 'utf8');
  } catch (thrown) {
    const { code = '', message } = thrown as NodeJS.ErrnoException;
    return { error: `${source} cannot be read: ${reasons[code] ?? message}.` };
  }
  if (text.length > MOST_BYTES) return tooLarge(source, text.length);
  return parseRequests(source, text);
}

function tooLarge(source: string, bytes: number): Requests {
  const megabytes = (size: number): string => (size / 1e6).toFixed(1);
  return {
    error: `${source} is ${megabytes(bytes)} MB of requests; at most ${megabytes(MOST_BYTES)} MB are answered at once. Ask in several files.`,
  };
}

/** Requests out of the text of a file, or the one sentence why not. */
export function parseRequests(source: string, raw: string): Requests {
  // Editors on Windows put a byte order mark before the text.
  const text = raw.replace(/^\uFEFF/, '');
  if (text.trim() === '')
    return { error: `${source} is empty; it must be one request or an array of them, as JSON.` };
  if (deeperThan(DEEPEST, text)) {
    return { error: `${source} is nested more than ${DEEPEST} deep; no request needs that.` };
  }
  try {
    return { requests: JSON.parse(keepAsWritten(text)) as unknown };
  } catch {
    return { error: `${source} is not JSON: ${complaint(text)}.` };
  }
}

/** The parser's own complaint about the text as it stands, on one line. */
function complaint(text: string): string {
  try {
    JSON.parse(text);
  } catch (thrown) {
    return cut((thrown as Error).message.replace(/\s+/g, ' ').replace(/\.$/, ''), 160);
  }
  return 'it does not parse';
}

function deeperThan(most: number, text: string): boolean {
  let depth = 0;
  let quoted = false;
  for (let i = 0; i < text.length; i += 1) {
    const sign = text[i];
    if (quoted) {
      if (sign === '\\') i += 1;
      else if (sign === '"') quoted = false;
    } else if (sign === '"') quoted = true;
    else if (sign === '[' || sign === '{') {
      depth += 1;
      if (depth > most) return true;
    } else if (sign === ']' || sign === '}') depth -= 1;
  }
  return false;
}
