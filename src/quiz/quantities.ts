/**
 * The quantities a question can ask for, each in its two units. The number a question carries is always in the `si`
 * unit printed here (kPa, not Pa): it is what people read. The engine has its own conversions; the quiz may not import
 * the engine, so tests/quiz holds both tables against published factors (NIST SP 811).
 */
export interface Unit {
  readonly symbol: string;
  /** value in this unit = value in the `si` unit * factor + offset */
  readonly factor: number;
  readonly offset: number;
  /** Other ways people type it, lower case, without spaces. */
  readonly spellings: readonly string[];
}

export interface QuantityInfo {
  readonly name: string;
  readonly si: Unit;
  readonly us: Unit;
  /** Further units that are understood when typed but never shown. */
  readonly also: readonly Unit[];
  /** A second reading in brackets for US readers. */
  readonly usAside?: (value: number) => string;
}

const unit = (symbol: string, factor: number, spellings: readonly string[], offset = 0): Unit => ({
  symbol,
  factor,
  offset,
  spellings,
});

const same = (name: string, only: Unit, also: readonly Unit[] = []): QuantityInfo => ({
  name,
  si: only,
  us: only,
  also,
});

export const quantities = {
  pressure: {
    name: 'pressure',
    si: unit('kPa', 1, ['kpa', 'kilopascal', 'kilopascals']),
    us: unit('psi', 1 / 6.894757293168361, ['psi', 'lb/in2', 'lbf/in2']),
    also: [unit('bar', 0.01, ['bar']), unit('MPa', 0.001, ['mpa']), unit('Pa', 1000, ['pa'])],
  },
  temperature: {
    name: 'temperature',
    si: unit('°C', 1, ['°c', 'c', 'degc', 'celsius']),
    us: unit('°F', 1.8, ['°f', 'f', 'degf', 'fahrenheit'], 32),
    also: [],
  },
  /** A difference of temperatures: no 32 to add. */
  temperatureRise: {
    name: 'temperature difference',
    si: unit('°C', 1, ['°c', 'c', 'k', 'degc', 'celsius']),
    us: unit('°F', 1.8, ['°f', 'f', 'degf', 'fahrenheit']),
    also: [],
  },
  flow: {
    name: 'flow',
    si: unit('L/min', 1, ['l/min', 'lpm', 'lmin', 'litres/minute', 'liters/minute']),
    us: unit('gpm', 1 / 3.785411784, ['usgpm', 'gpm', 'gal/min', 'gallons/minute']),
    also: [],
  },
  torque: {
    name: 'torque',
    si: unit('N·m', 1, ['n·m', 'nm', 'n*m', 'newtonmetres', 'newtonmeters']),
    us: unit('lbf·ft', 1 / 1.3558179483314, [
      'lbf·ft',
      'lbfft',
      'lb·ft',
      'lbft',
      'lb-ft',
      'ft-lb',
      'ftlb',
      'ft·lb',
      'ft·lbf',
      'ft-lbf',
    ]),
    also: [],
  },
  force: {
    name: 'force',
    si: unit('N', 1, ['n', 'newton', 'newtons']),
    us: unit('lbf', 1 / 4.4482216152605, ['lbf', 'lb', 'lbs', 'pounds']),
    also: [unit('kN', 0.001, ['kn'])],
  },
  /** Gaps and cracks: millimetres in both systems, as the whole site does; US readers get thousandths beside it. */
  length: {
    ...same('length', unit('mm', 1, ['mm', 'millimetre', 'millimetres', 'millimeters']), [
      unit('in', 1 / 25.4, ['in', '"', 'inch', 'inches']),
      unit('thou', 1000 / 25.4, ['thou', 'thousandths', 'thousandth']),
      unit('µm', 1000, ['µm', 'um', 'micron', 'microns']),
    ]),
    usAside: (mm) =>
      mm < 5
        ? `${figures((mm * 1000) / 25.4, 2)}\u00a0thousandths`
        : `${figures(mm / 25.4)}\u00a0in`,
  },
  area: {
    name: 'area',
    si: unit('cm²', 1, ['cm²', 'cm2']),
    us: unit('in²', 1 / 6.4516, ['in²', 'in2', 'sqin']),
    also: [],
  },
  volume: {
    name: 'volume',
    si: unit('cm³', 1, ['cm³', 'cm3', 'cc', 'ml']),
    us: unit('in³', 1 / 16.387064, ['in³', 'in3', 'cuin']),
    also: [],
  },
  kinematicViscosity: same(
    'kinematic viscosity',
    unit('cSt', 1, ['cst', 'mm²/s', 'mm2/s', 'centistokes']),
  ),
  dynamicViscosity: same(
    'dynamic viscosity',
    unit('mPa·s', 1, ['mpa·s', 'mpas', 'cp', 'centipoise']),
    [unit('Pa·s', 0.001, ['pa·s', 'pas'])],
  ),
  density: same('density', unit('kg/L', 1, ['kg/l', 'kg/dm3', 'g/cm3']), [
    unit('kg/m³', 1000, ['kg/m³', 'kg/m3']),
  ]),
  airFlow: same('air flow', unit('g/s', 1, ['g/s'])),
  roadSpeed: {
    name: 'road speed',
    si: unit('km/h', 1, ['km/h', 'kmh', 'kph']),
    us: unit('mph', 1 / 1.609344, ['mph', 'mi/h']),
    also: [],
  },
  speed: same('turning speed', unit('rpm', 1, ['rpm', 'r/min', '1/min', 'rev/min'])),
  time: same('time', unit('s', 1, ['s', 'sec', 'second', 'seconds']), [unit('ms', 1000, ['ms'])]),
  percent: same('share', unit('%', 1, ['%', 'percent'])),
  /** A plain number: a ratio, a viscosity index, "how many times". A bare number is always understood. */
  number: same('number', unit('', 1, ['', 'x', '×', 'times', 'timesasmuch'])),
} as const satisfies Record<string, QuantityInfo>;

export type Quantity = keyof typeof quantities;
export const quantityNames = Object.keys(quantities) as readonly Quantity[];
export type System = 'si' | 'us';

export function infoOf(quantity: Quantity): QuantityInfo {
  return quantities[quantity];
}

export function inSystem(value: number, quantity: Quantity, system: System): number {
  const to = infoOf(quantity)[system];
  return value * to.factor + to.offset;
}

/** Three figures are as good as a shop gauge; more would promise what the model cannot keep. */
export function figures(value: number, most = 3): string {
  if (!Number.isFinite(value))
    throw new RangeError(`A question may only show finite numbers, but got ${value}.`);
  const rounded = Math.abs(value) >= 100 ? Math.round(value) : Number(value.toPrecision(most));
  return String(Object.is(rounded, -0) ? 0 : rounded).replace('-', '−');
}

/** "383 kPa" with a space that does not break. */
export function withUnit(value: number, quantity: Quantity, system: System): string {
  const info = infoOf(quantity);
  const { symbol } = info[system];
  const number = figures(inSystem(value, quantity, system));
  const body = symbol === '' ? number : `${number}\u00a0${symbol}`;
  return system === 'us' && info.usAside !== undefined ? `${body} (${info.usAside(value)})` : body;
}
