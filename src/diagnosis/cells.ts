/** The hypotheses that are weighed, one for each severity: the table, interpolated and ready to be held against readings. */
import { CLASSES, NODE_STEP, severitiesOf, type FaultClass } from './hypotheses.ts';
import { signsFrom, type CodeSigns } from './outcome-tables.ts';
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

/** What a hypothesis expects in a column of the table. */
export function expectedIn({ expected }: Pick<Hypothesis, 'expected'>, column: number): Expected {
  const one = expected[column];
  if (one === undefined) throw new Error(`A car of the table reads nothing in column ${column}.`);
  return one;
}

/** The car with nothing wrong, which every table has to have. */
export function healthyIn(hypotheses: readonly Hypothesis[]): Hypothesis {
  const healthy = hypotheses.find(({ of }) => of.name === 'healthy');
  if (healthy === undefined) throw new Error('There is no healthy car in the table.');
  return healthy;
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
  const place = severity / NODE_STEP - 1;
  const below = Math.floor(place + 1e-9);
  const share = place - below;
  const [a, b] = [rows[below] ?? first, rows[below + 1] ?? first];
  return NUMERIC.map((_test, i) =>
    share < 1e-9 ? cellIn(a, i) : between(cellIn(a, i), cellIn(b, i), share),
  );
}

function cellIn(row: Row, column: number): Cell {
  const cell = row[column];
  if (cell === undefined) throw new Error('A row is cut short.');
  return cell;
}

/** All hypotheses but `unlisted`, which reads as the healthy car where it reads as anything. */
export function hypothesesOf(table: Table): readonly Hypothesis[] {
  return CLASSES.flatMap((of, index): readonly Hypothesis[] => {
    if (of.name === 'unlisted') return [];
    const rows = table[index] ?? [];
    const severities = severitiesOf(of.name);
    const rowsAt = severities.map((severity) => rowAt(rows, severity));
    return severities.map((severity, i) => {
      const row = rowsAt[i] ?? [];
      const next = rowsAt[i + 1];
      return {
        of,
        index,
        severity,
        signs: signsFrom((id) => cellIn(row, columnOf(id)).nominal),
        expected: NUMERIC.map((test, column) => {
          const { mean, moves, curvature } = cellIn(row, column);
          const step = next === undefined ? 0 : cellIn(next, column).mean - mean;
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
