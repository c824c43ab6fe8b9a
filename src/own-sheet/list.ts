/** The sheets of this device for a page that runs on one, fetched when somebody asks for them. */
import { plantFromSheet, type Plant } from '../engine/index.ts';
import { isSheetDeleted } from '../storage/sheets/own-sheet.ts';
import { sheetStore } from '../storage/sheets/sheet-store.ts';
import { readSheet } from './read-sheet.ts';

export interface ListedSheet {
  readonly id: string;
  readonly name: string;
  readonly yours: number;
  readonly assumed: number;
  /** Null where something on it cannot be right. */
  readonly plant: Plant | null;
}

export async function listSheets(): Promise<readonly ListedSheet[]> {
  const { records } = await sheetStore().read(Date.now());
  return records
    .filter((sheet) => !isSheetDeleted(sheet))
    .map((sheet) => {
      const { whole, yours, of } = readSheet(sheet);
      return {
        id: sheet.id,
        name: sheet.name.value,
        yours,
        assumed: of - yours,
        plant: whole && plantFromSheet(whole),
      };
    });
}
