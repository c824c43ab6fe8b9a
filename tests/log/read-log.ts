import { readFileSync } from 'node:fs';
import {
  analyse,
  findLayout,
  guessColumns,
  guessRanges,
  readSeries,
  readTable,
  sayings,
  textOf,
  type LogRead,
  type Mapping,
  type Ratios,
  type SeriesRead,
  type Table,
} from '../../src/log/index.ts';

/** A log as the page reads it, the mapping as guessed but for what is given. */
export function opened(text: string): { readonly table: Table; readonly mapping: Mapping } {
  const layout = findLayout(text);
  if (layout === undefined) throw new Error('No table of readings.');
  const table = readTable(text, layout);
  const columns = guessColumns(layout.names, layout.units);
  const range = table.columns[columns.range?.column ?? -1];
  return { table, mapping: { columns, ranges: range ? guessRanges(sayings(range)) : {} } };
}

export function seriesOf(text: string): SeriesRead {
  const { table, mapping } = opened(text);
  return readSeries(table, mapping);
}

export function logRead(text: string, ratios: Ratios = { drive: 4, reverse: 3.4 }): LogRead {
  const { series, troubles } = seriesOf(text);
  if (series === undefined) throw new Error(JSON.stringify(troubles));
  return analyse(series, ratios);
}

export function exampleText(id: string): string {
  const text = textOf(readFileSync(`public/logs/${id}.csv`));
  if (typeof text !== 'string') throw new Error(`${id} is no text.`);
  return text;
}
