/** The sheets of one's own on a device. */
import { recordStore } from '../record-store.ts';
import { isSheetDeleted, mergeSheets, sheetMarkOnly, type OwnSheet } from './own-sheet.ts';
import { readOwnSheet } from './sheet-form.ts';

const NAME = 'hot-clutch:transmissions';

export const sheetStore = (name = NAME) =>
  recordStore<OwnSheet>(name, {
    place: 'transmissions',
    read: readOwnSheet,
    merge: mergeSheets,
    isDeleted: isSheetDeleted,
    markOnly: sheetMarkOnly,
  });
export type SheetStore = ReturnType<typeof sheetStore>;
