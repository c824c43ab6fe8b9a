import type { LogUnit } from './roles.ts';

/** What a cell or a name can say of a unit; "" where it says nothing. `other`: one that no role can have. */
export type UnitSaid = LogUnit | 'hz' | 'other' | '';

/** How loggers write units, without brackets, points and spaces, in small letters; a degree sign stands in front or not at all. */
const SPELLINGS: Readonly<Record<string, UnitSaid>> = {
  s: 's',
  sec: 's',
  secs: 's',
  second: 's',
  seconds: 's',
  ms: 'ms',
  msec: 'ms',
  milliseconds: 'ms',
  rpm: 'rpm',
  '1/min': 'rpm',
  '1min': 'rpm',
  'u/min': 'rpm',
  'r/min': 'rpm',
  'rev/min': 'rpm',
  'min-1': 'rpm',
  min1: 'rpm',
  '°c': '°C',
  c: '°C',
  celsius: '°C',
  '°celsius': '°C',
  '°f': '°F',
  f: '°F',
  fahrenheit: '°F',
  '°fahrenheit': '°F',
  '%': '%',
  pct: '%',
  percent: '%',
  'km/h': 'km/h',
  'km/hr': 'km/h',
  kmh: 'km/h',
  kmph: 'km/h',
  kph: 'km/h',
  mph: 'mph',
  'mi/h': 'mph',
  kpa: 'kPa',
  psi: 'psi',
  psig: 'psi',
  'lb/in2': 'psi',
  'lbf/in2': 'psi',
  bar: 'bar',
  hz: 'hz',
  // Units of columns that this reader has no use for: they still mark a row as one of units.
  v: 'other',
  mv: 'other',
  volt: 'other',
  volts: 'other',
  a: 'other',
  ma: 'other',
  nm: 'other',
  'n·m': 'other',
  'lb-ft': 'other',
  mm: 'other',
  deg: 'other',
  '°': 'other',
  'g/s': 'other',
  mpa: 'other',
  'kg/cm2': 'other',
  'kgf/cm2': 'other',
};

/**
 * The unit that a cell names; "" where it names none.
 *
 * @example
 * unitIn('[km/h]') // 'km/h'
 */
export function unitIn(cell: string): UnitSaid {
  const key = cell
    .trim()
    .replace(/^[[({]|[\])}]$/gu, '')
    // A sign of another alphabet comes as two marks or as the one for what could not be read.
    .replace(/Â?[°º˚\ufffd]/gu, '°')
    .replaceAll('²', '2')
    .replace(/[\s.]/gu, '')
    .toLowerCase()
    .replace(/^deg(?:ree)?s?(?=[a-z])/u, '°')
    .replace(/^([cf])°$/u, '°$1');
  return Object.hasOwn(SPELLINGS, key) ? (SPELLINGS[key] ?? '') : '';
}

/** A letter alone is a unit only behind the name of what has that unit: "Clutch C" and "Solenoid A" have none. */
const LETTERS: Readonly<Record<string, RegExp>> = {
  c: /te?mp|tft/iu,
  f: /te?mp|tft/iu,
  s: /time|elapsed/iu,
  v: /thr|tps|pedal|press|temp|tft|speed/iu,
};

/**
 * The unit behind the name of a column, in brackets or without: "TFT degF", "Trans Temp F", "LinePressure_kPa".
 *
 * @example
 * unitInName('vehicle_speed_km_h') // 'km/h'
 */
export function unitInName(name: string): UnitSaid {
  const bracketed = /[[({]([^[\](){}]+)[\])}]\s*$/u.exec(name)?.[1];
  if (bracketed !== undefined) return unitIn(bracketed);
  const words = name
    .replace(/([a-z])([A-Z])/gu, '$1 $2')
    .replace(/(Â?[°º˚\ufffd]|%)/gu, ' $1')
    .split(/[\s_,.:;=-]+/u)
    .filter((word) => word !== '');
  const [last = '', before = ''] = words.toReversed();
  const behindSlash = [name.indexOf('/'), name.lastIndexOf('/')]
    .filter((at) => at >= 0)
    .map((at) => name.slice(at + 1));
  for (const said of [before + last, last, ...behindSlash]) {
    const unit = unitIn(said);
    if (unit === '') continue;
    const letter = said.trim().toLowerCase();
    if (letter.length > 1 || letter === '%' || (LETTERS[letter]?.test(name) ?? false)) return unit;
  }
  return '';
}
