import Papa from 'papaparse';
import { clockIn, decimalMarkOf, isBlank, numberIn, type DecimalMark } from './cells.ts';
import { unitIn, unitInName } from './unit-words.ts';

export const SEPARATORS = [';', '\t', ','] as const;
export type Separator = (typeof SEPARATORS)[number];

/** How a file is laid out. */
export interface Layout {
  readonly separator: Separator;
  readonly decimalMark: DecimalMark;
  /** One for each column; made up where the file has none ("" then). */
  readonly names: readonly string[];
  /** What a row of units or the end of the name says; "" where nothing does. */
  readonly units: readonly string[];
  /** Rows before the first row of readings. */
  readonly firstRow: number;
  /** The first rows of readings, as they stand. */
  readonly sample: readonly (readonly string[])[];
}

const HEAD = 200;

/** As many lines as a header can be long, whole. */
const headOf = (text: string): string => {
  let end = 0;
  for (let line = 0; line < HEAD && end >= 0; line += 1) end = text.indexOf('\n', end + 1);
  return end < 0 ? text : text.slice(0, end);
};

const rowsIn = (head: string, delimiter: string): readonly (readonly string[])[] =>
  Papa.parse<string[]>(head, { delimiter, skipEmptyLines: false }).data;

const isReading = (cell: string, mark: DecimalMark): boolean =>
  !Number.isNaN(numberIn(cell, mark)) || !Number.isNaN(clockIn(cell));

interface Laid {
  readonly rows: readonly (readonly string[])[];
  readonly separator: Separator;
  readonly mark: DecimalMark;
  readonly first: number;
  readonly width: number;
  readonly score: number;
}

/** Rows of readings begin where two or more cells are numbers, and so are they in the row after it. */
function lay(head: string, separator: Separator, given?: DecimalMark): Laid {
  const rows = rowsIn(head, separator);
  const mark = given ?? decimalMarkOf(rows.flat());
  const numbers = rows.map((row) => row.filter((cell) => isReading(cell, mark)).length);
  const first = rows.findIndex(
    (_, i) =>
      (numbers[i] ?? 0) >= 2 &&
      // A last line may be alone, or followed by the empty one that ends a file.
      ((numbers[i + 1] ?? 0) >= 2 || i >= rows.length - 2),
  );
  const data = first < 0 ? [] : rows.slice(first).filter((row) => row.length > 1);
  const cells = data.flat();
  const width = Math.max(0, ...data.map((row) => row.length));
  const good = cells.filter((cell) => isReading(cell, mark) || isBlank(cell)).length;
  // More columns win among equals: a comma that parts columns also reads as a decimal.
  const score = cells.length === 0 ? 0 : good / cells.length + width / 1000;
  return { rows, separator, mark, first, width, score };
}

const filled = (row: readonly string[]): number => row.filter((cell) => cell.trim() !== '').length;

/** The layout of a log; undefined where there is no table of readings in it. */
export function findLayout(
  text: string,
  given: { readonly separator?: Separator; readonly decimalMark?: DecimalMark } = {},
): Layout | undefined {
  const head = headOf(text);
  const tried = (given.separator === undefined ? SEPARATORS : [given.separator])
    .map((separator) => lay(head, separator, given.decimalMark))
    .filter(({ first, width }) => first >= 0 && width > 1)
    .sort((a, b) => b.score - a.score);
  const [best] = tried;
  if (best === undefined) return undefined;
  const { rows, first, width, mark, separator } = best;
  const above = rows.slice(0, first);
  const isUnits = (row: readonly string[]): boolean => {
    const words = row.filter((cell) => cell.trim() !== '');
    return (
      words.length > 0 && words.filter((cell) => unitIn(cell) !== '').length * 2 > words.length
    );
  };
  const unitRow = above.findLast((row) => filled(row) * 2 >= width && isUnits(row));
  const nameRow = above.findLast(
    (row) => row !== unitRow && filled(row) * 2 >= width && filled(row) > 1,
  );
  const columns = Array.from({ length: width }, (_, column) => column);
  const names = columns.map((column) => nameRow?.[column]?.trim() ?? '');
  return {
    separator,
    decimalMark: mark,
    names,
    units: columns.map((column) => {
      const own = unitIn(unitRow?.[column] ?? '');
      return own === '' ? unitInName(names[column] ?? '') : own;
    }),
    firstRow: first,
    sample: rows.slice(first, first + 5),
  };
}
