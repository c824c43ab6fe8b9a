import type { QuantityName } from '../quantity/by-name.ts';

/** A mistake that has a name, and the number it leads to. */
export interface WrongRule {
  /** Completes "You get this if you …". */
  readonly mistake: string;
  readonly value: number;
}
export type WrongRules = Readonly<Record<string, WrongRule>>;

/** A number that prose prints or a question quotes or asks for. */
export interface Entry {
  /** In the metric unit of its quantity (see src/quantity/quantities.ts): kPa, °C, L/min, N·m, mm, cSt. */
  readonly value: number;
  readonly quantity: QuantityName;
  /** What it is, for whoever reads this list. */
  readonly what: string;
  /** By the name that a distractor of a question gives; empty where nobody is asked for the number. */
  readonly wrong: WrongRules;
}
export type Entries = Readonly<Record<string, Entry>>;

const NONE: WrongRules = {};

/** An entry of any quantity; the common ones have a maker of their own, named by the unit of the value. */
export const entry = (
  quantity: QuantityName,
  value: number,
  what: string,
  wrong = NONE,
): Entry => ({ value, quantity, what, wrong });

const makerOf =
  (quantity: QuantityName) =>
  (value: number, what: string, wrong = NONE): Entry =>
    entry(quantity, value, what, wrong);

export const kPa = makerOf('pressure');
export const degC = makerOf('temperature');
export const lmin = makerOf('flow');
export const newtons = makerOf('force');
export const newtonMetres = makerOf('torque');
export const rpm = makerOf('speed');
export const mm = makerOf('length');
export const cSt = makerOf('kinematicViscosity');
export const mPas = makerOf('dynamicViscosity');
export const percent = makerOf('percent');
export const times = makerOf('times');
export const count = makerOf('count');
export const ratio = makerOf('ratio');

/** A time that the words rely on; throws where there is none. */
export function seconds(value: number | null, what: string, wrong = NONE): Entry {
  if (value === null) throw new Error(`The course needs a time here: ${what}.`);
  return entry('seconds', value, what, wrong);
}
