import Papa from 'papaparse';
import { clockIn, numberIn } from './cells.ts';
import type { Layout } from './layout.ts';

/** One column, as read: numbers where there are some, and words, each with its own number in `words`. */
export interface Column {
  readonly name: string;
  /** NaN where the cell is no number. */
  readonly numbers: Float64Array;
  /** Which word each row has, counted from 1; 0 for none. Left out of columns that are numbers throughout. */
  readonly coded?: Uint16Array;
  readonly words: readonly string[];
}

export interface Table {
  readonly columns: readonly Column[];
  readonly rows: number;
  /** Which row of the file the first one is, from 1. */
  readonly firstRow: number;
  /** Rows of the file among the readings that hold none, and are left out; and those that end before their last column. */
  readonly skipped: RowsSeen;
  readonly short: RowsSeen;
  /** All rows of the file that are no row here, empty ones among them. */
  readonly gaps: readonly number[];
}

/** How many rows there are of a kind, and which row of the file the first of them is, from 1; 0 for none. */
export interface RowsSeen {
  readonly count: number;
  readonly first: number;
}

/** The rows seen with one more. */
export const withRow = ({ count, first }: RowsSeen, row: number): RowsSeen => ({
  count: count + 1,
  first: count === 0 ? row : first,
});
export const NO_ROWS: RowsSeen = { count: 0, first: 0 };

/** More rows than an hour at 100 readings a second. */
export const MOST_ROWS = 2_000_000;
/** A range selector has a dozen words; a column of remarks is of no use here. */
const MOST_WORDS = 200;

/** Of a column at first: few, since a file that is no log can be one line of a hundred thousand cells. */
const FIRST_ROWS = 16;

class Growing {
  numbers = new Float64Array(FIRST_ROWS);
  coded: Uint16Array | undefined;
  readonly codes = new Map<string, number>();

  put(row: number, cell: string, mark: Layout['decimalMark']): void {
    if (row >= this.numbers.length) this.grow();
    const number = numberIn(cell, mark);
    this.numbers[row] = number;
    if (!Number.isNaN(number)) return;
    const clock = clockIn(cell);
    if (!Number.isNaN(clock)) this.numbers[row] = clock;
    else this.word(row, cell.trim());
  }

  blank(row: number): void {
    if (row >= this.numbers.length) this.grow();
    this.numbers[row] = Number.NaN;
  }

  private word(row: number, text: string): void {
    if (text === '') return;
    let code = this.codes.get(text);
    if (code === undefined) {
      if (this.codes.size >= MOST_WORDS) return;
      code = this.codes.size + 1;
      this.codes.set(text, code);
    }
    this.coded ??= new Uint16Array(this.numbers.length);
    this.coded[row] = code;
  }

  private grow(): void {
    const numbers = new Float64Array(this.numbers.length * 2);
    numbers.set(this.numbers);
    this.numbers = numbers;
    if (this.coded === undefined) return;
    const coded = new Uint16Array(numbers.length);
    coded.set(this.coded);
    this.coded = coded;
  }
}

/**
 * All readings of a log. Only numbers and the numbers of words are kept, so that 200,000 rows of twelve
 * columns are 20 MB and not ten times that in small pieces of text.
 *
 * @param told called with the share read so far, 0 to 1
 */
export function readTable(
  text: string,
  layout: Layout,
  told: (share: number) => void = () => {},
): Table {
  const { separator, decimalMark, names, firstRow } = layout;
  const columns = names.map(() => new Growing());
  let [skipped, short] = [NO_ROWS, NO_ROWS];
  const gaps: number[] = [];
  let row = 0;
  let seen = 0;
  Papa.parse<string[]>(text, {
    delimiter: separator,
    chunkSize: 1 << 20,
    chunk: ({ data, meta }: Papa.ParseResult<string[]>, parser: Papa.Parser) => {
      for (const cells of data) {
        seen += 1;
        if (seen <= firstRow) continue;
        if (cells.length < 2) {
          // An empty line, most of all the one that ends a file, is no row.
          if (cells.some((cell) => cell.trim() !== '')) skipped = withRow(skipped, seen);
          gaps.push(seen);
          continue;
        }
        if (cells.length < columns.length) short = withRow(short, seen);
        for (let i = 0; i < columns.length; i += 1) {
          const cell = cells[i];
          if (cell === undefined) columns[i]?.blank(row);
          else columns[i]?.put(row, cell, decimalMark);
        }
        row += 1;
      }
      told(Math.min(1, meta.cursor / text.length));
      if (row > MOST_ROWS) parser.abort();
    },
    // The types ask for it; there is nothing left to do then.
    complete: () => undefined,
  });
  return {
    rows: row,
    firstRow: firstRow + 1,
    skipped,
    short,
    gaps,
    columns: columns.map(({ numbers, coded, codes }, i) => ({
      name: names[i] ?? '',
      numbers: numbers.subarray(0, row),
      ...(coded === undefined ? {} : { coded: coded.subarray(0, row) }),
      words: [...codes.keys()],
    })),
  };
}

/** Which row of the file a row of readings is, from 1. */
export function fileRowOf({ firstRow, gaps }: Table, row: number): number {
  let at = firstRow + row;
  for (const gap of gaps) {
    if (gap > at) break;
    at += 1;
  }
  return at;
}

/** The different words and numbers of a column with few of them, most of what a range column can say. */
export function sayings({ numbers, coded, words }: Column): readonly string[] {
  const values = new Set<number>();
  for (const value of numbers) {
    if (!Number.isNaN(value)) values.add(value);
    if (values.size > 20) break;
  }
  return [
    ...(values.size > 20 ? [] : [...values].sort((a, b) => a - b).map(String)),
    ...(coded ? words : []),
  ];
}

/** What a column says in a row: a word, or a number as text; "" for nothing. */
export function sayingAt({ numbers, coded, words }: Column, row: number): string {
  const code = coded?.[row] ?? 0;
  if (code > 0) return words[code - 1] ?? '';
  const value = numbers[row] ?? Number.NaN;
  return Number.isNaN(value) ? '' : String(value);
}
