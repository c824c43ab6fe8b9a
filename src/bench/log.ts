import {
  analyse,
  findLayout,
  guessColumns,
  guessRanges,
  readSeries,
  readTable,
  sayings,
} from '../log/index.ts';
import { exampleLog } from '../log/examples/logs.ts';
import { timed, type Row } from './row.ts';

const ROWS = 200_000;
const ROUNDS = 8;

/** A log of 200,000 rows: the rows of an example over and over, each copy later by its length. */
export function longLog(rows: number): string {
  const [head = '', ...lines] = exampleLog('practice-1').trimEnd().split('\n');
  const last = Number(lines.at(-1)?.split(',')[0] ?? 0) + 60;
  const all = Array.from({ length: rows }, (_, row) => {
    const line = lines[row % lines.length] ?? '';
    const comma = line.indexOf(',');
    const time = Number(line.slice(0, comma)) + last * Math.floor(row / lines.length);
    return `${time.toFixed(3)}${line.slice(comma)}`;
  });
  return `${head}\n${all.join('\n')}\n`;
}

/** From text to findings, as the worker does it; aim: under a second. */
export function benchLog(): readonly Row[] {
  const text = longLog(ROWS);
  const read: number[] = [];
  const found: number[] = [];
  for (let round = 0; round < ROUNDS; round += 1) {
    const begun = performance.now();
    const layout = findLayout(text);
    if (layout === undefined) throw new Error('The log of the bench has no table.');
    const table = readTable(text, layout);
    const parsed = performance.now();
    const columns = guessColumns(layout.names, layout.units);
    const range = table.columns[columns.range?.column ?? -1];
    const ranges = range ? guessRanges(sayings(range)) : {};
    const { series } = readSeries(table, { columns, ranges });
    if (series === undefined) throw new Error('The log of the bench has no series.');
    analyse(series, { drive: 4, reverse: 3.4 });
    read.push(parsed - begun);
    found.push(performance.now() - begun);
  }
  return [
    timed('a log of 200,000 rows of 10 columns: text to numbers', read, 'ms', {
      at: 'p50',
      most: 800,
    }),
    timed('the same, to its findings', found, 'ms', { at: 'p50', most: 1000 }),
  ];
}
