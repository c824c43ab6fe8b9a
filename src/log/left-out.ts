import { UNITS, type Mapping, type Role } from './roles.ts';
import { fileRowOf, NO_ROWS, sayingAt, withRow, type RowsSeen, type Table } from './table.ts';

/** What stands in a file and was not read. Rows without a time, and those with the time of another, are counted in the series. */
export interface LeftOut {
  readonly skipped: RowsSeen;
  readonly short: RowsSeen;
  /** Of each column of numbers in use, the rows that say something else, and what the first of them says. */
  readonly unread: readonly (RowsSeen & { readonly role: Role; readonly saying: string })[];
}

export function leftOut(table: Table, { columns }: Mapping): LeftOut {
  const unread = (Object.keys(columns) as Role[]).flatMap((role) => {
    const column = table.columns[columns[role]?.column ?? -1];
    if (role === 'time' || UNITS[role].length === 0 || column?.coded === undefined) return [];
    let seen = NO_ROWS;
    let saying = '';
    column.coded.forEach((code, row) => {
      if (code === 0) return;
      if (seen.count === 0) saying = sayingAt(column, row);
      seen = withRow(seen, fileRowOf(table, row));
    });
    return [{ role, ...seen, saying }];
  });
  return { skipped: table.skipped, short: table.short, unread };
}
