import { keptSecondTable } from '../diagnosis/kept-second-table.ts';

/** Fetched when the second training transmission is chosen: it carries its table. */
export const table = keptSecondTable;
