import { decodeTable, plannerOf } from '../../diagnosis/index.ts';
import { keptTable } from '../../diagnosis/kept-table.ts';

/** Fetched when somebody comes to the planner, and by nobody else: it carries the table. */
export const planner = plannerOf(decodeTable(keptTable));
