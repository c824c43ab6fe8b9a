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

export interface DataTableProps {
  /** What the table shows; also its caption. */
  readonly caption: string;
  /** The first column heads the rows. */
  readonly columns: readonly TableColumn[];
  readonly most?: number;
  readonly summary?: string;
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
 * The numbers behind a picture, from the same arrays. The rows are made only while the fold is
 * open: a table nobody looks at would otherwise be redrawn at every move of a slider.
 */
export function DataTable({ caption, columns, most = 25, summary = words.table }: DataTableProps) {
  const system = useUnits();
  const [open, setOpen] = useState(false);
  const [first] = columns;
  const total =
    first === undefined ? 0 : 'words' in first ? first.words.length : first.values.length;
  const rows = open ? pickRows(total, most) : [];
  return (
    <details class="data-table" onToggle={(event) => setOpen(event.currentTarget.open)}>
      <summary>{summary}</summary>
      {open && (
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
      )}
    </details>
  );
}
