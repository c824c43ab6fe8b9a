import { language } from '../language/current.ts';

/** A date as a work order has it. */
export const dateOf = (at: number): string =>
  new Intl.DateTimeFormat(language.locale, { dateStyle: 'medium' }).format(at);
export const dateAndTimeOf = (at: number): string =>
  new Intl.DateTimeFormat(language.locale, { dateStyle: 'medium', timeStyle: 'short' }).format(at);
