/** The hypotheses that are weighed, one for each severity: the table, interpolated and ready to be held against readings. */
import { CLASSES, NODES, severitiesOf, hasSeverity, type FaultClass } from './hypotheses.ts';
import type { CodeSigns } from './outcome-tables.ts';
import { SHARED, type Cell, type Row, type Table } from './table.ts';
import { columnOf, discrepancyOf, errorOf, NUMERIC } from './tests.ts';

/** A reading as a hypothesis has it. */
export interface Expected {
  readonly mean: number;
  readonly moves: Float64Array;
  /** What is its own: error, difference from car to car, curvature and the step to the next severity; a variance. */
  readonly own: number;
}
/** One hypothesis: a class at a severity. */
export interface Hypothesis {
  readonly of: FaultClass;
  /** Its place in CLASSES. */
  readonly index: number;
  readonly severity: number;
  /** In the order of NUMERIC. */
  readonly expected: readonly Expected[];
  readonly signs: CodeSigns;
  /** Where two faults are tried together: the other one. */
  readonly second?: Pick<Hypothesis, 'of' | 'severity'>;
}

const mix = (a: number, b: number, share: number): number => a + (b - a) * share;

function between(a: Cell, b: Cell, share: number): Cell {
  return {
    nominal: mix(a.nominal, b.nominal, share),
    mean: mix(a.mean, b.mean, share),
    moves: Float64Array.from({ length: SHARED }, (_, i) =>
      mix(a.moves[i] ?? 0, b.moves[i] ?? 0, share),
    ),
    curvature: mix(a.curvature, b.curvature, share),
  };
}

function rowAt(rows: readonly Row[], severity: number): Row {
  const [first] = rows;
  if (first === undefined) throw new Error('A class has no row in the table.');
  if (rows.length === 1) return first;
  const step = NODES[0] ?? 1;
  const place = Math.min(NODES.length - 1, Math.max(0, severity / step - 1));
  const below = Math.min(rows.length - 2, Math.floor(place + 1e-9));
  const share = place - below;
  const [a, b] = [rows[below] ?? first, rows[below + 1] ?? first];
  return NUMERIC.map((_test, i) => {
    const [one, other] = [a[i], b[i]];
    if (one === undefined || other === undefined) throw new Error('A row is cut short.');
    return share < 1e-9 ? one : between(one, other, share);
  });
}

const nominalOf = (row: Row, id: string): number => row[columnOf.get(id) ?? -1]?.nominal ?? 0;
const signsOf = (row: Row): CodeSigns => {
  const stop = (range: string) =>
    Math.max(nominalOf(row, `stopTime.${range}.hot`), nominalOf(row, `stopTime.${range}.cold`));
  const slip = (range: string) => nominalOf(row, `takeoffSlip.${range}.hot`);
  return {
    stop: { drive: stop('drive'), reverse: stop('reverse') },
    slip: { drive: slip('drive'), reverse: slip('reverse') },
    highTap: nominalOf(row, 'clutch.high.1500.hot'),
  };
};

/** All hypotheses but `unlisted`, which reads as the healthy car where it reads as anything. */
export function hypothesesOf(table: Table): readonly Hypothesis[] {
  return CLASSES.flatMap((of, index): readonly Hypothesis[] => {
    if (of.name === 'unlisted') return [];
    const rows = table[index] ?? [];
    const severities = severitiesOf(of.name);
    const rowsAt = severities.map((severity) =>
      hasSeverity(of.name) ? rowAt(rows, severity) : rowAt(rows, 1),
    );
    return severities.map((severity, i) => {
      const row = rowsAt[i] ?? [];
      const next = rowsAt[i + 1];
      return {
        of,
        index,
        severity,
        signs: signsOf(row),
        expected: NUMERIC.map((test, column) => {
          const cell = row[column];
          if (cell === undefined) throw new Error('A row is cut short.');
          const step = next === undefined ? 0 : (next[column]?.mean ?? 0) - cell.mean;
          const { mean, moves, curvature } = cell;
          const own =
            errorOf(test, mean) ** 2 +
            discrepancyOf(test, mean) ** 2 +
            curvature ** 2 +
            step ** 2 / 12;
          return { mean, moves, own };
        }),
      };
    });
  });
}
