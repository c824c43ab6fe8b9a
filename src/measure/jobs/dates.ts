import { HERE } from '../../quantity/language.ts';

/** A date as a work order has it. */
export const dateOf = (at: number): string =>
  new Intl.DateTimeFormat(HERE, { dateStyle: 'medium' }).format(at);
export const dateAndTimeOf = (at: number): string =>
  new Intl.DateTimeFormat(HERE, { dateStyle: 'medium', timeStyle: 'short' }).format(at);
