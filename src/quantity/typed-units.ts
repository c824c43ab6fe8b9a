/**
 * How people type units. Apart from the table of what is printed: a page that only prints carries none of this.
 */
import { GRAM_PER_POUND, LITRE_PER_US_GALLON, MM_PER_INCH } from './factors.ts';
import type { Quantity, Scale } from './quantity.ts';
import { scale } from './units.ts';

/** How units are compared: case, spaces, dots, dashes and degree signs do not matter, ² is 2. */
export const unitKey = (text: string): string =>
  text
    .normalize('NFKC')
    .toLowerCase()
    .replace(/[\s.·⋅∙•*\-‐‑°()]|^deg(rees?)?/gu, '')
    .replace('μ', 'u')
    .replace(/[″”]|''|′′/u, '"');

/** Other spellings of a symbol, in the form that `unitKey` makes of them. */
const SPELLED: Readonly<Record<string, string>> = {
  kPa: 'kilopascal kilopascals',
  psi: 'lb/in2 lbf/in2 psig',
  '°C': 'celsius',
  '°F': 'fahrenheit',
  K: 'kelvin',
  'L/min': 'lpm litres/min liters/min litres/minute liters/minute',
  gpm: 'usgpm gal/min gallons/min gallons/minute',
  'qt/min': 'quarts/min',
  'N·m': 'newtonmetres newtonmeters',
  'lbf·ft': 'lbft ftlb ftlbs ftlbf lbsft',
  'ft·lbf': 'ftlb',
  N: 'newton newtons',
  lbf: 'lb lbs pound pounds',
  lb: 'lbs pound pounds',
  mm: 'millimetre millimetres millimeter millimeters',
  in: '" inch inches',
  thousandths: 'thou thousandth mil mils',
  µm: 'micron microns',
  'in²': 'sqin',
  'cm³': 'cc ml',
  'in³': 'cuin',
  L: 'litre litres liter liters',
  qt: 'quart quarts',
  'km/h': 'kmh kph',
  mph: 'mi/h',
  kW: 'kilowatt kilowatts',
  hp: 'horsepower',
  J: 'joule joules',
  rpm: 'r/min rev/min 1/min',
  s: 'sec second seconds',
  min: 'minute minutes',
  h: 'hr hrs hour hours',
  '%': 'percent',
  cSt: 'mm2/s centistokes',
  'mPa·s': 'cp centipoise',
  'kg/L': 'kg/dm3 g/cm3',
  '': 'x × :1 times timesasmuch',
  '×': 'x times',
};

/** Units that are understood when typed and never printed, by the quantity's name. */
const ALSO: Readonly<Record<string, readonly Scale[]>> = {
  pressure: [scale('bar', 0.01), scale('MPa', 0.001), scale('Pa', 1000)],
  temperature: [scale('K', 1, 273.15)],
  'temperature difference': [scale('K', 1)],
  flow: [scale('qt/min', 4 / LITRE_PER_US_GALLON)],
  force: [scale('kN', 0.001)],
  width: [scale('in', 1 / MM_PER_INCH), scale('µm', 1000)],
  size: [scale('cm', 0.1), scale('thousandths', 1000 / MM_PER_INCH)],
  area: [scale('mm²', 100)],
  time: [scale('ms', 1000)],
  'time in hours': [scale('min', 60)],
  'dynamic viscosity': [scale('Pa·s', 0.001)],
  density: [scale('kg/L', 0.001), scale('lb/gal', LITRE_PER_US_GALLON / GRAM_PER_POUND)],
};

/** Every unit in which a quantity may be typed, each with the keys that mean it. */
export const typedUnits = ({ name, si, us }: Quantity): ReadonlyMap<string, Scale> =>
  new Map(
    [...new Set([si, us]), ...(ALSO[name] ?? [])].flatMap((unit) =>
      [unit.symbol, ...(SPELLED[unit.symbol] ?? '').split(' ')]
        .filter((text) => text !== '')
        .map((text) => [unitKey(text), unit] as const),
    ),
  );
