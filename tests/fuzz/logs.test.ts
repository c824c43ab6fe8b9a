/** Logs of scan tools, cut, doubled and edited, all the way to what diagnosis is told. */
import { readFileSync } from 'node:fs';
import * as fc from 'fast-check';
import { expect, test } from 'vitest';
import {
  analyse,
  cleaned,
  diagnosisReadings,
  findLayout,
  guessColumns,
  guessRanges,
  readSeries,
  readTable,
  sayings,
  textOf,
  type Mapping,
} from '../../src/log/index.ts';
import { inText } from './damage.ts';
import { expectPlain, fuzz, growth, leaveFigures } from './kit.ts';

leaveFigures('logs');

const RATIOS = { drive: 4, reverse: 3.4 };
/** The first selection of a range, from a little before to what it does: short enough to be read thousands of times. */
const shortened = (name: string): string => {
  const lines = readFileSync(`public/logs/${name}.csv`, 'utf8').split('\n');
  const selected = lines.findIndex((line) => /[,;\t]"?(?:D|R|Drive|Reverse)"?[,;\t]/.test(line));
  return [...lines.slice(0, 8), ...lines.slice(selected - 20, selected + 130)].join('\n');
};
const logs = ['practice-1', 'practice-2', 'practice-3'].map(shortened);

/** Lines that no tool writes, between those that one does. */
const strange = fc.oneof(
  fc.constantFrom(
    '"',
    '""""',
    ';;;;;;;;;;;;',
    ',',
    '\t\t',
    '1e999,1e999,1e999',
    'NaN,Infinity,-Infinity',
    '__proto__,constructor,toString',
    'Time,Time,Time,Time',
    's,rpm,rpm,°C',
    '00:00:00,1,2,3',
    '=1+1,+1,-1,@1',
    '0,0,0,0,0,0,0,0,0,0',
    '-1,-1,-1,-1',
    '99999999999999999999,1,1',
  ),
  fc.string({ unit: 'binary', maxLength: 60 }),
);
const withLines = fc
  .tuple(fc.constantFrom(...logs), fc.array(fc.tuple(fc.nat(170), strange), { maxLength: 12 }))
  .map(([log, more]) => {
    const lines = log.split('\n');
    for (const [at, line] of more) lines.splice(at, 1, line);
    return lines.join('\n');
  });
const cellsChanged = fc
  .tuple(
    fc.constantFrom(...logs),
    fc.array(fc.tuple(fc.nat(9999), fc.oneof(strange, fc.double().map(String))), { maxLength: 20 }),
  )
  .map(([log, changes]) => {
    const parts = log.split(/([,;\t\n])/);
    for (const [at, cell] of changes) parts[(at * 2) % parts.length] = cell;
    return parts.join('');
  });

/**
 * The way that the page goes with a file, with the columns as their names suggest.
 * @returns how many engagements it found
 */
function readAll(bytes: Uint8Array): number {
  const text = textOf(bytes);
  if (typeof text !== 'string') {
    expect(typeof text.kind).toBe('string');
    return 0;
  }
  const layout = findLayout(text);
  if (layout === undefined) return 0;
  const table = readTable(text, layout);
  const columns = guessColumns(layout.names, layout.units);
  const range = columns.range?.column;
  const said = range === undefined ? undefined : table.columns[range];
  const mapping: Mapping = {
    columns,
    ranges: said === undefined ? {} : guessRanges(sayings(said)),
  };
  expectPlain(mapping);
  const { series, troubles } = readSeries(table, mapping);
  for (const trouble of troubles) expect(typeof trouble.kind).toBe('string');
  if (series === undefined) return 0;
  cleaned(series);
  const log = analyse(series, RATIOS);
  for (const { stop, slip } of log.engagements) {
    if (stop.kind === 'stopped') {
      expect(stop.after.low).toBeLessThanOrEqual(stop.after.high);
      expect(Number.isFinite(stop.after.high)).toBe(true);
    }
    if (slip.kind === 'measured') expect(Number.isFinite(slip.peak)).toBe(true);
  }
  for (const reading of diagnosisReadings(log.engagements)) {
    expect(Number.isFinite(reading.temperature_C)).toBe(true);
    expect(reading.value === null || Number.isFinite(reading.value)).toBe(true);
  }
  return log.engagements.length;
}

const encoder = new TextEncoder();
test('undamaged, each has an engagement that is timed', () => {
  for (const log of logs) expect(readAll(encoder.encode(log))).toBeGreaterThan(0);
});

fuzz(
  'Logs',
  12_000,
  fc.oneof(
    { arbitrary: withLines, weight: 4 },
    { arbitrary: cellsChanged, weight: 4 },
    { arbitrary: fc.constantFrom(...logs).chain(inText), weight: 4 },
    { arbitrary: fc.string({ unit: 'binary', maxLength: 400 }), weight: 1 },
  ),
  (text) => void readAll(encoder.encode(text)),
);
fuzz(
  'Files of any bytes, opened as a log',
  6000,
  fc.uint8Array({ maxLength: 400 }),
  (bytes) => void readAll(bytes),
);

const row = (i: number): string => `${(i / 10).toFixed(1)},${700 + (i % 7)},${i % 700},0`;
growth('The longest log', 400, {
  rows: (n) => {
    const rows = Array.from({ length: n * 4 }, (_, i) => row(i)).join('\n');
    const bytes = encoder.encode(`Time (s),Engine (rpm),Turbine (rpm),Output (rpm)\n${rows}`);
    return () => void readAll(bytes);
  },
  columns: (n) => {
    const line = Array.from({ length: n * 5 }, (_, i) => i).join(',');
    const bytes = encoder.encode(`${line}\n`.repeat(8));
    return () => void readAll(bytes);
  },
  'open quotes': (n) => {
    const bytes = encoder.encode(`a,b\n${'1,"2\n'.repeat(n * 10)}`);
    return () => void readAll(bytes);
  },
  spaces: (n) => {
    const bytes = encoder.encode(`a,b\n1,2\n3,4${' '.repeat(n * 200)}x\n1,2\n`);
    return () => void readAll(bytes);
  },
});
