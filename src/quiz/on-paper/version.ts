/** Which questions a sheet was drawn from, as a mark of six signs to read off paper. */
import { hashOf } from './hash.ts';

/** Raised when the same questions would give another sheet. */
const FORM = 3;
/** The 32 signs of Crockford's base 32: none of I, L, O and U, which are taken for others. */
const SIGNS = '0123456789abcdefghjkmnpqrstvwxyz';
const LENGTH = 6;

/** @param texts the questions of each lesson as they came over the line */
export function versionOf(texts: readonly string[]): string {
  const hash = hashOf([FORM, ...texts].join('\n'));
  return Array.from({ length: LENGTH }, (_, i) => SIGNS.charAt((hash >>> (5 * i)) & 31)).join('');
}

/**
 * A version as somebody typed it.
 * @returns '' if the field is empty, undefined if it is none
 */
export function readVersion(typed: string): string | undefined {
  const text = typed.trim().toLowerCase().replaceAll('o', '0').replace(/[il]/g, '1');
  const known = Array.from(text).every((sign) => SIGNS.includes(sign));
  return text === '' || (text.length === LENGTH && known) ? text : undefined;
}
