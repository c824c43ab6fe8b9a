import { LOG_RANGES, toMetric, type LogRange, type Mapping, type Role } from './roles.ts';
import { fileRowOf, sayingAt, type Column, type Table } from './table.ts';
import { stops, type ColumnTrouble } from './trouble.ts';

/** A log in metric units, its times rising from 0 [s]. NaN where there is no reading; a column is left out where the file has none. */
export interface Series {
  readonly time: Float64Array;
  readonly engine?: Float64Array;
  readonly turbine: Float64Array;
  readonly output?: Float64Array;
  /** One of LOG_RANGES by its place + 1, 0 for none. */
  readonly range?: Uint8Array;
  /** [°C] */
  readonly temperature?: Float64Array;
  /** 1 on, 0 off. */
  readonly brake?: Float64Array;
  /** [%] */
  readonly throttle?: Float64Array;
  /** [km/h] */
  readonly roadSpeed?: Float64Array;
  /** The gear as the controller counts it. */
  readonly gear?: Float64Array;
  /** [kPa] */
  readonly clutchPressure?: Float64Array;
  readonly linePressure?: Float64Array;
  /** Rows left out: those without a time, and those with the time of the row before. */
  readonly untimed: number;
  readonly doubled: number;
}

export interface SeriesRead {
  readonly series?: Series;
  readonly troubles: readonly ColumnTrouble[];
}

const SPEEDS = ['engine', 'turbine', 'output'] as const;
const NUMBERS = [
  ...SPEEDS,
  'temperature',
  'throttle',
  'roadSpeed',
  'clutchPressure',
  'linePressure',
] as const;

/** Above this many rows in a hundred with the time of the row before, the column is no time. */
const MOST_DOUBLED = 0.5;

const most = (values: Float64Array): number => {
  let high = Number.NEGATIVE_INFINITY;
  for (const value of values) if (value > high) high = value;
  return high;
};

/** By a loop: `Float64Array.from` takes ten times as long, and there are up to eight columns. */
function mapped(rows: Uint32Array, of: (row: number) => number): Float64Array {
  const out = new Float64Array(rows.length);
  for (let i = 0; i < out.length; i += 1) out[i] = of(rows[i] ?? 0);
  return out;
}

/** Median of the steps between rows [unit of the column]. */
function medianStep(values: Float64Array): number {
  const steps: number[] = [];
  const every = Math.max(1, Math.floor(values.length / 2000));
  for (let i = 1; i < values.length; i += every)
    steps.push((values[i] ?? 0) - (values[i - 1] ?? 0));
  steps.sort((a, b) => a - b);
  return steps[Math.floor(steps.length / 2)] ?? Number.NaN;
}

/** Which rows have a time of their own; and the row that runs back, if there is one. */
function timed(numbers: Float64Array): {
  readonly rows: Uint32Array;
  readonly untimed: number;
  readonly doubled: number;
  readonly back?: { readonly row: number; readonly from: number; readonly to: number };
} {
  const rows = new Uint32Array(numbers.length);
  let [count, untimed, doubled] = [0, 0, 0];
  let last = Number.NEGATIVE_INFINITY;
  for (let row = 0; row < numbers.length; row += 1) {
    const time = numbers[row] ?? Number.NaN;
    if (Number.isNaN(time)) untimed += 1;
    else if (time === last) doubled += 1;
    else if (time < last) {
      return { rows, untimed, doubled, back: { row, from: last, to: time } };
    } else {
      rows[count] = row;
      count += 1;
      last = time;
    }
  }
  return { rows: rows.subarray(0, count), untimed, doubled };
}

/** A reading that looks like one in another unit, from the largest there is. */
function unitDoubt(role: Role, high: number, asked: string | undefined): ColumnTrouble | undefined {
  if ((role === 'turbine' || role === 'engine') && high > 0 && high < 60) {
    return { role, kind: 'hertz', most: high };
  }
  // Hotter than any fluid that is still fluid: at 150 °C a log stops being one of a car that drives.
  if (role === 'temperature' && asked === '°C' && high > 150)
    return { role, kind: 'fahrenheit', most: high };
  if ((role === 'clutchPressure' || role === 'linePressure') && high > 0) {
    const kPa = toMetric(high, asked === 'psi' || asked === 'bar' ? asked : 'kPa');
    if (kPa > 5000 || kPa < 50) return { role, kind: 'pressureUnit', most: high };
  }
  return undefined;
}

/** Brake lamps come as words, as 0 and 1, and as a pressure. */
const OFF = /^(?:0|off|no|false|released|open|inactive)$/iu;

function words<T>(
  column: Column,
  rows: Uint32Array,
  of: (saying: string) => T,
  out: { [i: number]: T },
): void {
  const known = new Map<string, T>();
  rows.forEach((row, i) => {
    const saying = sayingAt(column, row);
    let value = known.get(saying);
    if (value === undefined) {
      value = of(saying);
      known.set(saying, value);
    }
    out[i] = value;
  });
}

/**
 * The log as this reader of it wants it: columns picked, units made metric, times checked. What is wrong with a column
 * comes back with its role, and the rest is read all the same where that makes sense.
 */
export function readSeries(table: Table, mapping: Mapping): SeriesRead {
  const troubles: ColumnTrouble[] = [];
  const seen = new Map<number, Role>();
  const columnOf = (role: Role): Column | undefined => {
    const choice = mapping.columns[role];
    return choice === undefined ? undefined : table.columns[choice.column];
  };
  for (const [role, choice] of Object.entries(mapping.columns) as [Role, { column: number }][]) {
    const by = seen.get(choice.column);
    if (by !== undefined) troubles.push({ role, kind: 'taken', by });
    seen.set(choice.column, role);
  }
  for (const role of ['time', 'turbine'] as const) {
    if (columnOf(role) === undefined) troubles.push({ role, kind: 'missing' });
  }
  const timeColumn = columnOf('time');
  if (timeColumn === undefined || columnOf('turbine') === undefined) return { troubles };
  const clock = timed(timeColumn.numbers);
  if (clock.back !== undefined) {
    const { row, from, to } = clock.back;
    troubles.push({ role: 'time', kind: 'runsBack', row: fileRowOf(table, row), from, to });
    return { troubles };
  }
  const { rows, untimed, doubled } = clock;
  if (rows.length < 2) {
    troubles.push({ role: 'time', kind: doubled > 0 ? 'standsStill' : 'noNumbers' });
    return { troubles };
  }
  if (doubled > MOST_DOUBLED * table.rows) troubles.push({ role: 'time', kind: 'standsStill' });

  const raw = mapped(rows, (row) => timeColumn.numbers[row] ?? 0);
  const unit = mapping.columns.time?.unit === 'ms' ? 'ms' : 's';
  const step = medianStep(raw);
  if (unit === 's' && step >= 5) troubles.push({ role: 'time', kind: 'milliseconds', step });
  if (unit === 'ms' && step < 1) troubles.push({ role: 'time', kind: 'seconds', step });
  const start = raw[0] ?? 0;
  const time = raw.map((value) => toMetric(value - start, unit));

  const numbers: Partial<Record<(typeof NUMBERS)[number], Float64Array>> = {};
  for (const role of NUMBERS) {
    const column = columnOf(role);
    if (column === undefined) continue;
    const asked = mapping.columns[role]?.unit;
    const high = most(column.numbers);
    if (high === Number.NEGATIVE_INFINITY) {
      troubles.push({ role, kind: 'noNumbers' });
      continue;
    }
    const doubt = unitDoubt(role, high, asked);
    if (doubt) troubles.push(doubt);
    numbers[role] = mapped(rows, (row) => {
      const value = column.numbers[row] ?? Number.NaN;
      return asked === undefined ? value : toMetric(value, asked);
    });
  }
  // A shaft turns one way or the other; slip is reckoned from how fast.
  const output = numbers.output?.map(Math.abs);

  const rangeColumn = columnOf('range');
  const range = rangeColumn && new Uint8Array(rows.length);
  if (rangeColumn && range) {
    const place = (saying: string): number => {
      const found = Object.hasOwn(mapping.ranges, saying) ? mapping.ranges[saying] : undefined;
      return found === undefined ? 0 : LOG_RANGES.indexOf(found) + 1;
    };
    words(rangeColumn, rows, place, range);
    if (!range.includes(1) && !range.includes(3))
      troubles.push({ role: 'range', kind: 'noRanges' });
  }
  const gearColumn = columnOf('gear');
  const gear = gearColumn && new Float64Array(rows.length);
  if (gearColumn && gear) {
    words(gearColumn, rows, (saying) => Number(/\d+/u.exec(saying)?.[0] ?? Number.NaN), gear);
  }
  const brakeColumn = columnOf('brake');
  const brake = brakeColumn && new Float64Array(rows.length);
  if (brakeColumn && brake) {
    words(
      brakeColumn,
      rows,
      (saying) => (saying === '' ? Number.NaN : OFF.test(saying) ? 0 : 1),
      brake,
    );
  }
  const { turbine, ...others } = numbers;
  if (turbine === undefined || troubles.some(stops)) return { troubles };
  return {
    troubles,
    series: {
      time,
      turbine,
      ...others,
      ...(output && { output }),
      ...(range && { range }),
      ...(gear && { gear }),
      ...(brake && { brake }),
      untimed,
      doubled,
    },
  };
}

/** What a row's range is, if it says. */
export const rangeAt = ({ range }: Series, row: number): LogRange | undefined =>
  LOG_RANGES[(range?.[row] ?? 0) - 1];
