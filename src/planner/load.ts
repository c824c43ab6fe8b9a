import { keptTable } from '../diagnosis/kept-table.ts';
import { Assumed } from './FromYours.tsx';
import { Leak } from './Leak.tsx';
import { Causes, Next } from './Lists.tsx';
import { Clashes, inShort, Now } from './Now.tsx';

/** Fetched when somebody comes to the planner, and by nobody else: it carries the table, and what shows its answers. */
export const table = keptTable;
export const answers = { Assumed, Causes, Clashes, inShort, Leak, Next, Now };
