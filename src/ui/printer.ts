import { format, type Quantity, type UnitSystem } from './quantity.ts';

/** `format` for one reader: a sentence with several numbers names the unit system once. */
export const printer =
  (system: UnitSystem) =>
  (value: number, quantity: Quantity): string =>
    format(value, quantity, system);
