/**
 * What the units of a sum leave over: kPa times cm² are tenths of a newton, so "÷ 10" stands in the sum; psi times in² are
 * pounds, and nothing does.
 */
import type { Quantity } from '../../quantity/quantity.ts';
import type { UnitSystem } from '../../quantity/unit-system.ts';

/** Size of the metric units in SI units without prefix. A turn counts as a number, so rpm are sixtieths. */
const SI: Readonly<Record<string, number>> = {
  kPa: 1e3,
  'L/min': 1 / 60_000,
  'N·m': 1,
  mm: 1e-3,
  m: 1,
  N: 1,
  'cm²': 1e-4,
  'cm³': 1e-6,
  rpm: 1 / 60,
  s: 1,
  ms: 1e-3,
  min: 60,
  J: 1,
  kW: 1e3,
  cSt: 1e-6,
  'mPa·s': 1e-3,
  'kg/m³': 1,
  'kg·m²': 1,
  'N·m·s': 1,
  'rpm/√(N·m)': 1 / 60,
  '%': 0.01,
  '': 1,
  '×': 1,
};

/** SI units in one unit of the system. Throws where nobody has needed it yet. */
export function inSi(quantity: Quantity, system: UnitSystem): number {
  const metric = SI[quantity.si.symbol];
  if (metric === undefined || quantity.si.zero !== 0 || quantity.us.zero !== 0)
    throw new Error(
      `A sum cannot multiply ${quantity.name} (${quantity.si.symbol}) yet: its unit stands in no line of src/lessons/sum/unit-factor.ts.`,
    );
  return metric / quantity[system].factor;
}

const near = (a: number, b: number): boolean => Math.abs(a / b - 1) < 1e-6;
const whole = (value: number): number | null =>
  value >= 1 && value <= 10_000 && near(value, Math.round(value)) ? Math.round(value) : null;

export interface UnitFactor {
  readonly value: number;
  /** Behind the last number of the sum: " ÷ 10"; nothing where the units fit. */
  readonly words: string;
}

/** A factor that can be printed exactly. Throws on one that cannot. */
export function unitFactor(value: number): UnitFactor {
  if (near(value, 1)) return { value: 1, words: '' };
  const times = whole(value);
  if (times !== null) return { value: times, words: ` × ${times}` };
  const over = whole(1 / value);
  if (over !== null) return { value: 1 / over, words: ` ÷ ${over}` };
  if (near(value, (2 * Math.PI) / 60)) return { value: (2 * Math.PI) / 60, words: ' × 2π ÷ 60' };
  throw new Error(
    `The units of the sum leave a factor of ${value.toPrecision(6)}, which is no whole number and no part of one. Write a part of it as a sum of its own, or say it in words.`,
  );
}
