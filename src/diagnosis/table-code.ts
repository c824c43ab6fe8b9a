/**
 * The table as a text to ship: each number as whole steps of its test, from severity to severity the difference, small
 * numbers in one byte and runs of nothing in two; then base64. 23 kB compressed where plain floats take 170.
 */
import { CLASSES, NODES } from './hypotheses.ts';
import { GAUGE_GAIN } from './nuisances.ts';
import { SHARED, type Cell, type Row, type Table } from './table.ts';
import { isPressure, NUMERIC, type NumericKind, type NumericTest } from './tests.ts';

/** What one step is, on the solver's scale: a fortieth of a reading's error or finer. */
const STEP: Readonly<Record<NumericKind, number>> = {
  engineOffTurbine: 0.25,
  fluidCup: 0.0005,
  stopTime: 0.001,
  takeoffSlip: 0.0025,
  linePressure: 0.25,
  clutchPressure: 0.25,
  coolerFlow: 0.0025,
  airTest: 0.05,
};

/** The reading of the nominal car is needed for codes alone. */
const nominalCounts = ({ kind, id }: NumericTest): boolean =>
  kind === 'stopTime' || kind === 'takeoffSlip' || id === 'clutch.high.1500.hot';

/** What a cell is made of, in its order; the gain of the gauge follows from the mean. */
interface Field {
  readonly of: (cell: Cell) => number;
  readonly into: (cell: MutableCell, value: number) => void;
}
interface MutableCell {
  nominal: number;
  mean: number;
  readonly moves: Float64Array;
  curvature: number;
}
const MEAN: Field = {
  of: (cell) => cell.mean,
  into: (cell, value) => {
    cell.mean = value;
  },
};
const CURVATURE: Field = {
  of: (cell) => cell.curvature,
  into: (cell, value) => {
    cell.curvature = value;
  },
};
const NOMINAL: Field = {
  of: (cell) => cell.nominal,
  into: (cell, value) => {
    cell.nominal = value;
  },
};
const MOVES: readonly Field[] = Array.from({ length: SHARED - 1 }, (_, i) => ({
  of: (cell: Cell) => cell.moves[i] ?? 0,
  into: (cell: MutableCell, value: number) => {
    cell.moves[i] = value;
  },
}));
const fieldsOf = (test: NumericTest): readonly Field[] =>
  nominalCounts(test) ? [MEAN, NOMINAL, CURVATURE, ...MOVES] : [MEAN, CURVATURE, ...MOVES];

/** Small numbers of either sign as small whole ones. */
const folded = (n: number): number => (n >= 0 ? 2 * n : -2 * n - 1);
const unfolded = (n: number): number => (n % 2 === 0 ? n / 2 : -(n + 1) / 2);

function toBytes(numbers: readonly number[]): Uint8Array {
  const bytes: number[] = [];
  const put = (whole: number): void => {
    let rest = whole;
    for (; rest >= 128; rest = Math.floor(rest / 128)) bytes.push((rest % 128) + 128);
    bytes.push(rest);
  };
  for (let i = 0; i < numbers.length; i += 1) {
    const n = numbers[i] ?? 0;
    put(folded(n));
    if (n !== 0) continue;
    let run = 1;
    while (numbers[i + run] === 0) run += 1;
    put(run - 1);
    i += run - 1;
  }
  return Uint8Array.from(bytes);
}

function* fromBytes(bytes: Uint8Array): Generator<number, void> {
  let at = 0;
  const take = (): number => {
    let whole = 0;
    for (let place = 1; ; place *= 128) {
      const byte = bytes[at];
      if (byte === undefined) throw new Error('The table of the planner is cut short.');
      at += 1;
      whole += (byte % 128) * place;
      if (byte < 128) return whole;
    }
  };
  while (at < bytes.length) {
    const n = unfolded(take());
    yield n;
    if (n === 0) for (let run = take(); run > 0; run -= 1) yield 0;
  }
}

/** The table as text. */
export function encodeTable(table: Table): string {
  const numbers = table.flatMap((rows) => [
    rows.length,
    ...NUMERIC.flatMap((test, column) =>
      fieldsOf(test).flatMap((field) => {
        let before = 0;
        return rows.map((row) => {
          const cell = row[column];
          if (cell === undefined) throw new Error('A row of the table is cut short.');
          const now = Math.round(field.of(cell) / STEP[test.kind]);
          const change = now - before;
          before = now;
          return change;
        });
      }),
    ),
  ]);
  const bytes = toBytes(numbers);
  let text = '';
  for (const byte of bytes) text += String.fromCharCode(byte);
  return btoa(text);
}

/** The table out of its text; throws on one that is cut short or longer than a table. */
export function decodeTable(text: string): Table {
  const numbers = fromBytes(Uint8Array.from(atob(text), (letter) => letter.charCodeAt(0)));
  const take = (): number => {
    const next = numbers.next();
    if (next.done === true) throw new Error('The table of the planner is cut short.');
    return next.value;
  };
  const table = CLASSES.map((): readonly Row[] => {
    const length = take();
    // Of what is no table, any number may stand here.
    if (length < 0 || length > NODES.length) throw new Error('This is no table of the planner.');
    const rows = Array.from({ length }, () =>
      NUMERIC.map((): MutableCell => ({
        nominal: 0,
        mean: 0,
        moves: new Float64Array(SHARED),
        curvature: 0,
      })),
    );
    NUMERIC.forEach((test, column) => {
      for (const field of fieldsOf(test)) {
        let now = 0;
        for (const row of rows) {
          now += take();
          const cell = row[column];
          if (cell) field.into(cell, now * STEP[test.kind]);
        }
      }
      for (const row of rows) {
        const cell = row[column];
        if (!cell) continue;
        if (isPressure(test)) cell.moves[SHARED - 1] = GAUGE_GAIN * cell.mean;
        if (!nominalCounts(test)) cell.nominal = cell.mean;
      }
    });
    return rows;
  });
  if (numbers.next().done !== true) throw new Error('The table of the planner is too long.');
  return table;
}
