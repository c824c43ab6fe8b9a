import { words } from '../quantity/words.en.ts';
import { DAY_MS, type Day } from '../quiz/schedule/day.ts';

let printer: Intl.DateTimeFormat | undefined;

/**
 * A day as a reader writes it. It has no zone of its own, so none is put on it.
 * @example dayInWords(20454) // 'Jan 1, 2026'
 */
export function dayInWords(day: Day): string {
  printer ??= new Intl.DateTimeFormat(words.locale, { dateStyle: 'medium', timeZone: 'UTC' });
  return printer.format(new Date(day * DAY_MS));
}
