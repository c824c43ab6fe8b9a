import { useState } from 'preact/hooks';
import { formatNumber } from '../quantity/print.ts';
import type { Quantity } from '../quantity/quantity.ts';
import { pickRows } from './table-rows.ts';
import { useUnits } from './use-units.ts';
import { words } from './words.en.ts';

export interface NumberColumn {
  readonly label: string;
  readonly quantity: Quantity;
  readonly values: readonly (number | null)[];
}
export interface WordColumn {
  readonly label: string;
  readonly words: readonly string[];
}
export type TableColumn = NumberColumn | WordColumn;

export interface TableData {
  /** What the table shows; also its caption. */
  readonly caption: string;
  /** The first column heads the rows. */
  readonly columns: readonly TableColumn[];
}

interface DataTableProps {
  /** Asked for while the fold is open, and not before. */
  readonly tables: () => readonly TableData[];
  readonly most?: number;
}

const cell = (column: TableColumn, row: number, system: 'si' | 'us'): string => {
  if ('words' in column) return column.words[row] ?? '';
  const value = column.values[row];
  return typeof value !== 'number' || !Number.isFinite(value)
    ? '–'
    : formatNumber(value, column.quantity, system);
};
const heading = (column: TableColumn, system: 'si' | 'us'): string => {
  if ('words' in column) return column.label;
  const { symbol } = column.quantity[system];
  return symbol === '' ? column.label : `${column.label}, ${symbol}`;
};

/**
 * The numbers behind a picture, from the same arrays, all its tables in one fold. The rows are made only
 * while the fold is open: a table nobody looks at would otherwise be redrawn at every move of a slider.
 */
export function DataTable({ tables, most = 25 }: DataTableProps) {
  // Written out on the server: without a script the fold opens all the same.
  const [open, setOpen] = useState(typeof document === 'undefined');
  return (
    <details class="data-table" onToggle={(event) => setOpen(event.currentTarget.open)}>
      <summary>{words.table}</summary>
      {open && tables().map((table) => <Rows key={table.caption} {...table} most={most} />)}
    </details>
  );
}

function Rows({ caption, columns, most }: TableData & { readonly most: number }) {
  const system = useUnits();
  const [first] = columns;
  const total =
    first === undefined ? 0 : 'words' in first ? first.words.length : first.values.length;
  const rows = pickRows(total, most);
  return (
    <div class="table-scroll" role="region" tabIndex={0} aria-label={caption}>
      <table>
        <caption>
          {caption}
          {rows.length < total ? ` ${words.points(String(rows.length), String(total))}` : ''}
        </caption>
        <thead>
          <tr>
            {columns.map((column, i) => (
              <th key={i} scope="col">
                {heading(column, system)}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {rows.map((row) => (
            <tr key={row}>
              {columns.map((column, i) =>
                i === 0 ? (
                  <th key={i} scope="row">
                    {cell(column, row, system)}
                  </th>
                ) : (
                  <td key={i} class={'words' in column ? undefined : 'number'}>
                    {cell(column, row, system)}
                  </td>
                ),
              )}
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  );
}
