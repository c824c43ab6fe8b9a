import { isNumeric } from '../../diagnosis/index.ts';
import { measuredAs } from '../../planner/amounts.ts';
import type { SheetReading } from './sheet.ts';

/** What was typed, with the unit that it stood for where none was typed. */
export function typedIn({ taken, typed, units }: SheetReading): string {
  if (typed === '' || taken === null || !isNumeric(taken.test) || /\p{L}|°|%|″/u.test(typed))
    return typed;
  return `${typed} ${measuredAs[taken.test.kind].quantity[units].symbol}`;
}
