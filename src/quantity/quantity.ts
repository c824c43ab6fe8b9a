/**
 * What a quantity is: one number with two ways to read it.
 *
 * Every value on the site is kept in the quantity's metric unit as a shop would use it: kPa, °C, L/min, N·m, rpm, mm. The
 * engine's pascals and cubic metres per second are converted once, in the engine's own units.ts; nothing in here sees them.
 * US figures are made from the metric value at the last moment, when they are printed, so switching units never changes a
 * result.
 */
import type { UnitSystem } from './unit-system.ts';

/**
 * How many decimals a printed number has, by its size: [from this size on, decimals, least decimals]. Zeros at the end are
 * kept, as on a display, unless `least` is smaller.
 */
export type Digits = readonly (readonly [from: number, decimals: number, least?: number])[];

export interface Scale {
  readonly symbol: string;
  /** Size in this unit = size in the metric unit × factor + zero. */
  readonly factor: number;
  readonly zero: number;
}

export interface Unit extends Scale {
  readonly digits: Digits;
}

export interface Quantity {
  /** What a sentence calls it: "no unit of pressure". Its own, so that what may be typed can be found by it. */
  readonly name: string;
  readonly si: Unit;
  readonly us: Unit;
}

export const toScale = (metric: number, { factor, zero }: Scale): number => metric * factor + zero;

export const fromScale = (size: number, { factor, zero }: Scale): number => (size - zero) / factor;

export const toShown = (metric: number, quantity: Quantity, system: UnitSystem): number =>
  toScale(metric, quantity[system]);

export const fromShown = (shown: number, quantity: Quantity, system: UnitSystem): number =>
  fromScale(shown, quantity[system]);
