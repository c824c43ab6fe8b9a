import { decodeTable, plannerOf } from '../diagnosis/index.ts';
import { keptSecondTable } from '../diagnosis/kept-second-table.ts';

/** Fetched when the second training transmission is chosen: it carries its table. */
export const planner = plannerOf(decodeTable(keptSecondTable));
