import type { Paper } from './options.ts';

const MM_PER_INCH = 25.4;
const PX_PER_INCH = 96;
/** Margins in mm: above and below there is room for the running head and the page number. */
export const MARGINS = { top: 22, side: 18, bottom: 20 } as const;

/** Letter is 8.5 by 11 inches; A4 by ISO 216. */
const WIDTH_MM: Readonly<Record<Paper, number>> = { letter: 215.9, a4: 210 };

/** How wide a column of text is on paper [CSS px], so that charts are drawn for it. */
export const columnPx = (paper: Paper): number =>
  Math.round(((WIDTH_MM[paper] - 2 * MARGINS.side) / MM_PER_INCH) * PX_PER_INCH);
