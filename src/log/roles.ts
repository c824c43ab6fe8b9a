/** What a column of a scan log can be, and the units it can be in. Inside, everything is metric: s, rpm, °C, kPa, km/h, %. */

/** The columns that the reader knows what to do with. */
export const ROLES = [
  'time',
  'engine',
  'turbine',
  'output',
  'range',
  'gear',
  'temperature',
  'brake',
  'throttle',
  'roadSpeed',
  'clutchPressure',
  'linePressure',
] as const;
export type Role = (typeof ROLES)[number];

/** Units by role; the first is what is taken where nothing says otherwise. A role without units is read as words. */
export const UNITS = {
  time: ['s', 'ms'],
  engine: ['rpm'],
  turbine: ['rpm'],
  output: ['rpm'],
  range: [],
  gear: [],
  temperature: ['°C', '°F'],
  brake: [],
  throttle: ['%'],
  roadSpeed: ['km/h', 'mph'],
  clutchPressure: ['kPa', 'psi', 'bar'],
  linePressure: ['kPa', 'psi', 'bar'],
} as const satisfies Record<Role, readonly string[]>;
export type LogUnit = (typeof UNITS)[Role][number];

interface Conversion {
  readonly factor: number;
  readonly zero: number;
}
const by = (factor: number, zero = 0): Conversion => ({ factor, zero });

/** Metric = (reading - zero) x factor. psi and mile exact by NIST SP 811 (1 lbf = 4.4482216152605 N, 1 in = 25.4 mm). */
const TO_METRIC: Readonly<Record<LogUnit, Conversion>> = {
  s: by(1),
  ms: by(0.001),
  rpm: by(1),
  '°C': by(1),
  '°F': by(1 / 1.8, 32),
  '%': by(1),
  'km/h': by(1),
  mph: by(1.609344),
  kPa: by(1),
  psi: by(6.894757293168361),
  bar: by(100),
};

/**
 * A reading in metric units.
 *
 * @example
 * toMetric(203, '°F') // 95
 */
export function toMetric(reading: number, unit: LogUnit): number {
  const { factor, zero } = TO_METRIC[unit];
  return (reading - zero) * factor;
}

/** Where a range selector can stand, for this reader: Park and Neutral hold no clutch. */
export type LogRange = 'park' | 'reverse' | 'neutral' | 'drive';
export const LOG_RANGES: readonly LogRange[] = ['park', 'reverse', 'neutral', 'drive'];

/** Which column of the file is what. */
export interface ColumnChoice {
  /** Counted from 0. */
  readonly column: number;
  /** Left out for columns that are read as words. */
  readonly unit?: LogUnit;
}
/** How a file is to be read; what a reader of the page chooses, and what is remembered by header. */
export interface Mapping {
  readonly columns: Readonly<Partial<Record<Role, ColumnChoice>>>;
  /** What each word or number of the range column stands for. A word that is not here is no range. */
  readonly ranges: Readonly<Record<string, LogRange>>;
}
