/** How each numeric test is read and printed in a reader's units. */
import type { NumericKind, NumericTest } from '../diagnosis/index.ts';
import { printer } from '../quantity/print.ts';
import {
  flow,
  kinematicViscosity,
  percent,
  pressure,
  seconds,
  speed,
} from '../quantity/quantities.ts';
import type { Quantity } from '../quantity/quantity.ts';
import type { UnitSystem } from '../quantity/unit-system.ts';

interface Measured {
  readonly quantity: Quantity;
  readonly min: number;
  readonly max: number;
}
/** Quantity and what may be typed, metric. */
export const measuredAs: Readonly<Record<NumericKind, Measured>> = {
  engineOffTurbine: { quantity: speed, min: 0, max: 10_000 },
  fluidCup: { quantity: kinematicViscosity, min: 1, max: 3000 },
  stopTime: { quantity: seconds, min: 0, max: 60 },
  takeoffSlip: { quantity: speed, min: 0, max: 10_000 },
  linePressure: { quantity: pressure, min: 0, max: 3000 },
  clutchPressure: { quantity: pressure, min: 0, max: 3000 },
  coolerFlow: { quantity: flow, min: 0, max: 100 },
  airTest: { quantity: percent, min: 0, max: 100 },
};

export const printed = (test: NumericTest, value: number, system: UnitSystem): string =>
  printer(system)(value, measuredAs[test.kind].quantity);
