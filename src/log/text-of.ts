import type { FileTrouble } from './trouble.ts';

/** Beginnings of files that people take for a log by mistake. */
const BEGINNINGS: readonly (readonly [readonly number[], FileTrouble])[] = [
  [[0x89, 0x50, 0x4e, 0x47], { kind: 'foreign', what: 'picture' }],
  [[0xff, 0xd8, 0xff], { kind: 'foreign', what: 'picture' }],
  [[0x47, 0x49, 0x46, 0x38], { kind: 'foreign', what: 'picture' }],
  [[0x52, 0x49, 0x46, 0x46], { kind: 'foreign', what: 'picture' }],
  [[0x25, 0x50, 0x44, 0x46], { kind: 'foreign', what: 'pdf' }],
  // Also what a spreadsheet program keeps its own files in.
  [[0x50, 0x4b, 0x03, 0x04], { kind: 'foreign', what: 'archive' }],
  [[0x1f, 0x8b], { kind: 'foreign', what: 'archive' }],
  [[0xd0, 0xcf, 0x11, 0xe0], { kind: 'foreign', what: 'archive' }],
];

/** As the byte-order mark says; without one UTF-8, and where that does not fit, the old code page of Western loggers. */
function decoded(bytes: Uint8Array): string | undefined {
  const [a, b] = bytes;
  if (a === 0xff && b === 0xfe) return new TextDecoder('utf-16le').decode(bytes);
  if (a === 0xfe && b === 0xff) return new TextDecoder('utf-16be').decode(bytes);
  try {
    return new TextDecoder('utf-8', { fatal: true }).decode(bytes);
  } catch {
    return new TextDecoder('windows-1252').decode(bytes);
  }
}

/** The text of a file, without its byte-order mark, or why it is none. */
export function textOf(bytes: Uint8Array): string | FileTrouble {
  const known = BEGINNINGS.find(([begins]) => begins.every((byte, i) => bytes[i] === byte));
  if (known) return known[1];
  const text = decoded(bytes) ?? '';
  const head = text.slice(0, 4000);
  if (head.trim() === '') return { kind: 'empty' };
  if (/^\s*<(?:!doctype|\?xml|html|svg)/iu.test(head)) return { kind: 'foreign', what: 'markup' };
  if (/^\s*(?:\{\s*["}]|\[\s*[[{\]])/u.test(head)) return { kind: 'foreign', what: 'json' };
  // eslint-disable-next-line no-control-regex -- control characters are what is looked for
  if (/[\u0000-\u0008\u000e-\u001a]/u.test(head)) return { kind: 'binary' };
  return text;
}
