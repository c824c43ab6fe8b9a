import { computed } from '@preact/signals';
import { keptRecords } from '../../storage/kept-records.ts';
import { dated, timedId } from '../../storage/dated.ts';
import {
  isSheetDeleted,
  mergeSheets,
  newSheet,
  sheetChangedAt,
  withSheetDeleted,
  type OwnSheet,
  type TypedField,
} from '../../storage/sheets/own-sheet.ts';
import { sheetFile } from '../../storage/sheets/sheet-file.ts';
import type { SheetStore } from '../../storage/sheets/sheet-store.ts';

interface Needs {
  readonly store: Pick<SheetStore, 'read' | 'write' | 'leave' | 'watch'>;
  readonly now?: () => number;
}

/** The sheets of this device, as this page has them. */
export function makeSheets({ store, now = Date.now }: Needs) {
  const kept = keptRecords<OwnSheet>({
    store,
    file: sheetFile,
    merge: mergeSheets,
    isDeleted: isSheetDeleted,
    withDeleted: withSheetDeleted,
    now,
  });
  const { all, standing, change } = kept;
  return {
    ...kept,
    sheet: (id: string): OwnSheet | undefined => all.value.get(id),
    /** Those that stand, changed last first. */
    listed: computed(() =>
      standing.value.toSorted((a, b) => sheetChangedAt(b) - sheetChangedAt(a)),
    ),
    add: (name: string): OwnSheet => {
      const at = now();
      const sheet = newSheet(timedId(at), at, name);
      change(sheet, 'now');
      return sheet;
    },
    rename: (sheet: OwnSheet, name: string): void => {
      if (sheet.name.value !== name) change({ ...sheet, name: dated(sheet.name, now(), name) });
    },
    /** Null: assumed again. */
    type: (sheet: OwnSheet, path: string, value: TypedField | null): void => {
      const entry = dated(sheet.fields[path], now(), value);
      change({ ...sheet, fields: { ...sheet.fields, [path]: entry } });
    },
    fileOf: (sheet: OwnSheet): string => sheetFile.write([sheet]),
  };
}
export type SheetsModel = ReturnType<typeof makeSheets>;
