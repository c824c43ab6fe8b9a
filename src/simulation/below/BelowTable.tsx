import type { ComponentChildren } from 'preact';

interface BelowTableProps {
  /** Of the figure, for what only this table has. */
  readonly class: string;
  readonly head: string;
  readonly caption: string;
  readonly columns: readonly string[];
  /** The first cell of a row names it. */
  readonly rows: readonly { readonly key: string; readonly cells: readonly ComponentChildren[] }[];
  /** What is said below it. */
  readonly children?: ComponentChildren;
}

/** A table below a simulation: what the picture shows, as numbers. Without rows it is its caption. */
export function BelowTable({
  class: name,
  head,
  caption,
  columns,
  rows,
  children,
}: BelowTableProps) {
  return (
    <figure class={`below-table ${name}`}>
      <figcaption>
        <strong>{head}</strong> {caption}
      </figcaption>
      {rows.length > 0 && (
        <table>
          <thead>
            <tr>
              {columns.map((column) => (
                <th key={column} scope="col">
                  {column}
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {rows.map(({ key, cells: [first, ...rest] }) => (
              <tr key={key}>
                <th scope="row">{first}</th>
                {rest.map((cell, i) => (
                  <td key={columns[i + 1]}>{cell}</td>
                ))}
              </tr>
            ))}
          </tbody>
        </table>
      )}
      {children}
    </figure>
  );
}
