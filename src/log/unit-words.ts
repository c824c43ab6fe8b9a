import type { LogUnit } from './roles.ts';

/** How loggers write units, without brackets, points and spaces, in small letters. */
const SPELLINGS: Readonly<Record<string, LogUnit | 'hz' | 'other'>> = {
  s: 's',
  sec: 's',
  secs: 's',
  seconds: 's',
  ms: 'ms',
  msec: 'ms',
  milliseconds: 'ms',
  rpm: 'rpm',
  '1/min': 'rpm',
  'u/min': 'rpm',
  'r/min': 'rpm',
  'min-1': 'rpm',
  '°c': '°C',
  c: '°C',
  degc: '°C',
  '°f': '°F',
  f: '°F',
  degf: '°F',
  '%': '%',
  pct: '%',
  'km/h': 'km/h',
  kmh: 'km/h',
  kph: 'km/h',
  mph: 'mph',
  'mi/h': 'mph',
  kpa: 'kPa',
  psi: 'psi',
  psig: 'psi',
  bar: 'bar',
  hz: 'hz',
  // Units of columns that this reader has no use for: they still mark a row as one of units.
  v: 'other',
  a: 'other',
  ma: 'other',
  nm: 'other',
  'n·m': 'other',
  'lb-ft': 'other',
  mm: 'other',
  deg: 'other',
  '°': 'other',
  'g/s': 'other',
};

/**
 * The unit that a cell names; "" where it names none.
 *
 * @example
 * unitIn('[km/h]') // 'km/h'
 */
export function unitIn(cell: string): LogUnit | 'hz' | 'other' | '' {
  const key = cell
    .trim()
    .replace(/^[[(]|[\])]$/gu, '')
    .replace(/[\s.º˚]/gu, (mark) => (mark === 'º' || mark === '˚' ? '°' : ''))
    .toLowerCase();
  return Object.hasOwn(SPELLINGS, key) ? (SPELLINGS[key] ?? '') : '';
}
