import { temperature, type Quantity } from '../ui/quantity.ts';

export interface EngineNumber {
  /** In the metric unit of its quantity (see src/ui/quantity.ts): kPa, °C, L/min, N·m, mm, cSt. */
  readonly value: number;
  readonly quantity: Quantity;
  /** What it is, for whoever reads this list. */
  readonly what: string;
}

/**
 * Every number that the engine gives and prose quotes, by the id in <Num id="…" />. Values are
 * computed here, at build, by calling the engine; nobody types a result.
 */
export const numbers: Readonly<Record<string, EngineNumber>> = {
  'offered-temperature-low': {
    value: -30,
    quantity: temperature,
    what: 'lowest fluid temperature that the model offers',
  },
  'offered-temperature-high': {
    value: 140,
    quantity: temperature,
    what: 'highest fluid temperature that the model offers',
  },
};
