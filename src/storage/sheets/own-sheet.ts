/** A sheet of one's own: what somebody typed of a transmission, entry by entry; see dated.ts. What is not typed is assumed. */
import { later, laterOfEach, neverDated, type Dated } from '../dated.ts';

/** A field as it was typed, in the units that the page had then. */
export interface TypedField {
  readonly text: string;
  readonly units: 'us' | 'si';
}

export interface OwnSheet {
  readonly id: string;
  /** [ms of Unix time] */
  readonly created: number;
  readonly name: Dated<string>;
  /** By the path of the field, as ratios.first; null: emptied, so assumed. */
  readonly fields: Readonly<Record<string, Dated<TypedField | null>>>;
  /** True: deleted; the mark stays so that an older copy does not bring it back. */
  readonly deleted: Dated<boolean>;
}

export const newSheet = (id: string, at: number, name: string): OwnSheet => ({
  id,
  created: at,
  name: { at, value: name },
  fields: {},
  deleted: neverDated(false),
});

/** When anything of it was last changed, its deletion apart. */
export const sheetChangedAt = ({ name, fields }: OwnSheet): number =>
  Math.max(name.at, ...Object.values(fields).map(({ at }) => at));

/** A change after the deletion, in another tab or on another device, brings a sheet back. */
export const isSheetDeleted = (sheet: OwnSheet): boolean =>
  sheet.deleted.value && sheet.deleted.at >= sheetChangedAt(sheet);

/** Two copies of one sheet as one. */
export const mergeSheets = (a: OwnSheet, b: OwnSheet): OwnSheet => ({
  id: a.id,
  created: Math.min(a.created, b.created),
  name: later(a.name, b.name),
  fields: laterOfEach(a.fields, b.fields),
  deleted: later(a.deleted, b.deleted),
});

/** With the mark of a deletion, later than every change. */
export const withSheetDeleted = (sheet: OwnSheet, now: number, value: boolean): OwnSheet => ({
  ...sheet,
  deleted: { at: Math.max(now, sheetChangedAt(sheet) + 1, sheet.deleted.at + 1), value },
});

/** Of a deleted sheet nothing is kept but that it is. */
export const sheetMarkOnly = ({ id, created, deleted }: OwnSheet): OwnSheet => ({
  ...newSheet(id, created, ''),
  name: neverDated(''),
  deleted,
});
