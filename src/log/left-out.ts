import { isBlank } from './cells.ts';
import { UNITS, type Mapping, type Role } from './roles.ts';
import { fileRowOf, sayingAt, type Column, type RowsSeen, type Table } from './table.ts';

/** What stands in a file and was not read. Rows without a time, and those with the time of another, are counted in the series. */
export interface LeftOut {
  readonly skipped: RowsSeen;
  readonly short: RowsSeen;
  /** Of each column of numbers in use, the rows that say something else, and what the first of them says. */
  readonly unread: readonly (RowsSeen & { readonly role: Role; readonly saying: string })[];
}

/** A tool that reads a slow signal in every tenth row writes one and the same word in the nine between: nothing is wrong there. */
const USUAL = 0.1;

/** The codes of such words. */
function usualBlanks({ coded = new Uint16Array(), words }: Column): ReadonlySet<number> {
  const counts = new Map<number, number>();
  for (const code of coded) counts.set(code, (counts.get(code) ?? 0) + 1);
  const isUsual = ([code, count]: [number, number]): boolean =>
    count > USUAL * coded.length && isBlank(words[code - 1] ?? '');
  return new Set([...counts].filter(isUsual).map(([code]) => code));
}

export function leftOut(table: Table, { columns }: Mapping): LeftOut {
  const unread = (Object.keys(columns) as Role[]).flatMap((role) => {
    const column = table.columns[columns[role]?.column ?? -1];
    if (role === 'time' || UNITS[role].length === 0 || column?.coded === undefined) return [];
    const usual = usualBlanks(column);
    const isUnread = (code: number): boolean => code !== 0 && !usual.has(code);
    const first = column.coded.findIndex(isUnread);
    if (first < 0) return [];
    const count = column.coded.reduce((sum, code) => sum + Number(isUnread(code)), 0);
    return [{ role, count, first: fileRowOf(table, first), saying: sayingAt(column, first) }];
  });
  return { skipped: table.skipped, short: table.short, unread };
}
