import { asWritten } from './written-numbers.ts';

/** So much of what was typed is echoed; a sentence is for a person. */
const MOST = 40;

/** Text cut to what a sentence can carry. */
export function cut(text: string, most = MOST): string {
  // By code points, so that no half of a pair is left over.
  const points = Array.from(text.slice(0, 2 * most + 2));
  return points.length > most ? `${points.slice(0, most - 3).join('')}...` : text;
}

/** What was given, short enough for a sentence; what has an inside is named, not printed. */
export function shown(value: unknown): string {
  if (value === undefined) return 'missing';
  if (value === null || typeof value === 'boolean') return String(value);
  if (typeof value === 'number') return Number.isNaN(value) ? 'not a number' : String(value);
  if (typeof value === 'string') {
    const number = asWritten(value);
    return number === undefined ? JSON.stringify(cut(value)) : cut(number);
  }
  return Array.isArray(value) ? 'a list' : 'an object';
}
