/**
 * The amounts that a reader finds in a stem, as printed: whole, in one unit system, and turned into SI units by factors that stand
 * here a second time (NIST SP 811, appendix B.8), not by those of the site.
 */
const INCH = 0.0254;
const POUND_FORCE = 4.4482216152605;
const GALLON = 3.785411784e-3;

const units: Readonly<Record<string, readonly [size: number, zero?: number]>> = {
  '': [1],
  kPa: [1e3],
  psi: [POUND_FORCE / INCH ** 2],
  '°C': [1, 273.15],
  '°F': [5 / 9, 459.67],
  'L/min': [1e-3 / 60],
  gpm: [GALLON / 60],
  'N·m·s': [1],
  'lbf·ft·s': [POUND_FORCE * 12 * INCH],
  'N·m': [1],
  'lbf·ft': [POUND_FORCE * 12 * INCH],
  N: [1],
  lbf: [POUND_FORCE],
  'cm²': [1e-4],
  'in²': [INCH ** 2],
  'cm³': [1e-6],
  'in³': [INCH ** 3],
  mm: [1e-3],
  thousandths: [INCH / 1e3],
  in: [INCH],
  L: [1e-3],
  qt: [GALLON / 4],
  'mPa·s': [1e-3],
  cSt: [1e-6],
  'kg/m³': [1],
  rpm: [1 / 60],
  '%': [1e-2],
  h: [3600],
  min: [60],
  s: [1],
};
const names = Object.keys(units).filter((name) => name !== '');
const longestFirst = names.sort((a, b) => b.length - a.length).join('|');
// "3 in 100" is a share and no length.
const printed = new RegExp(
  String.raw`(by\s)?([−-]?\d[\d,]*(?:\.\d+)?)(?:\s(${longestFirst})(?![\p{L}·²³/])(?! \d))?`,
  'gu',
);

export interface StemAmount {
  /** In SI units; temperatures in kelvin, what something warms or cools by as well. */
  readonly value: number;
  readonly unit: string;
}

export function amountsIn(text: string): readonly StemAmount[] {
  return Array.from(text.matchAll(printed), ([, by, digits = '', unit = '']) => {
    const [size, zero = 0] = units[unit] ?? [Number.NaN];
    const number = Number(digits.replaceAll(',', '').replace('−', '-'));
    return { value: (number + (by === undefined ? zero : 0)) * size, unit };
  });
}

/** What somebody types who has worked out this much: all digits of a pocket calculator, and the unit. */
export function typedIn(value: number, unit: string): string {
  const [size, zero = 0] = units[unit] ?? [Number.NaN];
  return `${Number((value / size - zero).toPrecision(8))} ${unit}`.trim();
}
