/** Sheets of one's own as a file. */
import { recordFile } from '../kept-file.ts';
import type { OwnSheet } from './own-sheet.ts';
import { readOwnSheet } from './sheet-form.ts';

export const sheetFile = recordFile<OwnSheet>({
  kind: 'hot-clutch:transmissions',
  version: 1,
  place: 'transmissions',
  read: readOwnSheet,
});
