/**
 * Quantities: one number, two ways to read it.
 *
 * A widget keeps every value in the metric unit the shop would use, which is the
 * `si` side below: kPa, °C, L/min, N·m, rpm, mm. The engine's pascals and cubic
 * metres per second are converted once, in the engine's own `units.ts`; nothing in
 * here ever sees them. The `us` side is made from the metric value at the last
 * moment, when it is printed, so switching units never changes a result.
 */

export type UnitSystem = 'si' | 'us';

export interface UnitSide {
  /** Printed after the number, as in "620 kPa". Empty for a bare count. */
  readonly unit: string;
  readonly digits: number;
  /** Decimals under ten, where a whole number would hide a real difference. */
  readonly digitsUnderTen?: number;
}

export interface Quantity {
  /** What a sentence calls it: "a pressure", so "pressure". */
  readonly name: string;
  readonly si: UnitSide;
  readonly us: UnitSide;
  toUs(metric: number): number;
  fromUs(us: number): number;
  /**
   * Unit names a person may type, in the form `unitKey` makes of them, each with
   * its way back to the metric value.
   */
  readonly typed: Readonly<Record<string, (typed: number) => number>>;
  /** A second reading printed in brackets in US units (thousandths beside mm). */
  usAside?(metric: number): string;
}

/*
 * Conversion factors: NIST SP 811 (2008), appendix B. Each follows from four exact
 * definitions given there (inch 0.0254 m, pound 0.453 592 37 kg, standard gravity
 * 9.806 65 m/s2, US gallon 231 cubic inches); the test derives them again.
 */
export const KPA_PER_PSI = 6.894757293168361;
export const LITRE_PER_US_GALLON = 3.785411784;
export const NEWTON_METRE_PER_POUND_FOOT = 1.3558179483314;
export const MM_PER_INCH = 25.4;

const same = (value: number): number => value;
const times =
  (factor: number) =>
  (value: number): number =>
    value * factor;
const fahrenheitToCelsius = (f: number): number => ((f - 32) * 5) / 9;
const celsiusToFahrenheit = (c: number): number => (c * 9) / 5 + 32;

/** How a typed unit is compared: case, spaces, dots, dashes and degree signs do not matter. */
export function unitKey(text: string): string {
  return text
    .toLowerCase()
    .replace(/[\s\u00a0\u202f.·⋅•*\-‐‑°º]/gu, '')
    .replace(/^degrees?/u, '')
    .replace(/^deg/u, '')
    .replace(/µ|μ/gu, 'u');
}

export const pressure: Quantity = {
  name: 'pressure',
  si: { unit: 'kPa', digits: 0, digitsUnderTen: 1 },
  us: { unit: 'psi', digits: 0, digitsUnderTen: 1 },
  toUs: (kpa) => kpa / KPA_PER_PSI,
  fromUs: times(KPA_PER_PSI),
  typed: {
    kpa: same,
    pa: times(0.001),
    mpa: times(1000),
    bar: times(100),
    psi: times(KPA_PER_PSI),
  },
};

export const temperature: Quantity = {
  name: 'temperature',
  si: { unit: '°C', digits: 0 },
  us: { unit: '°F', digits: 0 },
  toUs: celsiusToFahrenheit,
  fromUs: fahrenheitToCelsius,
  typed: {
    c: same,
    celsius: same,
    f: fahrenheitToCelsius,
    fahrenheit: fahrenheitToCelsius,
    k: (kelvin) => kelvin - 273.15,
    kelvin: (kelvin) => kelvin - 273.15,
  },
};

/** A difference of temperatures: no 32 to add. */
export const temperatureRise: Quantity = {
  name: 'temperature difference',
  si: { unit: '°C', digits: 0 },
  us: { unit: '°F', digits: 0 },
  toUs: times(1.8),
  fromUs: (f) => f / 1.8,
  typed: { c: same, celsius: same, k: same, f: (f) => f / 1.8, fahrenheit: (f) => f / 1.8 },
};

export const flow: Quantity = {
  name: 'flow',
  si: { unit: 'L/min', digits: 1 },
  us: { unit: 'gpm', digits: 2 },
  toUs: (litres) => litres / LITRE_PER_US_GALLON,
  fromUs: times(LITRE_PER_US_GALLON),
  typed: {
    'l/min': same,
    lpm: same,
    'litres/min': same,
    'liters/min': same,
    gpm: times(LITRE_PER_US_GALLON),
    usgpm: times(LITRE_PER_US_GALLON),
    'gal/min': times(LITRE_PER_US_GALLON),
  },
};

export const torque: Quantity = {
  name: 'torque',
  si: { unit: 'N·m', digits: 0, digitsUnderTen: 1 },
  us: { unit: 'lbf·ft', digits: 0, digitsUnderTen: 1 },
  toUs: (nm) => nm / NEWTON_METRE_PER_POUND_FOOT,
  fromUs: times(NEWTON_METRE_PER_POUND_FOOT),
  typed: {
    nm: same,
    lbfft: times(NEWTON_METRE_PER_POUND_FOOT),
    lbft: times(NEWTON_METRE_PER_POUND_FOOT),
    ftlb: times(NEWTON_METRE_PER_POUND_FOOT),
    ftlbs: times(NEWTON_METRE_PER_POUND_FOOT),
    ftlbf: times(NEWTON_METRE_PER_POUND_FOOT),
  },
};

/** Gaps and cracks. Millimetres in both systems; US readers get thousandths of an inch as well. */
export const length: Quantity = {
  name: 'width',
  si: { unit: 'mm', digits: 2 },
  us: { unit: 'mm', digits: 2 },
  toUs: same,
  fromUs: same,
  typed: {
    mm: same,
    um: times(0.001),
    micron: times(0.001),
    microns: times(0.001),
    in: times(MM_PER_INCH),
    inch: times(MM_PER_INCH),
    '"': times(MM_PER_INCH),
    thou: times(MM_PER_INCH / 1000),
    thousandth: times(MM_PER_INCH / 1000),
    thousandths: times(MM_PER_INCH / 1000),
  },
  usAside: (mm) => `${printNumber((mm * 1000) / MM_PER_INCH, 0)}\u00a0thousandths`,
};

interface PlainOptions {
  readonly alsoTyped?: readonly string[];
  readonly digitsUnderTen?: number;
}

/** A quantity that reads the same in both systems. */
export function plain(
  name: string,
  unit: string,
  digits: number,
  { alsoTyped = [], digitsUnderTen = digits }: PlainOptions = {},
): Quantity {
  const side = { unit, digits, digitsUnderTen };
  const typed: Record<string, (v: number) => number> = {};
  for (const spelling of [unit, ...alsoTyped]) typed[unitKey(spelling)] = same;
  return { name, si: side, us: side, toUs: same, fromUs: same, typed };
}

export const speed = plain('speed', 'rpm', 0, { alsoTyped: ['r/min', 'rev/min'] });
export const seconds = plain('time', 's', 2, {
  alsoTyped: ['sec', 'seconds', 'second'],
});
export const percent = plain('share', '%', 0, { alsoTyped: ['percent'] });
export const kinematicViscosity = plain('kinematic viscosity', 'cSt', 1, {
  alsoTyped: ['mm2/s', 'mm²/s'],
  digitsUnderTen: 2,
});
export const dynamicViscosity = plain('dynamic viscosity', 'mPa·s', 1, {
  alsoTyped: ['cP'],
  digitsUnderTen: 2,
});
export const count = plain('number', '', 0);

export const toShown = (metric: number, q: Quantity, system: UnitSystem): number =>
  system === 'us' ? q.toUs(metric) : metric;

export const fromShown = (shown: number, q: Quantity, system: UnitSystem): number =>
  system === 'us' ? q.fromUs(shown) : shown;

/** A number as printed: real minus sign, thin spaces from 10 000 on, never "-0". */
export function printNumber(value: number, digits: number): string {
  if (!Number.isFinite(value)) return 'no value';
  const fixed = Math.abs(value).toFixed(digits);
  const [whole = '0', part] = fixed.split('.');
  const grouped = whole.length > 4 ? whole.replace(/\B(?=(\d{3})+$)/gu, '\u202f') : whole;
  const body = part === undefined ? grouped : `${grouped}.${part}`;
  return value < 0 && Number(fixed) !== 0 ? `\u2212${body}` : body;
}

/** The number alone, without its unit, from a metric value. */
export function formatNumber(metric: number, q: Quantity, system: UnitSystem): string {
  const { digits, digitsUnderTen = digits } = q[system];
  const shown = toShown(metric, q, system);
  const small = Math.abs(shown) < 10 && shown !== 0;
  return printNumber(shown, small ? digitsUnderTen : digits);
}

/** Number and unit, never broken across lines: "620 kPa", "0.25 mm (10 thousandths)". */
export function format(metric: number, q: Quantity, system: UnitSystem): string {
  const number = formatNumber(metric, q, system);
  if (!Number.isFinite(metric)) return number;
  const { unit } = q[system];
  const body = unit === '' ? number : `${number}\u00a0${unit}`;
  if (system === 'us' && q.usAside) return `${body} (${q.usAside(metric)})`;
  return body;
}
